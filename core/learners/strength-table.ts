import type { Day } from './day.ts';
import { DAY, DAYS, MEAN, PRACTISED, type Strength, TIMES, TOLD, VARIANCE } from './strength.ts';

const WIDTH = 8;

/**
 * Thousands of strengths side by side. A class has one for every child and card, and
 * a reading asks for a dozen of them here and there: as objects they lie scattered,
 * and waiting for memory takes longer than the arithmetic. Here each is a row of
 * eight numbers, 64 bytes, which is one line of most processors' caches.
 */
export class StrengthTable {
  /** Row after row; another array when it had to grow. */
  numbers = new Float64Array(256 * WIDTH);
  #end = 0;

  /** Begins a strength of which only the expectation is known, and gives its row. */
  begin(mean: number, variance: number, day: Day): Row {
    const row = this.#end;
    this.#end += WIDTH;
    if (this.#end > this.numbers.length) {
      const before = this.numbers;
      this.numbers = new Float64Array(2 * before.length);
      this.numbers.set(before);
    }
    this.numbers[row + MEAN] = mean;
    this.numbers[row + VARIANCE] = variance;
    this.numbers[row + DAY] = day;
    this.numbers[row + PRACTISED] = Number.NEGATIVE_INFINITY;
    return row;
  }

  /** What stands in a row by now; undefined without a row. */
  strengthAt(row: Row | undefined): Strength | undefined {
    if (row === undefined) return undefined;
    const { numbers } = this;
    return {
      mean: numbers[row + MEAN] as number,
      variance: numbers[row + VARIANCE] as number,
      day: numbers[row + DAY] as number,
      practised: numbers[row + PRACTISED] as number,
      times: numbers[row + TIMES] as number,
      days: numbers[row + DAYS] as number,
      told: numbers[row + TOLD] as number,
    };
  }
}

/** Where the numbers of a strength begin in its table. */
export type Row = number;
