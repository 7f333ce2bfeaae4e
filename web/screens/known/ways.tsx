import { linkToView, type View } from '../../state/known-view.ts';

const ways = [
  [{ of: 'map', open: null }, 'Class map'],
  [{ of: 'group' }, 'This group'],
  [{ of: 'groups' }, 'Suggested groups'],
] as const;

/** The pages of what they know. */
export function Ways({ current }: { readonly current: View['of'] }) {
  return (
    <nav class="known-ways" aria-label="What they know">
      {ways.map(([view, name]) => (
        <a
          key={view.of}
          href={linkToView(view)}
          aria-current={view.of === current ? 'page' : undefined}
        >
          {name}
        </a>
      ))}
    </nav>
  );
}
