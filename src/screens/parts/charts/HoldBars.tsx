import { useId } from 'react';
import { date, number, w } from '../../../words';
import { Axes } from './Axes';
import { ChartFrame, type LegendRow } from './ChartFrame';
import { Hatch } from './Hatch';
import { straightScale } from './straightScale';

const words = w.charts;

/** One coating: how long it kept the green away, in months, or in a word why nothing can be told. */
export type HoldBarRow =
  | {
      readonly coated: string;
      readonly lower: number;
      /** Null where it was not seen back. */
      readonly upper: number | null;
      readonly clean: 'verified' | 'assumed';
      readonly inPassing: boolean;
      /** Below a dividing line with this word: what happened before this coating. */
      readonly after?: string;
      /** Coated again while clear, still clear. */
      readonly remark?: string;
    }
  | { readonly coated: string; readonly none: string; readonly after?: string };

const rowHeight = 34;
const foot = 48;
const head = 6;

interface HoldBarsProps {
  readonly title: string;
  readonly titleUnseen?: boolean;
  readonly rows: readonly HoldBarRow[];
  /** Months the axis goes to, where several sets are held against each other: `reach` of them all. */
  readonly most?: number;
  /** The bars the legend speaks of: all of a page under its first drawing, none under the others. */
  readonly legendFor?: readonly HoldBarRow[];
}

type Bar = Extract<HoldBarRow, { readonly lower: number }>;
const isBar = (row: HoldBarRow): row is Bar => 'lower' in row;
/** Where a bar ends; one that is still open goes on a little past the last look. */
const endOf = ({ lower, upper }: Bar): number => upper ?? lower * 1.25 + 1;
/** Months the longest of these bars goes to. */
export const reach = (rows: readonly HoldBarRow[]): number =>
  Math.max(1, ...rows.map((row) => (isBar(row) ? endOf(row) : 0)));
const months = (value: number): string => number(value, 1);
const told = (row: HoldBarRow): string =>
  isBar(row)
    ? row.upper === null
      ? words.over(months(row.lower))
      : words.between(months(row.lower), months(row.upper))
    : row.none;

/** Bars from the last clear look to the first that saw the green: never a point, for nobody saw the day itself. */
export function HoldBars({ title, titleUnseen = false, rows, most, legendFor = rows }: HoldBarsProps) {
  if (rows.length === 0) return <p className="soft">{words.nothing}</p>;
  const dividers = rows.filter(({ after }) => after !== undefined).length;
  return (
    <ChartFrame
      title={title}
      titleUnseen={titleUnseen}
      label={words.barsLabel(title, rows.length)}
      height={head + rows.length * rowHeight + dividers * rowHeight + foot}
      draw={(width) => <HoldDrawing rows={rows} width={width} most={most ?? reach(rows)} />}
      legend={legendFor.length > 0 ? legendOf(legendFor) : []}
      table={
        <table className="plain-table">
          <caption className="unseen">{title}</caption>
          <thead>
            <tr>
              <th scope="col">{words.coating}</th>
              <th scope="col">{words.months}</th>
              <th scope="col">{words.remark}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a zone may be coated twice on one day
              <tr key={i}>
                <th scope="row">{date(row.coated)}</th>
                <td>{told(row)}</td>
                <td>
                  {[
                    row.after,
                    ...(isBar(row) ? [words[row.clean], row.inPassing ? words.inPassing : undefined, row.remark] : []),
                  ]
                    .filter((word) => word !== undefined)
                    .join('; ')}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      }
    />
  );
}

const legendOf = (rows: readonly HoldBarRow[]): readonly LegendRow[] => [
  { word: words.legendClear, mark: <line className="hold-clear" x1="1" x2="27" y1="7" y2="7" /> },
  {
    word: words.legendBetween,
    mark: <path className="hold-bar legend-bar" d="M2 2H26V12H2Z M7 12 13 2 M13 12 19 2 M19 12 25 2" />,
  },
  ...(rows.some((row) => isBar(row) && row.upper === null)
    ? [{ word: words.legendOpen, mark: <path className="hold-open" d="M2 3H22L27 7L22 11H2Z" /> }]
    : []),
  ...(rows.some((row) => isBar(row) && row.inPassing)
    ? [{ word: words.inPassing, mark: <path className="hold-passing" d={flag(14, 12)} /> }]
    : []),
  { word: words.verified, mark: <circle className="hold-start verified" cx="14" cy="7" r="5" /> },
  { word: words.assumed, mark: <circle className="hold-start" cx="14" cy="7" r="5" /> },
];

