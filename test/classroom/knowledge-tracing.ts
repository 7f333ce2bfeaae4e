/**
 * Bayesian knowledge tracing (Corbett & Anderson 1995, User Modeling and
 * User-Adapted Interaction 4, 253–278): of each card a child either knows it or
 * not; each practice may move it from not knowing to knowing; a child that knows
 * may slip, one that does not may guess. One set of four probabilities a card,
 * fitted to the training pupils by expectation maximization for hidden Markov
 * models (Baum et al. 1970). With `forgets` a child may also lose what it knew
 * from one practice to the next, which the original leaves out: a harder rival.
 *
 * Every practice of which nothing was heard (read together) is a step without
 * an outcome, so that it may use all the practice that our model uses.
 */

import type { Observation } from '../../core/learners/observation.ts';
import { shareBlame } from './blame.ts';
import type { Forecaster } from './judge.ts';

/** Known at first, learned by practice, lost by practice, slip, guess. */
export interface Chances {
  readonly first: number;
  readonly learn: number;
  readonly lose: number;
  readonly slip: number;
  readonly guess: number;
}

/** By card: chances fitted to training pupils. */
export type FittedTracing = ReadonlyMap<string, Chances>;

/** Right, wrong, or nothing heard. */
type Outcome = 1 | 0 | null;

const START: Chances = { first: 0.5, learn: 0.1, lose: 0, slip: 0.1, guess: 0.3 };
const ROUNDS = 40;

/** Fits the chances of every card to what training pupils did, one list of readings a class. */
export function fitTracing(
  classes: readonly (readonly Observation[])[],
  forgets: boolean,
): FittedTracing {
  const histories = new Map<string, Outcome[][]>();
  for (const observations of classes) {
    for (const [key, outcomes] of outcomesOf(observations)) {
      const card = key.slice(key.indexOf(' ') + 1);
      const list = histories.get(card);
      if (list) list.push(outcomes);
      else histories.set(card, [outcomes]);
    }
  }
  return new Map([...histories].map(([card, list]) => [card, fitCard(list, forgets)]));
}

/** Forecasts by fitted chances; a card that no training pupil had is taken as the average one. */
export function knowledgeTracing(fitted: FittedTracing): Forecaster {
  const all = [...fitted.values()];
  const average = (field: keyof Chances): number =>
    all.reduce((sum, chances) => sum + chances[field], 0) / all.length;
  const otherwise: Chances = {
    first: average('first'),
    learn: average('learn'),
    lose: average('lose'),
    slip: average('slip'),
    guess: average('guess'),
  };
  const chancesOf = (card: string): Chances => fitted.get(card) ?? otherwise;
  /** By card: how many steps were taken together. */
  const together = new Map<string, number>();
  const beliefs = new Map<string, { known: number; together: number }>();
  const beliefOf = (child: string, card: string) => {
    const key = `${child} ${card}`;
    const chances = chancesOf(card);
    let belief = beliefs.get(key);
    if (!belief) {
      belief = { known: chances.first, together: 0 };
      beliefs.set(key, belief);
    }
    for (; belief.together < (together.get(card) ?? 0); belief.together++) {
      belief.known = stepped(belief.known, chances);
    }
    return belief;
  };
  const expectOf = (child: string, cards: readonly string[]): number[] =>
    cards.map((card) => rightBy(beliefOf(child, card).known, chancesOf(card)));
  return {
    expect: ({ child, cards }) => expectOf(child ?? '', cards),
    observe({ child, cards, right, broke }) {
      if (child === null) {
        for (const card of cards) together.set(card, (together.get(card) ?? 0) + 1);
        return;
      }
      const expected = expectOf(child, cards);
      const blame = {
        well: new Float64Array(cards.length),
        wrong: new Float64Array(cards.length),
      };
      shareBlame(blame, cards.length, Float64Array.from(expected), right, broke);
      for (const [at, card] of cards.entries()) {
        const belief = beliefOf(child, card);
        const chances = chancesOf(card);
        const well = blame.well[at] as number;
        const wrong = blame.wrong[at] as number;
        const { known } = belief;
        belief.known = stepped(
          well * after(known, chances, 1) +
            wrong * after(known, chances, 0) +
            (1 - well - wrong) * known,
          chances,
        );
      }
    },
  };
}

