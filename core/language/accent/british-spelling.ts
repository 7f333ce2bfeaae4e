/**
 * How an American spelling is written in Britain: *colour*, *centre*, *realise*, *travelled*, *grey*. Rules
 * with lists, since *-or*, *-er* and *-ize* each stay in many words (*doctor*, *finger*, *size*). Other words
 * for the same thing (*mum*, *maths*) are no matter of spelling. From memory; checked against the British and
 * American word lists of SCOWL (docs/accents.md).
 */

/** The British spelling of a word (lower case), or null where it is the same. */
export function britishSpelling(word: string): string | null {
  const whole = WHOLE.get(word);
  if (whole) return whole;
  for (const [stems, from, to, endings] of ENDED) {
    const match = endings.exec(word);
    if (!match) continue;
    const stem = word.slice(0, match.index);
    if (stem.endsWith(from) && stems.has(stem)) return stem.slice(0, -from.length) + to + match[0];
  }
  return doubled(word) ?? withS(word);
}

/** *travelled*, *jeweller*: l is doubled after a weak vowel too. */
function doubled(word: string): string | null {
  const match = /(ed|ing|ings|er|ers)$/.exec(word);
  if (!match) return null;
  const stem = word.slice(0, match.index);
  return DOUBLED.has(stem) ? `${stem}l${match[0]}` : null;
}

/** *realise*, *analyse*, *organisation*, but not *size*, *prize*, *capsize*. */
function withS(word: string): string | null {
  const yze = /^(.*(?:al|ral))yz(e|ed|es|er|ers|ing)$/.exec(word);
  if (yze) return `${yze[1]}ys${yze[2]}`;
  const ize = /^(.*[a-z]i)z(e|ed|es|er|ers|ing|ation|ations|ational|able)$/.exec(word);
  if (!ize) return null;
  const stem = (ize[1] as string).slice(0, -1);
  const vowels = stem.match(/[aeiouy]+/g)?.length ?? 0;
  return vowels === 0 || KEEPS_Z.test(stem) ? null : `${ize[1]}s${ize[2]}`;
}

/** What stands before -ize where the z stays: *size*, *capsize*, *prize*, *seize*, *maize*. */
const KEEPS_Z = /^(re|over|out|down|cap|mid|up|under|as)?s$|^(ma|ba|se|pr)$/;

const words = (text: string): ReadonlySet<string> => new Set(text.split(' '));

/** Stems, the letters that change at their end and into what, and the endings that may follow. */
const ENDED: readonly (readonly [ReadonlySet<string>, string, string, RegExp])[] = [
  [
    words(
      'arbor ardor armor behavior candor clamor clangor color demeanor discolor dishonor disfavor endeavor ' +
        'enamor favor fervor flavor glamor harbor honor humor labor misbehavior neighbor odor parlor rancor ' +
        'rigor rumor savior savor splendor succor tumor valor vapor vigor watercolor multicolor technicolor',
    ),
    'or',
    'our',
    /(s|ed|ing|ings|er|ers|ful|fully|less|able|ably|ite|ites|hood|hoods|ly|y|al|ist|ists|)$/,
  ],
  [
    words(
      'caliber center epicenter fiber goiter kilometer centimeter millimeter liter milliliter kiloliter ' +
        'luster maneuver meager miter ocher saber scepter sepulcher somber specter theater amphitheater',
    ),
    'er',
    're',
    /(s|)$/,
  ],
];

const DOUBLED = words(
  'apparel barrel bevel cancel carol channel chisel counsel cudgel dial drivel duel enamel equal fuel funnel ' +
    'gambol gravel grovel initial jewel kennel label laurel level libel marshal marvel medal metal model ' +
    'panel pedal pencil peril quarrel ravel unravel refuel revel rival shovel shrivel signal snivel snorkel ' +
    'spiral squirrel stencil swivel symbol tinsel total towel travel trowel tunnel victual yodel',
);

/** Words that follow no rule, the stem before its endings. */
const WHOLE: ReadonlyMap<string, string> = new Map(
  (
    'aging:ageing analog:analogue ' +
    'analogs:analogues anemia:anaemia anemic:anaemic anesthesia:anaesthesia anesthetic:anaesthetic ' +
    'appall:appal archeology:archaeology archeologist:archaeologist artifact:artefact artifacts:artefacts ' +
    'ax:axe catalog:catalogue cataloged:catalogued catalogs:catalogues center:centre centered:centred ' +
    'centering:centring checkered:chequered cozier:cosier coziest:cosiest cozily:cosily coziness:cosiness ' +
    'cozy:cosy counselor:counsellor counselors:counsellors defense:defence defenses:defences ' +
    'defenseless:defenceless dialog:dialogue dialogs:dialogues disk:disc disks:discs distill:distil ' +
    'donut:doughnut donuts:doughnuts enroll:enrol enrollment:enrolment enrolls:enrols ' +
    'enthrall:enthral fiberglass:fibreglass fulfill:fulfil fulfillment:fulfilment ' +
    'fulfills:fulfils gray:grey grayed:greyed grayer:greyer grayest:greyest graying:greying ' +
    'grayish:greyish grays:greys instill:instil ' +
    'installment:instalment installments:instalments jewelry:jewellery leukemia:leukaemia ' +
    'licorice:liquorice maneuver:manoeuvre maneuvered:manoeuvred maneuvering:manoeuvring ' +
    'maneuvers:manoeuvres marvelous:marvellous moldy:mouldy mold:mould molded:moulded ' +
    'molding:moulding moldings:mouldings molds:moulds ' +
    'molt:moult molted:moulted molting:moulting molts:moults mustache:moustache mustaches:moustaches ' +
    'naught:nought offense:offence offenses:offences orthopedic:orthopaedic pajama:pyjama ' +
    'pajamas:pyjamas pediatric:paediatric pediatrician:paediatrician plow:plough plowed:ploughed ' +
    'plowing:ploughing plows:ploughs pretense:pretence pretenses:pretences skeptic:sceptic ' +
    'skeptical:sceptical skepticism:scepticism skeptics:sceptics skillful:skilful skillfully:skilfully ' +
    'smolder:smoulder smoldered:smouldered smoldering:smouldering smolders:smoulders ' +
    'sulfur:sulphur theatergoer:theatregoer tranquility:tranquillity ' +
    'traveler:traveller travelers:travellers vise:vice willful:wilful willfully:wilfully ' +
    'woolen:woollen woolens:woollens chili:chilli chilies:chillies drafty:draughty judgment:judgement ' +
    'judgments:judgements omelet:omelette omelets:omelettes phony:phoney practiced:practised ' +
    'practicing:practising snowplow:snowplough snowplows:snowploughs tidbit:titbit tidbits:titbits ' +
    'colorblind:colourblind'
  )
    .split(' ')
    .map((pair) => pair.split(':') as [string, string]),
);
