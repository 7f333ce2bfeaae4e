import { factsOf, type Screen } from '../../state/screens.ts';
import { say } from './wording.ts';

const files = import.meta.glob<string>('./pictures/*.webp', {
  eager: true,
  query: '?url',
  import: 'default',
});

/** A screen as it looks with the sample class, taken from the running app by `npm run guide`. */
export function Picture({ of: screen }: { readonly of: Screen }) {
  const file = files[`./pictures/${screen}.webp`];
  if (file === undefined) return null;
  return (
    <img
      class="help-picture"
      src={file}
      width={683}
      height={384}
      alt={say.picture.withASampleClass(factsOf(screen).title)}
    />
  );
}
