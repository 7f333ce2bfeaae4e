/**
 * The naive twin of the tracker: the same beliefs, followed with objects, arrays and the formulas as
 * they are written down, nothing kept for speed. It shares only the numbers of the model, its grid, and
 * where cards stand in words. In one file, so that it can be read through beside the formulas.
 */
import { GRID, LOWEST, NODES, STEP } from '../../core/learners/belief/grid.ts';
import type { Marking } from '../../core/learners/belief/marking.ts';
import {
  BESIDE_CLASS,
  CHOIR,
  DRIFT,
  GAIN,
  HABIT,
  KNOWN_OR_NOT,
  LOSS,
  PLACE,
  RESTLESS,
  SPREAD,
  START,
  TAIL,
  TREND,
} from '../../core/learners/belief/numbers.ts';
import type { Observation } from '../../core/learners/observation.ts';
import { wordParts } from '../../core/learners/word-parts.ts';

interface Moving {
  mean: number;
  variance: number;
}

/** A child, a choir or a card. */
interface PlainSide extends Moving {
  shift: number;
  shiftVariance: number;
  day: number | null;
  happened: number;
  could: number;
  moved: number | null;
  readonly contexts: Map<string, Moving & { n: number }>;
  home: string;
}

/** What is followed of a reader with a card. */
export interface PlainPair {
  likelihood: number[];
  touched: number;
  told: number;
  times: number;
  readonly days: Set<number>;
  known: number | null;
  knownDay: number;
  knownBefore: number;
  lead: number;
  surprise: { day: number; gradient: number; certainty: number } | null;
  before: { gradient: number; certainty: number } | null;
  shares: number;
  counted: number;
  /** Days on which the group had it while the child was away, once for each reading. */
  readonly missed: number[];
}

