import { percent } from '../../wording/percent.ts';
import { CHART, pointOf, rises, stairPath } from './share-path.ts';
import { say } from './wording.ts';

interface ChartProps {
  readonly shares: readonly number[];
  readonly upTo: number;
  /** The step that makes it 95%, and 98%; null for none. */
  readonly goals: readonly { readonly share: number; readonly step: number | null }[];
}

/** How much could be read after each step, as a small picture and as a table. */
export function Chart({ shares, upTo, goals }: ChartProps) {
  const last = shares.length - 1;
  const here = pointOf(Math.min(upTo, last), shares[Math.min(upTo, last)] ?? 0, last);
  const stair = stairPath(shares);
  return (
    <figure class="chart">
      <figcaption class="small quiet">{say.chart.shareThatCan}</figcaption>
      <div class="chart-frame">
        <svg
          viewBox={`0 -6 ${CHART.width} ${CHART.height + 12}`}
          preserveAspectRatio="none"
          role="img"
          aria-label={say.chart.theShareRises(
            percent(shares[0] ?? 0),
            percent(shares[last] ?? 0),
            last,
          )}
        >
          <path class="chart-area" d={`${stair}V${CHART.height}H0Z`} />
          {goals.map(({ share }) => (
            <line
              key={share}
              class="chart-goal"
              x1="0"
              x2={CHART.width}
              y1={(1 - share) * CHART.height}
              y2={(1 - share) * CHART.height}
            />
          ))}
          <path class="chart-stair" d={stair} />
          <line class="chart-here" x1={here.x} x2={here.x} y1="-6" y2={CHART.height + 6} />
        </svg>
      </div>
      <p class="chart-feet small quiet" aria-hidden="true">
        <span>{say.chart.step1}</span>
        <span>{say.chart.step(last)}</span>
      </p>
      <p class="chart-key small quiet">
        <span class="key-here" /> {say.chart.yourClass95(<span class="key-goal" />)}
      </p>
      <details>
        <summary>{say.chart.allSteps}</summary>
        <table>
          <thead>
            <tr>
              <th scope="col">{say.chart.fromStep}</th>
              <th scope="col">{say.chart.canBeRead}</th>
            </tr>
          </thead>
          <tbody>
            {rises(shares).map(({ step, share }) => (
              <tr key={step}>
                <td>{step}</td>
                <td>{percent(share)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </figure>
  );
}
