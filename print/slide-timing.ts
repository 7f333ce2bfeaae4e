/**
 * What clicks move on a slide, in PresentationML (ECMA-376 part 1, §19.5). Each click is a parallel time
 * container that waits for the click; in it all moves begin at once. The line is wiped in from the left, a
 * card appears, a line vanishes; preset numbers are those that presentation programs show in their lists.
 */
import type { Move } from './slide.ts';

/** How long the line takes under a row, in milliseconds: about as long as a finger. */
export const SWEEP_TIME = 700;

/** The timing of a slide; `idOf` gives the shape id of a thing. Empty when no click moves anything. */
export function slideTiming(
  clicks: readonly (readonly Move[])[],
  idOf: (thing: number) => number,
): string {
  if (clicks.length === 0) return '';
  let last = 2;
  const next = () => {
    last += 1;
    return last;
  };
  const moved = ({ thing, how }: Move, at: number): string => {
    const [outer, inner] = [next(), next()];
    const target = `<p:tgtEl><p:spTgt spid="${idOf(thing)}"/></p:tgtEl>`;
    const preset = PRESETS[how];
    const effect =
      how === 'sweep'
        ? `<p:animEffect transition="in" filter="wipe(left)"><p:cBhvr><p:cTn id="${next()}" dur="${SWEEP_TIME}"/>${target}</p:cBhvr></p:animEffect>`
        : '';
    return (
      `<p:par><p:cTn id="${outer}" ${preset} fill="hold" nodeType="${at === 0 ? 'clickEffect' : 'withEffect'}">${NOW}<p:childTnLst>` +
      `<p:set><p:cBhvr><p:cTn id="${inner}" dur="1" fill="hold">${NOW}</p:cTn>${target}<p:attrNameLst><p:attrName>style.visibility</p:attrName></p:attrNameLst></p:cBhvr>` +
      `<p:to><p:strVal val="${how === 'vanish' ? 'hidden' : 'visible'}"/></p:to></p:set>${effect}</p:childTnLst></p:cTn></p:par>`
    );
  };
  const clicked = clicks.map((moves) => {
    const [waiting, begun] = [next(), next()];
    return (
      `<p:par><p:cTn id="${waiting}" fill="hold"><p:stCondLst><p:cond delay="indefinite"/></p:stCondLst><p:childTnLst>` +
      `<p:par><p:cTn id="${begun}" fill="hold">${NOW}<p:childTnLst>${moves.map(moved).join('')}</p:childTnLst></p:cTn></p:par>` +
      '</p:childTnLst></p:cTn></p:par>'
    );
  });
  return (
    '<p:timing><p:tnLst><p:par><p:cTn id="1" dur="indefinite" restart="never" nodeType="tmRoot"><p:childTnLst>' +
    '<p:seq concurrent="1" nextAc="seek"><p:cTn id="2" dur="indefinite" nodeType="mainSeq"><p:childTnLst>' +
    clicked.join('') +
    `</p:childTnLst></p:cTn><p:prevCondLst>${on('onPrev')}</p:prevCondLst><p:nextCondLst>${on('onNext')}</p:nextCondLst></p:seq>` +
    '</p:childTnLst></p:cTn></p:par></p:tnLst></p:timing>'
  );
}

const NOW = '<p:stCondLst><p:cond delay="0"/></p:stCondLst>';

const PRESETS: Readonly<Record<Move['how'], string>> = {
  sweep: 'presetID="22" presetClass="entr" presetSubtype="8"',
  appear: 'presetID="1" presetClass="entr" presetSubtype="0"',
  vanish: 'presetID="1" presetClass="exit" presetSubtype="0"',
};

function on(event: 'onPrev' | 'onNext'): string {
  return `<p:cond evt="${event}" delay="0"><p:tgtEl><p:sldTgt/></p:tgtEl></p:cond>`;
}
