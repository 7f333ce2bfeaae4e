/**
 * An invented pupil, made on another principle than the model under test. Every
 * practice leaves a trace that fades by a power law of its own rate; what is
 * remembered is the sum of the traces (ACT-R: Anderson & Schooler 1991), known
 * or not by a threshold; then come slips and guesses of its own, and losses by
 * place and in clusters that multiply. What practice moves is no log-odds, what
 * is drawn is mostly not normal, and some cards are stubborn for no reason.
 */
import type { ChildId } from '../../../core/ids.ts';
import type { Chances } from '../chances.ts';
import type { Pupil, Truth } from '../pupil.ts';

/** How invented pupils are drawn; each field away from its default is another world. */
export interface World {
  /** How fast traces fade: the mean exponent. */
  readonly fading: number;
  /** What one practice leaves, on average. */
  readonly rate: number;
  readonly slip: readonly [low: number, high: number];
  readonly guess: readonly [low: number, high: number];
  /** The share of pupil–card pairs that are stubborn for no reason that can be seen. */
  readonly stubborn: number;
  /** How sharp the threshold is; small values make all-or-none learners. */
  readonly noise: number;
}

const USUAL_WORLD: World = {
  fading: 0.42,
  rate: 0.5,
  slip: [0.01, 0.06],
  guess: [0.05, 0.25],
  stubborn: 0.12,
  noise: 0.4,
};

/** Pupils of a world. */
export function traces(world: Partial<World> = {}): Truth {
  return ({ name, difficulties, draw }) =>
    drawPupil(name, { ...USUAL_WORLD, ...world }, difficulties, draw);
}

interface Trace {
  readonly day: number;
  amount: number;
}

/** The traces of a card and how much must be remembered to know it; `before` is what those of earlier days come to on `day`. */
interface Memory {
  readonly threshold: number;
  readonly traces: Trace[];
  day: number;
  before: number;
}

/** Draws a pupil, with what it brings from home. `difficulties` are the cards' own, for all pupils. */
function drawPupil(
  name: ChildId,
  world: World,
  difficulties: ReadonlyMap<string, number>,
  draw: Chances,
): Pupil {
  const fading = Math.max(0.1, draw.normal(world.fading, world.fading / 4));
  const rate = world.rate * Math.exp(draw.normal(0, 0.4));
  const threshold = draw.normal(0, 0.45);
  const slip = draw.between(...world.slip);
  const guess = draw.between(...world.guess);
  const home = draw.happens(0.3) ? draw.between(0.3, 0.9) : draw.between(0, 0.25);
  const lost = { beginning: 0, middle: draw.between(0, 0.06), ending: draw.between(0, 0.12) };
  const lostInClusters = draw.between(0.02, 0.25);
  const memories = new Map([...difficulties].map(([card, hard]) => [card, memoryFor(hard)]));

  return {
    name,
    chance(card, day, place, clustered) {
      const memory = memoryOf(card);
      const above = Math.log(rememberedOn(day, memory) + 1e-9) - memory.threshold;
      const known = 1 / (1 + Math.exp(-above / world.noise));
      const alone = guess + (1 - guess - slip) * known;
      const there = place === null ? 1 : 1 - lost[place];
      return alone * there * (clustered ? 1 - lostInClusters : 1);
    },
    practice(card, day, amount) {
      const memory = memoryOf(card);
      const last = memory.traces.at(-1);
      if (last?.day === day) last.amount += amount * rate;
      else memory.traces.push({ day, amount: amount * rate });
    },
  };

  function rememberedOn(day: number, memory: Memory): number {
    const faded = ({ day: then, amount }: Trace): number => amount * (day - then + 0.5) ** -fading;
    if (memory.day !== day) {
      memory.day = day;
      memory.before = memory.traces.reduce(
        (sum, trace) => sum + (trace.day < day ? faded(trace) : 0),
        0,
      );
    }
    const last = memory.traces.at(-1);
    return memory.before + (last?.day === day ? faded(last) : 0);
  }

  function memoryOf(card: string): Memory {
    const memory = memories.get(card);
    if (!memory) throw new Error(`No pupil was drawn for the card ${card}.`);
    return memory;
  }

  function memoryFor(difficulty: number): Memory {
    const traces: Trace[] = draw.happens(home)
      ? [{ day: -draw.between(5, 60), amount: draw.between(1, 8) }]
      : [];
    const stubborn = draw.happens(world.stubborn) ? draw.between(0.4, 1.5) : 0;
    const own = threshold + difficulty + stubborn + draw.between(-0.2, 0.2);
    return { threshold: own, traces, day: Number.NaN, before: 0 };
  }
}
