import changelog from '../../../CHANGELOG.md?raw';
import { version as built } from '../../../package.json';
import { parseChanges, spansOf } from './changes.ts';
import { say } from './wording.ts';

/** The version at work, and what changed with it and with those before, from the changelog. */
export function WhatChanged() {
  return (
    <>
      <p>{say.whatChanged.thisIsVersion(built)}</p>
      {parseChanges(changelog).map(({ version, items }) => (
        <details key={version}>
          <summary>
            {version === 'Next'
              ? say.whatChanged.newSince(built)
              : say.whatChanged.whatBrought(version)}{' '}
            ({items.length})
          </summary>
          <ul class="changes">
            {items.map((item) => (
              <li key={item}>
                {spansOf(item).map(({ text, as }, at) => {
                  if (as === 'example') return <em key={at}>{text}</em>;
                  return as === 'typed' ? <code key={at}>{text}</code> : text;
                })}
              </li>
            ))}
          </ul>
        </details>
      ))}
    </>
  );
}