interface HoldDrawingProps {
  readonly rows: readonly HoldBarRow[];
  readonly width: number;
  readonly most: number;
}

function HoldDrawing({ rows, width, most }: HoldDrawingProps) {
  const id = useId();
  const narrow = width < 460;
  const left = narrow ? 88 : 176;
  const right = narrow ? 12 : 150;
  const x = straightScale([0, most], [left, width - right]).nice();
  const dividersBefore = (i: number): number => rows.slice(0, i + 1).filter(({ after }) => after !== undefined).length;
  const top = (i: number): number => head + (i + dividersBefore(i)) * rowHeight;
  const bottom = top(rows.length - 1) + rowHeight;
  return (
    <>
      <defs>
        <Hatch id={id} dense />
      </defs>
      <Axes
        x={x}
        y={straightScale([0, 1], [bottom, head])}
        xTicks={x.ticks(narrow ? 4 : 8)}
        yTicks={[]}
        xText={(value) => number(value, 1)}
        yText={String}
        xName={words.month}
      />
      {rows.map((row, i) => {
        const y = top(i);
        const middle = y + rowHeight / 2;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a zone may be coated twice on one day
          <g key={i}>
            {row.after !== undefined && (
              <>
                <line className="hold-divide" x1="0" x2={width} y1={y - rowHeight / 2} y2={y - rowHeight / 2} />
                <text className="axis-text hold-after" x="0" y={y - rowHeight / 2 - 5}>
                  {row.after}
                </text>
              </>
            )}
            <text x="0" y={middle} dy="0.35em">
              {narrow ? row.coated.slice(0, 7) : date(row.coated)}
            </text>
            {isBar(row) && <HoldBar row={row} x={x} middle={middle} fill={`url(#${id})`} />}
            {!narrow && (
              <text className="axis-text" x={x(isBar(row) ? endOf(row) : 0) + 10} y={middle} dy="0.35em">
                {isBar(row) ? short(row) : row.none}
              </text>
            )}
            {narrow && !isBar(row) && (
              <text className="axis-text" x={x(0) + 8} y={middle} dy="0.35em">
                {row.none}
              </text>
            )}
          </g>
        );
      })}
    </>
  );
}

const short = ({ lower, upper }: Bar): string =>
  upper === null ? words.overShort(months(lower)) : `${months(lower)} ${words.lastTo} ${months(upper)}`;

/** Points down at the end of a bar: somebody passing by saw it, nobody had come to look. */
const flag = (x: number, y: number): string => `M${x} ${y}l-6 -9h12Z`;

interface HoldBarProps {
  readonly row: Bar;
  readonly x: (months: number) => number;
  readonly middle: number;
  readonly fill: string;
}

function HoldBar({ row, x, middle, fill }: HoldBarProps) {
  const { lower, upper, clean, inPassing } = row;
  const [from, to] = [x(lower), x(endOf(row))];
  return (
    <>
      <line className="hold-clear" x1={x(0)} x2={from} y1={middle} y2={middle} />
      {upper === null ? (
        <path
          className="hold-open"
          d={`M${from} ${middle - 7}H${to - 7}L${to} ${middle}L${to - 7} ${middle + 7}H${from}Z`}
        />
      ) : (
        <rect className="hold-bar" fill={fill} x={from} y={middle - 8} width={Math.max(2, to - from)} height="16" />
      )}
      {inPassing && <path className="hold-passing" d={flag(to, middle - 4)} />}
      <circle className={`hold-start ${clean}`} cx={x(0)} cy={middle} r="4.5" />
    </>
  );
}
