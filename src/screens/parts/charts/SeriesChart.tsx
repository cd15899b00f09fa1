import { useId } from 'react';
import { dayNumber } from '../../../engine/record';
import { date, number, share, w, whole, figure as written } from '../../../words';
import { Axes } from './Axes';
import { ChartFrame } from './ChartFrame';
import { Hatch } from './Hatch';
import { type NumberedLine, NumberedLines, numberRow, rowsOf } from './NumberedLines';
import { bandPath, linePath } from './paths';
import { straightScale } from './straightScale';

const words = w.charts;

export interface SeriesChartPoint {
  readonly day: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Points of one unbroken stretch share a number; null: in none. */
  readonly span: number | null;
  /** Part of the surface was not seen. */
  readonly open?: boolean;
}

export interface SeriesChartProps {
  readonly title: string;
  readonly titleUnseen?: boolean;
  readonly unit: 'index' | 'm2' | 'colour' | 'share';
  /** What it shows in one sentence, for ears, where its points are no rounds. */
  readonly label?: string;
  readonly points: readonly SeriesChartPoint[];
  /** Where the series breaks, and what was done. */
  readonly breaks?: readonly { readonly day: string; readonly what: string }[];
  /** Coatings. */
  readonly ticks?: readonly string[];
  /** Where another person looked. */
  readonly marks?: readonly { readonly day: string; readonly what: string }[];
  readonly forecast?: {
    readonly day: string;
    readonly value: number;
    readonly low: number;
    readonly high: number;
  } | null;
  /** A height drawn across, with its name: the action level. */
  readonly level?: { readonly value: number; readonly what: string };
}

type Rows = readonly { readonly day: string; readonly what: string }[];

/** Height of the drawing itself; what stands over and under it comes on top. */
const body = 240;
const margin = { top: 14, right: 16, bottom: 30, left: 48 };
/** Room a year takes under the axis in the boldest theme. */
const yearRoom = 56;
const yearOf = (day: string): number => 1970 + dayNumber(day) / 365.2425;

/** A figure over the years with its 90 % band: whole where all was seen, cut where the surface became another one. */
export function SeriesChart(props: SeriesChartProps) {
  const { title, unit, points, breaks = [], marks = [], ticks = [], forecast } = props;
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last) return <p className="soft">{words.nothing}</p>;
  const write = (figure: { readonly value: number; readonly low: number; readonly high: number }) =>
    written(figure, unit);
  const remarks = numberedIn(breaks, marks).map(({ day, what }) => `${date(day)}: ${what}`);
  return (
    <ChartFrame
      title={title}
      titleUnseen={props.titleUnseen ?? false}
      label={props.label ?? words.seriesLabel(title, points.length, write(first).value, write(last).value)}
      height={(width) => footOf(props, width) + margin.bottom}
      draw={(width) => <SeriesDrawing {...props} width={width} />}
      remarks={remarks}
      legend={[
        { word: words.legendBand, mark: <rect className="series-band" x="1" y="2" width="26" height="10" /> },
        ...(ticks.length > 0
          ? [{ word: words.legendCoating, mark: <path className="coat-tick" d="M14 2 20 12H8Z" /> }]
          : []),
        ...(points.some(({ open }) => open)
          ? [{ word: words.legendOpenPoint, mark: <circle className="series-point open" cx="14" cy="7" r="5" /> }]
          : []),
        ...(forecast
          ? [{ word: words.forecast, mark: <line className="series-forecast-line" x1="1" x2="27" y1="7" y2="7" /> }]
          : []),
      ]}
      table={
        <table className="plain-table">
          <caption className="unseen">{title}</caption>
          <thead>
            <tr>
              <th scope="col">{words.day}</th>
              <th scope="col">{words.value}</th>
              <th scope="col">{words.range}</th>
              <th scope="col">{words.remark}</th>
            </tr>
          </thead>
          <tbody>
            {points.map((point, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two rounds may be of one day
              <tr key={i}>
                <th scope="row">{date(point.day)}</th>
                <td>{write(point).value}</td>
                <td>{write(point).range}</td>
                <td>{point.open ? words.notWholly : ''}</td>
              </tr>
            ))}
            {forecast && (
              <tr>
                <th scope="row">{date(forecast.day)}</th>
                <td>{write(forecast).value}</td>
                <td>{write(forecast).range}</td>
                <td>{words.forecast}</td>
              </tr>
            )}
          </tbody>
        </table>
      }
    />
  );
}

/** Breaks and marks in order of time: the number in the drawing is that of the remark under it. */
const numberedIn = (breaks: Rows, marks: Rows): readonly NumberedLine[] =>
  [
    ...breaks.map((row): NumberedLine => ({ ...row, kind: 'series-break' })),
    ...marks.map((row): NumberedLine => ({ ...row, kind: 'series-mark' })),
  ].sort((a, b) => a.day.localeCompare(b.day));