/** A tracker without speed. `pairs` by child, or the choir of a group, and card, as in `Mina sh=SH`. */
export function plainTracker(marking: Marking) {
  const readers = new Map<string, PlainSide>();
  const cards = new Map<string, PlainSide>();
  const pairs = new Map<string, PlainPair>();
  const together = new Map<string, { readonly days: number[]; rights: number }>();
  const contexts = new Map<string, Moving>();
  const common = {
    gain: GAIN.mean as number,
    gainVariance: GAIN.variance as number,
    loss: LOSS.mean as number,
    lossVariance: LOSS.variance as number,
    trend: 0,
    restless: 1,
    products: 0,
    count: 0,
    learned: KNOWN_OR_NOT.learn.chance * KNOWN_OR_NOT.learn.held,
    couldLearn: KNOWN_OR_NOT.learn.held as number,
    lost: KNOWN_OR_NOT.lose.chance * KNOWN_OR_NOT.lose.held,
    couldLose: KNOWN_OR_NOT.lose.held as number,
    slipped: KNOWN_OR_NOT.slip.chance * KNOWN_OR_NOT.slip.held,
    couldSlip: KNOWN_OR_NOT.slip.held as number,
    guessed: KNOWN_OR_NOT.guess.chance * KNOWN_OR_NOT.guess.held,
    couldGuess: KNOWN_OR_NOT.guess.held as number,
    lead: 0,
  };
  let today: number | null = null;

  return { observe, readers, cards, pairs, common };

  function observe(reading: Observation): void {
    const { day, child, right, away = [] } = reading;
    if (day !== today) begin(day);
    today = day;
    const group = reading.groups[0] as string;
    if (child !== null) {
      side(readers, child, SPREAD.child, 0).home = group;
      const laid = lay(reading, child, 1);
      if (marking === 'only-mistakes' && !right) takeMistake(reading, laid);
      else take(reading, laid, 1, 1);
      for (const { pair } of laid) practice(pair, day);
      return;
    }
    if (marking !== 'mistakes-beside-class') {
      side(readers, `choir of ${group}`, SPREAD.child, 0).home = group;
      const laid = lay(reading, `choir of ${group}`, CHOIR.slope);
      take(reading, laid, CHOIR.weight, CHOIR.slope);
      for (const { pair } of laid) practice(pair, day);
    }
    if (!right && marking === 'mistakes-beside-class') return;
    for (const name of away) {
      const home = readers.get(name)?.home;
      if (home === undefined || !(reading.groups as readonly string[]).includes(home)) continue;
      for (const card of reading.cards) pairOf(name, card, day).missed.push(day);
    }
    for (const name of reading.groups) {
      for (const card of reading.cards) {
        const row = together.get(`${name} ${card}`) ?? { days: [], rights: 0 };
        together.set(`${name} ${card}`, row);
        row.days.push(day);
        if (right) row.rights += 1;
      }
    }
  }

  function begin(day: number): void {
    if (today !== null) {
      const moved = [...readers.values()].flatMap((one) => (one.moved === null ? [] : one.moved));
      for (const one of readers.values()) one.moved = null;
      if (moved.length > 0) {
        const mean = moved.reduce((sum, one) => sum + one, 0) / moved.length;
        common.trend += TREND.rate * mean * Math.min(1, moved.length / TREND.full);
      }
      common.trend = within(common.trend, TREND.least, TREND.most);
    }
    const ratio = common.products / (RESTLESS.held + common.count);
    const above = RESTLESS.gain * (ratio - RESTLESS.usual);
    common.restless = Math.exp(within(above, RESTLESS.least, RESTLESS.most));
    today = day;
  }

  function side(all: Map<string, PlainSide>, name: string, spread: number, mean: number) {
    const found = all.get(name) ?? {
      ...{ mean, variance: spread, shift: 0, shiftVariance: 0, day: null, happened: 0, could: 0 },
      ...{ moved: null, contexts: new Map(), home: '' },
    };
    all.set(name, found);
    return found;
  }

  function pairOf(reader: string, card: string, day: number): PlainPair {
    const found = pairs.get(`${reader} ${card}`) ?? {
      ...{ likelihood: Array<number>(NODES).fill(1), touched: day, told: 0, times: 0 },
      ...{ days: new Set<number>(), known: null, knownDay: 0, knownBefore: 0, lead: 0 },
      ...{ surprise: null, before: null, shares: 0, counted: 0, missed: [] },
    };
    pairs.set(`${reader} ${card}`, found);
    return found;
  }

  function practice(pair: PlainPair, day: number): void {
    pair.times += 1;
    pair.days.add(day);
  }

  /** The cards of a reading, time counted in and each forecast. */
  function lay(reading: Observation, name: string, slope: number) {
    const { day } = reading;
    const reader = readers.get(name) as PlainSide;
    drift(reader, day, DRIFT.child, common.trend);
    const { places, habits } = wordParts(reading.cards);
    for (const id of reading.cards) side(cards, id, SPREAD.card, START.mean);
    return reading.cards.map((id, at) => {
      const card = cards.get(id) as PlainSide;
      drift(card, day, DRIFT.card, 0);
      const pair = pairOf(name, id, day);
      const prior = usualPrior(reader.mean + card.mean);
      const days = day - pair.touched;
      pair.touched = day;
      if (days > 0 && (pair.told > 0 || pair.shares > 0)) age(pair, days, prior);
      if (marking === 'mistakes-beside-class') share(pair, reader, card, id, day);
      const place = places[at] ?? null;
      const here = [...(place === null ? [] : [place]), ...(habits[at] ?? [])];
      const { practiced, lost, offset } = shiftOf(pair, reader, card, id, day);
      const inContexts = here.reduce(
        (sum, one) => sum + contextOf(one).mean + ownContext(reader, one).mean,
        0,
      );
      const chances = chancesAt(offset + inContexts, slope);
      const weights = prior.map((weight, node) => weight * (pair.likelihood[node] as number));
      const whole = sumOf(weights);
      const average = (of: (node: number) => number) =>
        sumOf(weights.map((weight, node) => weight * of(node))) / whole;
      const right = (node: number) => chances[node] as number;
      const strength = (node: number) => GRID[node] as number;
      if (whole <= 1e-3 || whole >= 1e3) pair.likelihood = scaled(pair.likelihood, 1 / whole);
      return {
        ...{ pair, reader, card, practiced, lost, chances, here },
        p: within(average(right), 1e-6, 1 - 1e-6),
        square: average((node) => right(node) ** 2),
        strength: average(strength),
        product: average((node) => strength(node) * right(node)),
      };
    });
  }

  type Laid = ReturnType<typeof lay>;

  function drift(one: PlainSide, day: number, variance: number, trend: number): void {
    if (one.day !== null) {
      one.shiftVariance += variance * (day - one.day);
      one.shift += trend * (day - one.day);
    }
    one.day = day;
  }

  function age(pair: PlainPair, days: number, prior: readonly number[]): void {
    let left = (DRIFT.pair * common.restless * days) / (2 * STEP * STEP);
    while (left > 0) {
      const part = Math.min(left, 0.25);
      const old = pair.likelihood;
      const at = (node: number) => old[Math.max(0, Math.min(NODES - 1, node))] as number;
      pair.likelihood = old.map(
        (here, node) => here + part * (at(node - 1) + at(node + 1) - 2 * here),
      );
      left -= part;
    }
    const mean = sumOf(pair.likelihood.map((one, node) => one * (prior[node] as number)));
    const renewed = Math.min(0.5, DRIFT.renewal * common.restless * days);
    pair.likelihood = pair.likelihood.map((one) => one + (renewed / (1 - renewed)) * mean);
  }

  /** What practice, absence and drift come to. */
  function shiftOf(pair: PlainPair, reader: PlainSide, card: PlainSide, id: string, day: number) {
    const row = together.get(`${reader.home} ${id}`)?.days ?? [];
    const missedDays = new Set(pair.missed);
    const there = row.filter((one) => !missedDays.has(one));
    const times = Math.max(0, row.length - pair.missed.length);
    const groupDays = Math.max(0, new Set(row).size - missedDays.size);
    const last = Math.max(...pair.days, ...there);
    const since = day - last;
    const held = 1 + LOSS.hold * (pair.days.size + GAIN.together * groupDays);
    const practiced = Math.log(1 + pair.times + GAIN.together * times);
    const lost = since > 0 && since < Infinity ? -Math.log(1 + since / LOSS.days) / held : 0;
    const offset = common.gain * practiced + common.loss * lost + reader.shift + card.shift;
    return { practiced, lost, offset };
  }

  function share(pair: PlainPair, reader: PlainSide, card: PlainSide, id: string, day: number) {
    const row = together.get(`${reader.home} ${id}`);
    if (row === undefined) return;
    const size = [...readers.values()].filter(({ home }) => home === reader.home).length;
    const given = (BESIDE_CLASS.alone * (row.rights - pair.counted)) / size;
    pair.counted = row.rights;
    if (given <= 0) return;
    const chances = chancesAt(shiftOf(pair, reader, card, id, day).offset, 1);
    change(pair, (node) => (chances[node] as number) ** given);
    pair.shares += given;
  }

  function contextOf(name: string): Moving {
    const start = ['beginning', 'middle', 'ending'].includes(name) ? PLACE : HABIT;
    const found = contexts.get(name) ?? { mean: start.mean, variance: start.variance };
    contexts.set(name, found);
    return found;
  }

  function ownContext(reader: PlainSide, name: string) {
    const start = ['beginning', 'middle', 'ending'].includes(name) ? PLACE : HABIT;
    const found = reader.contexts.get(name) ?? { mean: 0, variance: start.own, n: 0 };
    reader.contexts.set(name, found);
    return found;
  }

  /** Takes in how a reading went. */
  function take({ right, broke, day }: Observation, laid: Laid, weight: number, slope: number) {
    const all = laid.reduce((product, { p }) => product * p, 1);
    const heard = laid.slice(0, right ? laid.length : (broke ?? laid.length));
    for (const [at, one] of heard.entries()) {
      const isGood = right || (broke !== null && at < heard.length - 1);
      const others = broke === null ? all / one.p : 1;
      if (weight === 1 && marking === 'all') {
        const sure = right || broke !== null ? 1 : Math.min(1, (1 - one.p) / (1 - all));
        learn(one, isGood, sure, day);
      }
      const factor = (node: number) => {
        const chance = one.chances[node] as number;
        return isGood ? chance : 1 - others * chance + (weight === 1 ? 0 : 1e-9);
      };
      change(one.pair, (node) => factor(node) ** weight);
      one.pair.told += 1;
      if (weight === 1 && marking === 'mistakes-beside-class') continue;
      move(one, isGood, others, weight, slope, day);
    }
  }

  function takeMistake({ broke }: Observation, laid: Laid): void {
    const all = laid.reduce((product, { p }) => product * p, 1);
    for (const [at, { pair, p, chances }] of laid.entries()) {
      const others = all / p;
      const isUnknown = broke !== null && at >= broke;
      if (!isUnknown) pair.told += 1;
      change(pair, (node) => {
        const chance = chances[node] as number;
        const written = 1 - others * chance;
        const said =
          broke === null ? written : isUnknown ? 1 : at === broke - 1 ? 1 - chance : chance;
        return said / (written + 1e-9);
      });
    }
  }

  function change(pair: PlainPair, factor: (node: number) => number): void {
    pair.likelihood = pair.likelihood.map((one, node) => one * factor(node) + 1e-12);
  }

  /** Known or not: the forward step of a hidden Markov model of two states. */
  function learn(
    { pair, reader, card, p }: Laid[number],
    right: boolean,
    sure: number,
    day: number,
  ) {
    const { slip, guess } = KNOWN_OR_NOT;
    const usualSlip = common.slipped / common.couldSlip;
    const usualGuess = common.guessed / common.couldGuess;
    const slips = Math.min(
      slip.most,
      (reader.happened + slip.ofChild * usualSlip) / (reader.could + slip.ofChild),
    );
    const guesses = Math.min(
      guess.most,
      (card.happened + guess.ofCard * usualGuess) / (card.could + guess.ofCard),
    );
    const days = day - pair.knownDay;
    const keeps = pair.known === null ? 1 : (1 - common.lost / common.couldLose) ** days;
    const known =
      pair.known === null
        ? within((p - guesses) / (1 - slips - guesses), 0.03, 0.97)
        : pair.known * keeps;
    const forecast = known * (1 - slips) + (1 - known) * guesses;
    const led = sure * Math.log(right ? p / forecast : (1 - p) / (1 - forecast));
    common.lead += led;
    pair.lead += led;
    const ifKnown = right ? 1 - slips : slips;
    const ifNot = right ? guesses : 1 - guesses;
    const whole = known * ifKnown + (1 - known) * ifNot;
    const now = (known * ifKnown) / whole;
    const after = known + sure * (now - known);
    if (sure > 0.99) {
      if (pair.known !== null) {
        const learns = common.learned / common.couldLearn;
        const before = pair.knownBefore;
        const held = before + (1 - before) * learns;
        const learned = ((1 - before) * learns * keeps * ifKnown) / whole;
        const lost = (held * (1 - keeps) * ifNot) / whole;
        common.learned += learned;
        common.couldLearn += learned + ((1 - before) * (1 - learns) * ifNot) / whole;
        common.lost += lost;
        common.couldLose += (lost + (held * keeps * ifKnown) / whole) * Math.max(0.2, days);
      }
      common.couldSlip += now;
      common.couldGuess += 1 - now;
      reader.could += now;
      card.could += 1 - now;
      if (right) common.guessed += 1 - now;
      else common.slipped += now;
      if (right) card.happened += 1 - now;
      else reader.happened += now;
    }
    pair.knownBefore = after;
    pair.known = after + (1 - after) * (common.learned / common.couldLearn);
    pair.knownDay = day;
  }

  /** One Newton step of all that is common to many. */
  function move(
    one: Laid[number],
    right: boolean,
    others: number,
    weight: number,
    slope: number,
    day: number,
  ): void {
    const { p, pair, reader, card, practiced, lost } = one;
    const f = weight * (right ? 1 / p : -others / (1 - others * p));
    const certainty = weight * (right ? 1 / (p * (1 - p)) : others / (p * (1 - others * p)));
    const byStrength = Math.max(0, p - one.square) * slope;
    const byMean = one.product - one.strength * p;
    if (slope === 1) surprise(pair, day, f * byStrength, byStrength ** 2 * certainty);

    const means = [reader, card];
    step(
      means.map((of) => ({ of, by: 1 })),
      f * byMean,
      byMean ** 2 * certainty,
    );
    const gain = { mean: common.gain, variance: common.gainVariance };
    const loss = { mean: common.loss, variance: common.lossVariance };
    const shifts = means.map((of) => ({ mean: of.shift, variance: of.shiftVariance }));
    const [ofReader, ofCard] = shifts as [Moving, Moving];
    const before = ofReader.mean;
    const here = one.here.flatMap((name) => [contextOf(name), ownContext(reader, name)]);
    step(
      [
        { of: gain, by: practiced },
        { of: loss, by: lost },
        ...[...shifts, ...here].map((of) => ({ of, by: 1 })),
      ],
      f * byStrength,
      byStrength ** 2 * certainty,
    );
    for (const name of one.here) ownContext(reader, name).n += 1;
    if (reader.shiftVariance > 0) reader.moved = (reader.moved ?? 0) + ofReader.mean - before;
    common.gain = Math.max(0, gain.mean);
    common.gainVariance = gain.variance;
    common.loss = Math.max(0, loss.mean);
    common.lossVariance = loss.variance;
    reader.shift = ofReader.mean;
    reader.shiftVariance = ofReader.variance;
    card.shift = ofCard.mean;
    card.shiftVariance = ofCard.variance;
  }

  function surprise(pair: PlainPair, day: number, gradient: number, certainty: number): void {
    if (pair.surprise?.day !== day) {
      const over = pair.surprise;
      if (over !== null && over.certainty > 0) {
        if (pair.before !== null) {
          common.products += standardized(over) * standardized(pair.before);
          common.count += 1;
        }
        pair.before = over;
      }
      pair.surprise = { day, gradient: 0, certainty: 0 };
    }
    pair.surprise.gradient += gradient;
    pair.surprise.certainty += certainty;
  }
}

