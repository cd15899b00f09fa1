import { type Course, levels, type Month } from '../../engine/fund';
import { unitsOf } from '../../engine/money';
import { date, number, roundMoney, w } from '../../words';
import { Axes } from '../parts/charts/Axes';
import { ChartFrame } from '../parts/charts/ChartFrame';
import { linePath } from '../parts/charts/paths';
import { straightScale } from '../parts/charts/straightScale';

const words = w.funds;
const height = 300;
const margin = { top: 12, right: 20, bottom: 48, left: 80 };
/** Months drawn at the least, and past the last thing that happens. */
const least = 36;
const beyond = 12;
/** Lines are told apart by their dashes, not by colour. */
const dashes = { inHand: undefined, pledged: '9 5', hoped: '2 5' } as const;
const keys = ['target', ...levels] as const;
type Key = (typeof keys)[number];

interface FundCurveProps {
  readonly course: Course;
  readonly currency: string;
  readonly wanted: string | undefined;
}

/** The target rising with prices, and what the fund holds, as sure as it is. */
export function FundCurve({ course, currency, wanted }: FundCurveProps) {
  const months = drawn(course, wanted);
  const years = months.filter((_, i) => i % 12 === 0);
  return (
    <ChartFrame
      title={words.whenLabel}
      titleUnseen
      label={words.whenLabel}
      height={height}
      draw={(width) => <Lines months={months} currency={currency} width={width} />}
      legend={keys.map((key) => ({
        word: words.lines[key],
        mark: <line {...look(key)} x1="0" x2="28" y1="7" y2="7" />,
      }))}
      table={
        <table className="plain-table cards">
          <caption>{words.whenCaption}</caption>
          <thead>
            <tr>
              <th scope="col">{words.month}</th>
              {keys.map((key) => (
                <th key={key} scope="col" className="of-number">
                  {words.lines[key]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {years.map((month) => (
              <tr key={month.day}>
                <th scope="row">{date(month.day.slice(0, 7))}</th>
                {keys.map((key) => (
                  <td key={key} className="of-number" data-head={words.short[key]}>
                    {roundMoney({ minor: month[key], currency })}
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

const look = (key: Key) =>
  key === 'target'
    ? ({ className: 'series-line fund-target' } as const)
    : ({ className: 'series-line', strokeDasharray: dashes[key] } as const);

/** The months up to a year past the day the last line meets the target, or the day it is wanted. */
const drawn = ({ months, meets }: Course, wanted: string | undefined): readonly Month[] => {
  const ends = [...levels.map((level) => meets[level]), wanted ?? null].flatMap((day) => day ?? []).sort();
  const last = months.findIndex(({ day }) => day >= (ends.at(-1) ?? ''));
  return months.slice(0, Math.max(least, (last < 0 ? months.length : last) + beyond) + 1);
};

interface LinesProps {
  readonly months: readonly Month[];
  readonly currency: string;
  readonly width: number;
}

function Lines({ months, currency, width }: LinesProps) {
  const units = (minor: number): number => unitsOf({ minor, currency });
  const most = Math.max(1, ...months.flatMap((month) => keys.map((key) => units(month[key]))));
  const x = straightScale([0, months.length - 1], [margin.left, width - margin.right]);
  const y = straightScale([0, most * 1.05], [height - margin.bottom, margin.top]);
  const januaries = months.flatMap(({ day }, i) => (day.endsWith('-01-01') ? [i] : []));
  const every = Math.ceil(januaries.length / (width < 460 ? 4 : 10));
  return (
    <>
      <Axes
        x={x}
        y={y}
        xTicks={januaries.filter((_, i) => i % every === 0)}
        yTicks={y.ticks(5)}
        xText={(at) => months[at]?.day.slice(0, 4) ?? ''}
        yText={(value) => number(value, 0)}
      />
      {keys.map((key) => (
        <path key={key} {...look(key)} d={linePath(months.map((month, i) => [x(i), y(units(month[key]))] as const))} />
      ))}
    </>
  );
}