const yearsAcross = ({ points, forecast }: SeriesChartProps, width: number) => {
  const years = [...points.map(({ day }) => day), ...(forecast ? [forecast.day] : [])].map(yearOf);
  return straightScale([Math.min(...years) - 0.25, Math.max(...years) + 0.25], [margin.left, width - margin.right]);
};

/** Where the ground line lies: the more rows of numbers over the drawing, the further down. */
const footOf = (props: SeriesChartProps, width: number): number => {
  const x = yearsAcross(props, width);
  const rows = rowsOf(numberedIn(props.breaks ?? [], props.marks ?? []).map(({ day }) => x(yearOf(day))));
  return margin.top + (Math.max(-1, ...rows) + 1) * numberRow + body;
};

const spansOf = (points: readonly SeriesChartPoint[]): SeriesChartPoint[][] => {
  const spans = new Map<number, SeriesChartPoint[]>();
  for (const point of points) {
    if (point.span !== null) spans.set(point.span, [...(spans.get(point.span) ?? []), point]);
  }
  return [...spans.values()];
};

function SeriesDrawing({ width, ...props }: SeriesChartProps & { readonly width: number }) {
  const { unit, points, breaks = [], ticks = [], marks = [], forecast, level } = props;
  const id = useId();
  const x = yearsAcross(props, width);
  const foot = footOf(props, width);
  const every = [...points, ...(forecast ? [forecast] : [])];
  const most = Math.max(...every.map(({ high }) => high));
  const least = Math.min(...every.map(({ low }) => low), ...(level && unit === 'index' ? [level.value] : []));
  const domain: [number, number] =
    unit === 'index' ? [Math.max(0, Math.floor((least - 2) / 10) * 10), 100] : [0, most > 0 ? most * 1.08 : 1];
  const y = straightScale(domain, [foot, foot - body]);
  const spans = spansOf(points);
  const along = <T extends { readonly day: string }>(rows: readonly T[], of: (row: T) => number) =>
    rows.map((row) => [x(yearOf(row.day)), y(of(row))] as const);
  const band = (rows: readonly { readonly day: string; readonly low: number; readonly high: number }[]) =>
    bandPath(
      along(rows, ({ high }) => high),
      along(rows, ({ low }) => low),
    );
  const years = Array.from(
    { length: Math.ceil(x.domain()[1] ?? 0) - Math.ceil(x.domain()[0] ?? 0) },
    (_, i) => Math.ceil(x.domain()[0] ?? 0) + i,
  );
  const step = Math.max(1, Math.ceil((years.length * yearRoom) / (width - margin.left - margin.right)));
  const end = points.at(-1);
  return (
    <>
      <defs>
        <Hatch id={id} />
      </defs>
      <Axes
        x={x}
        y={y}
        xTicks={years.filter((_, i) => i % step === 0)}
        yTicks={y.ticks(5)}
        xText={(year) => String(year)}
        yText={(value) => (unit === 'index' ? whole(value) : unit === 'share' ? share(value) : number(value))}
      />
      {level && (
        <line className="series-level" x1={x.range()[0]} x2={x.range()[1]} y1={y(level.value)} y2={y(level.value)} />
      )}
      {level && (
        <text className="axis-text level-text" x={x.range()[1]} y={y(level.value) - 6} textAnchor="end">
          {level.what}
        </text>
      )}
      {spans.map((span) =>
        span.length > 1 ? (
          <path key={`band ${span[0]?.day}`} className="series-band" d={band(span)} />
        ) : (
          span.map((p) => (
            <line
              key={p.day}
              className="series-break"
              x1={x(yearOf(p.day))}
              x2={x(yearOf(p.day))}
              y1={y(p.low)}
              y2={y(p.high)}
            />
          ))
        ),
      )}
      {forecast && end && (
        <>
          <path d={band([end, forecast])} fill={`url(#${id})`} className="life-unknown" />
          <line
            className="series-forecast-line"
            x1={x(yearOf(end.day))}
            y1={y(end.value)}
            x2={x(yearOf(forecast.day))}
            y2={y(forecast.value)}
          />
        </>
      )}
      {spans.map((span) => (
        <path key={`line ${span[0]?.day}`} className="series-line" d={linePath(along(span, ({ value }) => value))} />
      ))}
      {points.map((p, i) => (
        <circle
          // biome-ignore lint/suspicious/noArrayIndexKey: two rounds may be of one day
          key={i}
          className={p.open ? 'series-point open' : 'series-point'}
          cx={x(yearOf(p.day))}
          cy={y(p.value)}
          r="5"
        />
      ))}
      <NumberedLines lines={numberedIn(breaks, marks)} at={(day) => x(yearOf(day))} foot={foot} />
      {ticks
        .map((day) => x(yearOf(day)))
        .filter((at) => at >= (x.range()[0] ?? 0) && at <= (x.range()[1] ?? 0))
        .map((at, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two coatings may be of one day
          <path key={i} className="coat-tick" d={`M${at} ${foot - 9}l5 9h-10Z`} />
        ))}
    </>
  );
}