function rightBy(known: number, { slip, guess }: Chances): number {
  return known * (1 - slip) + (1 - known) * guess;
}

function stepped(known: number, { learn, lose }: Chances): number {
  return known * (1 - lose) + (1 - known) * learn;
}

/** The belief after an outcome. */
function after(known: number, { slip, guess }: Chances, outcome: 1 | 0): number {
  const ifKnown = outcome === 1 ? 1 - slip : slip;
  const ifNot = outcome === 1 ? guess : 1 - guess;
  return (known * ifKnown) / (known * ifKnown + (1 - known) * ifNot);
}

/** By child and card: its outcomes in order, with the steps taken together. */
function outcomesOf(observations: readonly Observation[]): ReadonlyMap<string, Outcome[]> {
  const histories = new Map<string, Outcome[]>();
  const together = new Map<string, number>();
  const seen = new Map<string, number>();
  for (const { child, cards, right, broke } of observations) {
    for (const [at, card] of cards.entries()) {
      if (child === null) {
        together.set(card, (together.get(card) ?? 0) + 1);
        continue;
      }
      const key = `${child} ${card}`;
      const history = histories.get(key) ?? [];
      histories.set(key, history);
      const missed = (together.get(card) ?? 0) - (seen.get(key) ?? 0);
      for (let step = 0; step < missed; step++) history.push(null);
      seen.set(key, together.get(card) ?? 0);
      const last = right ? cards.length : (broke ?? 0);
      history.push(at >= last ? null : right || at < last - 1 ? 1 : 0);
    }
  }
  return histories;
}

function fitCard(histories: readonly Outcome[][], forgets: boolean): Chances {
  let chances: Chances = { ...START, lose: forgets ? 0.05 : 0 };
  for (let round = 0; round < ROUNDS; round++) chances = improved(chances, histories, forgets);
  return chances;
}

/** One round of expectation maximization, held a little by priors of one imagined case each. */
function improved(chances: Chances, histories: readonly Outcome[][], forgets: boolean): Chances {
  const { learn, lose } = chances;
  const sums = { first: 1, firstAll: 2, learn: 0.1, notAll: 1, lose: 0.02, knownAll: 1 };
  const tells = { slip: 0.1, knownTold: 1, guess: 0.3, notTold: 1 };
  for (const history of histories) {
    const count = history.length;
    const before: number[] = [];
    const filtered: number[] = [];
    let known = chances.first;
    for (const outcome of history) {
      before.push(known);
      const now = outcome === null ? known : after(known, chances, outcome);
      filtered.push(now);
      known = stepped(now, chances);
    }
    let smooth = filtered[count - 1] as number;
    for (let at = count - 1; at >= 0; at--) {
      const outcome = history[at];
      if (outcome !== null) {
        tells.knownTold += smooth;
        tells.notTold += 1 - smooth;
        if (outcome === 0) tells.slip += smooth;
        else tells.guess += 1 - smooth;
      }
      if (at === 0) {
        sums.first += smooth;
        sums.firstAll += 1;
        break;
      }
      const then = filtered[at - 1] as number;
      const next = before[at] as number;
      const learned = (then === 1 ? 0 : ((1 - then) * learn) / next) * smooth;
      const lost = ((then * lose) / Math.max(1e-12, 1 - next)) * (1 - smooth);
      const stayed = ((then * (1 - lose)) / next) * smooth;
      const earlier = stayed + lost;
      sums.learn += learned;
      sums.lose += lost;
      sums.knownAll += earlier;
      sums.notAll += 1 - earlier;
      smooth = earlier;
    }
  }
  return {
    first: sums.first / sums.firstAll,
    learn: sums.learn / sums.notAll,
    lose: forgets ? sums.lose / sums.knownAll : 0,
    slip: Math.min(0.95, tells.slip / tells.knownTold),
    guess: Math.min(0.95, tells.guess / tells.notTold),
  };
}
