import changelog from '../../../CHANGELOG.md?raw';
import { version as built } from '../../../package.json';
import { parseChanges, spansOf } from './changes.ts';

/** The version at work, and what changed with it and with those before, from the changelog. */
export function WhatChanged() {
  return (
    <>
      <p>This is version {built}.</p>
      {parseChanges(changelog).map(({ version, items }) => (
        <details key={version}>
          <summary>
            {version === 'Next' ? `New since ${built}` : `What ${version} brought`} ({items.length})
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
