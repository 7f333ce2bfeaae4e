/** One choice of the first hour: what is pressed, moved or typed, and on which screen. */
export interface WalkChoice {
  readonly on: string;
  readonly does: string;
}

/** Part of the way, and the choices that it takes; nothing else has to be decided. */
interface Leg {
  readonly goal: string;
  readonly choices: readonly WalkChoice[];
}

/**
 * The whole way of a newcomer: a look around, her own class, a warm-up with a mark, tomorrow, and a page to
 * hand on. Names stand between stars, as in the help. A journey walks it, choice by choice, and needs no more.
 */
export const WALK: readonly Leg[] = [
  {
    goal: 'Look around',
    choices: [
      { on: 'Welcome', does: '*Look around with a sample class*' },
      { on: 'the line at the top', does: '*Back to my class*' },
    ],
  },
  {
    goal: 'Start with your own class',
    choices: [
      { on: 'Welcome', does: '*Start with my class*' },
      { on: 'What have they learned?', does: 'move the line to the last thing you taught' },
      { on: 'the line at the top', does: '*Add names first*, if you want to' },
      { on: 'Class', does: 'type the first names under *Add children*' },
      { on: 'Class', does: '*Add*' },
      { on: 'the line at the top', does: '*On to today’s warm-up*' },
    ],
  },
  {
    goal: 'Run the warm-up, and mark what broke',
    choices: [
      { on: 'Today', does: '*Start on the stage*' },
      { on: 'Stage', does: 'go on with a tap, the space bar or a clicker' },
      { on: 'Stage', does: 'press 1, 2 or 3 for the card that broke' },
      { on: 'Stage', does: '*How it went*' },
    ],
  },
  {
    goal: 'See tomorrow',
    choices: [{ on: 'How it went', does: 'read *Next time brings back*' }],
  },
  {
    goal: 'Hand on a page',
    choices: [
      { on: 'How it went', does: '*Children*, then *Pages*' },
      { on: 'Pages to hand on', does: '*For the family*' },
      { on: 'Pages to hand on', does: '*Print this page*' },
    ],
  },
];
