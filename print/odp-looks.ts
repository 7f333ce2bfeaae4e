import type { SlideShape } from './slide.ts';

/** The looks of a presentation’s outlines: in OpenDocument each is a style with a name, written once. */
export class OdpLooks {
  readonly #names = new Map<string, string>();

  /** The name of the style of an outline. */
  nameOf({ fill, stroke, line = 0, dashed }: SlideShape): string {
    const filled = fill ? `draw:fill="solid" draw:fill-color="${fill}"` : 'draw:fill="none"';
    const dash = dashed ? 'draw:stroke="dash" draw:stroke-dash="waiting"' : 'draw:stroke="solid"';
    const stroked = stroke
      ? `${dash} svg:stroke-width="${line.toFixed(3)}mm" svg:stroke-color="${stroke}"`
      : 'draw:stroke="none"';
    const look = `${filled} ${stroked}`;
    const name = this.#names.get(look) ?? `look${this.#names.size + 1}`;
    this.#names.set(look, name);
    return name;
  }

  /** The styles of all looks that were asked for. */
  styles(): string {
    return [...this.#names]
      .map(
        ([look, name]) =>
          `<style:style style:name="${name}" style:family="graphic" style:parent-style-name="standard"><style:graphic-properties ${look}/></style:style>`,
      )
      .join('');
  }
}
