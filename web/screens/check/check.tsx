import './check.css';
import { useLayoutEffect } from 'preact/hooks';
import { NoChildren } from '../../controls/no-children.tsx';
import { chosenChild, openRecord } from '../../state/check-choice.ts';
import { ScorePage } from './score.tsx';
import { Setup } from './setup.tsx';
import { UnderWay } from './under-way.tsx';
import { say } from './wording.ts';

/** A short check of one child: chosen, under way, or read. */
export function CheckPage() {
  const open = openRecord.value;
  // Each of the three is a page of its own, and is read from its top.
  useLayoutEffect(() => scrollTo(0, 0), [open?.id, open?.ended === null]);
  if (open) {
    return open.ended === null ? (
      <UnderWay key={open.id} record={open} />
    ) : (
      <ScorePage key={open.id} record={open} />
    );
  }
  const child = chosenChild.value;
  if (child) return <Setup child={child} />;
  return <NoChildren title={say.check.aShortCheck}>{say.check.oneChildReads}</NoChildren>;
}
