import { AIMS } from '../../../core/boards/search/aims.ts';
import { contrastChoices, contrastThrees } from '../../../core/drills/contrasts.ts';
import { accent } from '../../state/accent.ts';
import { freshSeed, remakeDrill, type Wishes, wishes } from '../../state/plan.ts';
import { taught } from '../../state/progress.ts';
import { aimNames } from '../../wording/aim-names.ts';
import { contrastKey, contrastName } from '../../wording/contrast-name.ts';
import { counted } from '../../wording/counted.ts';

type Options = readonly (readonly [value: string, name: string])[];

const flipCounts: Options = [10, 15, 20, 25, 30, 40].map((count) => [`${count}`, `${count}`]);

const realShares: Options = [
  ['0', 'none'],
  ['0.25', 'a quarter'],
  ['0.5', 'half'],
  ['0.75', 'three quarters'],
  ['1', 'all'],
];

const focusShares: Options = [['', 'as they come'], ...realShares.slice(1)];

const orders: Options = [
  ['mixed', 'mixed'],
  ['rise', 'easy ones first'],
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
        name="Flips"
        value={`${now.flips}`}
        options={flipCounts}
        choose={(count) => remake({ flips: Number(count) }, `${count} flips.`)}
      />
      <Choice
        name="Real words"
        value={`${now.realShare}`}
        options={realShares}
        choose={(share) => remake({ realShare: Number(share) }, 'Changed the share of real words.')}
      />
      <details open={now.focusShare !== null || chosen !== '' || now.rise || now.aim !== 'today'}>
        <summary>More wishes</summary>
        <div class="wishes">
          <Choice
            name="Words with a card to practice"
            value={now.focusShare === null ? '' : `${now.focusShare}`}
            options={focusShares}
            choose={(share) =>
              remake(
                { focusShare: share === '' ? null : Number(share) },
                'Changed how often the cards to practice come.',
              )
            }
          />
          {pairs.length > 0 && (
            <Choice
              name="Side by side"
              value={pairs.some((pair) => contrastKey(pair) === chosen) ? chosen : ''}
              options={[
                ['', 'as they come'],
                ...pairs.map((pair) => [contrastKey(pair), contrastName(pair)] as const),
              ]}
              choose={(key) => {
                const pair = pairs.find((one) => contrastKey(one) === key);
                remake({ contrast: pair ?? null }, 'Changed what comes side by side.');
              }}
            />
          )}
          <Choice
            name="Board"
            value={now.aim}
            options={AIMS.map((aim) => [aim, aimNames[aim].toLowerCase()] as const)}
            choose={(aim) =>
              remake({ aim: aim as Wishes['aim'] }, 'Changed what the board is for.')
            }
          />
          <Choice
            name="Order"
            value={now.rise ? 'rise' : 'mixed'}
            options={orders}
            choose={(order) => remake({ rise: order === 'rise' }, 'Changed the order.')}
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
      name={part === 'visual' ? 'Words by sight' : 'Words to spell'}
      value={`${value}`}
      options={all.map((count) => [`${count}`, count === 0 ? 'none' : `${count}`])}
      choose={(count) => {
        const size =
          part === 'visual' ? { sightCount: Number(count) } : { sightSaidCount: Number(count) };
        remakeDrill(
          { ...now, ...size },
          freshSeed(),
          `${counted(Number(count), 'word')} by sight.`,
        );
      }}
    />
  );
}

const sightCounts = [0, 1, 2, 3, 4, 5, 6, 8, 10];

const sizes = {
  visual: ['Cards', 'card', [4, 6, 8, 10, 12, 15, 18, 24]],
  auditory: ['Sounds', 'sound', [2, 3, 4, 5, 6, 8, 10]],
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