/** A Newton step: all that adds to a strength moves by its variance, and becomes surer. */
function step(
  moving: readonly { readonly of: Moving; readonly by: number }[],
  gradient: number,
  certainty: number,
): void {
  const variance = sumOf(moving.map(({ of, by }) => by * by * of.variance));
  for (const { of, by } of moving) {
    const reach = of.variance * by;
    of.mean += (reach * gradient) / (1 + variance * certainty);
    of.variance -= (reach * reach * certainty) / (1 + variance * certainty);
  }
}

function standardized(of: { readonly gradient: number; readonly certainty: number }): number {
  return within(of.gradient / Math.sqrt(of.certainty + 1e-9), -2, 2);
}

/** What is usual around a mean while a class is followed; means go by quarters. */
function usualPrior(center: number): readonly number[] {
  const mean = within(Math.round(center * 4) / 4, -6, 9);
  const wide = Math.max(TAIL.least, TAIL.widening);
  const weights = [...GRID].map((x) => {
    const inside = within(mean, LOWEST, LOWEST + STEP * (NODES - 1));
    const lowered = within(mean - TAIL.lowered, LOWEST, LOWEST + STEP * (NODES - 1));
    return (1 - TAIL.share) * normal(x, inside, 1.1) + TAIL.share * normal(x, lowered, 0.1 + wide);
  });
  return scaled(weights, 1 / sumOf(weights));
}

function normal(x: number, mean: number, variance: number): number {
  return Math.exp(-((x - mean) ** 2) / (2 * variance)) / Math.sqrt(variance);
}

/** The chance at each node, its strength moved and stretched; rounded to a 22nd of a step, from −24 to 24. */
function chancesAt(offset: number, slope: number): readonly number[] {
  const fine = STEP / 22;
  const most = Math.floor(48 / fine) - 22 * slope * (NODES - 1);
  const lowest = within(Math.round((slope * (LOWEST + offset) + 24) / fine), 0, most);
  return Array.from(
    { length: NODES },
    (_, node) => 1 / (1 + Math.exp(24 - fine * (lowest + 22 * slope * node))),
  );
}

function scaled(numbers: readonly number[], by: number): number[] {
  return numbers.map((one) => one * by);
}

function sumOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, one) => sum + one, 0);
}

function within(value: number, least: number, most: number): number {
  return Math.max(least, Math.min(most, value));
}
