import { cumulativeWorth, moneyOf } from '../../engine/money';
import { nameOfOption, number, roundMoney, w } from '../../words';
import { Axes } from '../parts/charts/Axes';
import { ChartFrame } from '../parts/charts/ChartFrame';
import { linePath } from '../parts/charts/paths';
import { straightScale } from '../parts/charts/straightScale';
import type { Around } from './around';

const words = w.options;
const height = 280;
const margin = { top: 12, right: 28, bottom: 48, left: 70 };
/** Lines are told apart by their dashes and by the letter at their end. */
const dashes = [undefined, '9 5', '2 5', '12 4 2 4', '5 3'];

interface Line {
  readonly name: string;
  readonly values: readonly number[];
  readonly currency: string;
}

/** What each way has cost by the end of each year, in worth today: where the lines cross, the dearer at the start has caught up. */
export function CostSoFar({ around: { rows, options, rules } }: { readonly around: Around }) {
  const lines = rows.map((row) => ({
    name: nameOfOption(options, row.option.thing),
    values: cumulativeWorth(row.payments, rules.rate),
    currency: row.currency,
  }));
  const years = Array.from({ length: rules.years + 1 }, (_, year) => year);
  return (
    <ChartFrame
      title={words.cumulative}
      label={words.cumulativeLabel}
      height={height}
      draw={(width) => <Lines lines={lines} years={rules.years} width={width} />}
      legend={lines.map(({ name }, i) => ({
        word: name,
        mark: <line className="series-line" strokeDasharray={dashes[i % dashes.length]} x1="0" x2="28" y1="7" y2="7" />,
      }))}
      table={
        <table className="plain-table">
          <caption>{words.cumulativeLabel}</caption>
          <thead>
            <tr>
              <th scope="col">{words.year}</th>
              {lines.map(({ name }) => (
                <th key={name} scope="col" className="of-number">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {years.map((year) => (
              <tr key={year}>
                <th scope="row">{year}</th>
                {lines.map(({ name, values, currency }) => (
                  <td key={name} className="of-number">
                    {roundMoney(moneyOf(values[year] ?? 0, currency))}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      }
    />
  );
}

function Lines({
  lines,
  years,
  width,
}: {
  readonly lines: readonly Line[];
  readonly years: number;
  readonly width: number;
}) {
  const most = Math.max(1, ...lines.flatMap(({ values }) => values));
  const x = straightScale([0, years], [margin.left, width - margin.right]);
  const y = straightScale([0, most * 1.05], [height - margin.bottom, margin.top]);
  const ends = apart(lines.map(({ values }) => y(values.at(-1) ?? 0)));
  return (
    <>
      <Axes
        x={x}
        y={y}
        xTicks={x.ticks(width < 460 ? 4 : 10).filter(Number.isInteger)}
        yTicks={y.ticks(5)}
        xText={(value) => `${value}`}
        yText={(value) => number(value, 0)}
        xName={words.year}
      />
      {lines.map(({ name, values }, i) => (
        <g key={name}>
          <path
            className="series-line"
            strokeDasharray={dashes[i % dashes.length]}
            d={linePath(values.map((value, year) => [x(year), y(value)] as const))}
          />
          <text x={x(years) + 8} y={ends[i]} dy="0.35em">
            {name.split(' ')[0]}
          </text>
        </g>
      ))}
    </>
  );
}

const letterHeight = 17;

/** Heights of letters, moved down as little as keeps each from lying on the one above. */
const apart = (heights: readonly number[]): readonly number[] => {
  const placed: number[] = [];
  const order = heights.map((height, i) => ({ height, i })).sort((a, b) => a.height - b.height);
  let least = Number.NEGATIVE_INFINITY;
  for (const { height, i } of order) {
    least = Math.max(height, least + letterHeight);
    placed[i] = least;
  }
  return placed;
};
