/** Rows of so many numbers each, one after another, so that what is read together lies together. */
export class Table {
  readonly width: number;
  numbers: Float64Array;
  #end = 0;

  constructor(width: number, rows: number) {
    this.width = width;
    this.numbers = new Float64Array(width * rows);
  }

  /** Begins a row of zeros and tells where it starts; `numbers` may be another array from then on. */
  begin(): number {
    const row = this.#end;
    this.#end += this.width;
    if (this.#end > this.numbers.length) {
      const larger = new Float64Array(2 * this.numbers.length);
      larger.set(this.numbers);
      this.numbers = larger;
    }
    return row;
  }

  /** How many numbers stand in its rows. */
  get end(): number {
    return this.#end;
  }
}

/** Where the row of each card starts, by card number. */
export class RowsByCard {
  #rows = new Int32Array(64).fill(-1);

  /** −1 where there is none. */
  at(card: number): number {
    return card >= 0 && card < this.#rows.length ? (this.#rows[card] as number) : -1;
  }

  set(card: number, row: number): void {
    if (card >= this.#rows.length) {
      const larger = new Int32Array(Math.max(card + 1, 2 * this.#rows.length)).fill(-1);
      larger.set(this.#rows);
      this.#rows = larger;
    }
    this.#rows[card] = row;
  }
}
