import { AIMS } from '../../../core/boards/search/aims.ts';
import { contrastChoices, contrastThrees } from '../../../core/drills/contrasts.ts';
import { accent } from '../../state/accent.ts';
import { freshSeed, remakeDrill, type Wishes, wishes } from '../../state/plan.ts';
import { taught } from '../../state/progress.ts';
import { aimNames } from '../../wording/aim-names.ts';
import { contrastKey, contrastName } from '../../wording/contrast-name.ts';
import { counted } from '../../wording/counted.ts';
import { say } from './wording.ts';

type Options = readonly (readonly [value: string, name: string])[];

const flipCounts: Options = [10, 15, 20, 25, 30, 40].map((count) => [`${count}`, `${count}`]);

const realShares: Options = [
  ['0', say.wishChoices.none],
  ['0.25', say.wishChoices.aQuarter],
  ['0.5', say.wishChoices.half],
  ['0.75', say.wishChoices.threeQuarters],
  ['1', say.wishChoices.all],
];

const focusShares: Options = [['', say.wishChoices.asTheyCome], ...realShares.slice(1)];

const orders: Options = [
  ['mixed', say.wishChoices.mixed],
  ['rise', say.wishChoices.easyOnesFirst],
];

/** What she wishes of the run of flips; each change makes the warm-up again. */
export function WishChoices() {
  const now = wishes.value;
  const remake = (some: Partial<Wishes>, said: string) =>
    remakeDrill({ ...now, ...some }, freshSeed(), said);
  const pairs = [...contrastChoices(taught.value, accent.value), ...contrastThrees(taught.value)];
  const chosen = now.contrast === null ? '' : contrastKey(now.contrast);
  return (
    <div class="wishes">
      <Choice
        name={say.wishChoices.flips}
        value={`${now.flips}`}
        options={flipCounts}
        choose={(count) => remake({ flips: Number(count) }, say.wishChoices.withFlips(count))}
      />
      <Choice
        name={say.wishChoices.realWords}
        value={`${now.realShare}`}
        options={realShares}
        choose={(share) => remake({ realShare: Number(share) }, say.wishChoices.changedTheShare)}
      />
      <details open={now.focusShare !== null || chosen !== '' || now.rise || now.aim !== 'today'}>
        <summary>{say.wishChoices.moreWishes}</summary>
        <div class="wishes">
          <Choice
            name={say.wishChoices.wordsWithACard}
            value={now.focusShare === null ? '' : `${now.focusShare}`}
            options={focusShares}
            choose={(share) =>
              remake(
                { focusShare: share === '' ? null : Number(share) },
                say.wishChoices.changedHowOften,
              )
            }
          />
          {pairs.length > 0 && (
            <Choice
              name={say.wishChoices.sideBySide}
              value={pairs.some((pair) => contrastKey(pair) === chosen) ? chosen : ''}
              options={[
                ['', say.wishChoices.asTheyCome],
                ...pairs.map((pair) => [contrastKey(pair), contrastName(pair)] as const),
              ]}
              choose={(key) => {
                const pair = pairs.find((one) => contrastKey(one) === key);
                remake({ contrast: pair ?? null }, say.wishChoices.changedWhatComesSide);
              }}
            />
          )}
          <Choice
            name={say.wishChoices.board}
            value={now.aim}
            options={AIMS.map((aim) => [aim, aimNames[aim].toLowerCase()] as const)}
            choose={(aim) =>
              remake({ aim: aim as Wishes['aim'] }, say.wishChoices.changedWhatTheBoard)
            }
          />
          <Choice
            name={say.wishChoices.order}
            value={now.rise ? 'rise' : 'mixed'}
            options={orders}
            choose={(order) => remake({ rise: order === 'rise' }, say.wishChoices.changedTheOrder)}
          />
        </div>
      </details>
    </div>
  );
}

/** How many cards are shown, or sounds said; for this group. */
export function SizeChoice({ part }: { readonly part: 'visual' | 'auditory' }) {
  const now = wishes.value;
  const [name, thing, counts] = sizes[part];
  const value = part === 'visual' ? now.visualCount : now.auditoryCount;
  const all = [...new Set([...counts, value])].toSorted((one, other) => one - other);
  return (
    <Choice
      name={name}
      value={`${value}`}
      options={all.map((count) => [`${count}`, `${count}`])}
      choose={(count) => {
        const size =
          part === 'visual' ? { visualCount: Number(count) } : { auditoryCount: Number(count) };
        remakeDrill({ ...now, ...size }, freshSeed(), `${counted(Number(count), thing)}.`);
      }}
    />
  );
}

/** How many words known by sight are shown, or said to be spelled; for this group. Nothing until one was taught. */
export function SightChoice({ part }: { readonly part: 'visual' | 'auditory' }) {
  const now = wishes.value;
  if (taught.value.irregularWords.size === 0) return null;
  const value = part === 'visual' ? now.sightCount : now.sightSaidCount;
  const all = [...new Set([...sightCounts, value])].toSorted((one, other) => one - other);
  return (
    <Choice
      name={part === 'visual' ? say.wishChoices.wordsBySight : say.wishChoices.wordsToSpell}
      value={`${value}`}
      options={all.map((count) => [`${count}`, count === 0 ? say.wishChoices.none : `${count}`])}
      choose={(count) => {
        const size =
          part === 'visual' ? { sightCount: Number(count) } : { sightSaidCount: Number(count) };
        remakeDrill(
          { ...now, ...size },
          freshSeed(),
          say.wishChoices.withWordsBySight(Number(count)),
        );
      }}
    />
  );
}

const sightCounts = [0, 1, 2, 3, 4, 5, 6, 8, 10];

const sizes = {
  visual: [say.wishChoices.cards, say.wishChoices.card, [4, 6, 8, 10, 12, 15, 18, 24]],
  auditory: [say.wishChoices.sounds, say.wishChoices.sound, [2, 3, 4, 5, 6, 8, 10]],
} as const;

interface ChoiceProps {
  readonly name: string;
  readonly value: string;
  readonly options: Options;
  readonly choose: (value: string) => void;
}

function Choice({ name, value, options, choose }: ChoiceProps) {
  return (
    <label>
      {name}{' '}
      <select value={value} onChange={(event) => choose(event.currentTarget.value)}>
        {options.map(([each, called]) => (
          <option key={each} value={each}>
            {called}
          </option>
        ))}
      </select>
    </label>
  );
}
