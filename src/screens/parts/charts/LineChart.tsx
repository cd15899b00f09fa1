import type { ReactNode } from 'react';
import { w } from '../../../words';
import { Axes } from './Axes';
import { ChartFrame } from './ChartFrame';
import { bandPath, linePath } from './paths';
import { straightScale } from './straightScale';

const words = w.charts;

export interface LineChartProps {
  readonly title: string;
  readonly titleUnseen?: boolean;
  readonly label: string;
  /** A line with its band, in order of x. */
  readonly line: readonly { readonly x: number; readonly value: number; readonly low: number; readonly high: number }[];
  /** Single points beside it. */
  readonly points?: readonly { readonly x: number; readonly y: number }[];
  /** Draws the line on which both axes agree. */
  readonly diagonal?: boolean;
  readonly xName: string;
  readonly xText: (value: number) => string;
  readonly yText: (value: number) => string;
  /** Ends of both axes; found from what is drawn where left out. */
  readonly domain?: readonly [number, number];
  readonly table: ReactNode;
}

const height = 280;
const margin = { top: 12, right: 16, bottom: 48, left: 60 };

/** A line with its 90 % band: how an attack grows over years, or what an eye says against what is true. */
export function LineChart(props: LineChartProps) {
  const { title, label, line, points = [], table } = props;
  if (line.length === 0 && points.length === 0) return <p className="soft">{words.nothing}</p>;
  return (
    <ChartFrame
      title={title}
      titleUnseen={props.titleUnseen ?? false}
      label={label}
      height={height}
      draw={(width) => <LineDrawing {...props} width={width} />}
      table={table}
    />
  );
}

function LineDrawing({
  line,
  points = [],
  diagonal,
  xName,
  xText,
  yText,
  domain,
  width,
}: LineChartProps & { readonly width: number }) {
  const xs = [...line.map((p) => p.x), ...points.map((p) => p.x)];
  const ys = [...line.map((p) => p.high), ...points.map((p) => p.y)];
  const x = straightScale(domain ?? [0, Math.max(...xs)], [margin.left, width - margin.right]);
  const y = straightScale(domain ?? [0, Math.max(...ys) * 1.05], [height - margin.bottom, margin.top]);
  const along = (of: 'low' | 'value' | 'high') => line.map((p) => [x(p.x), y(p[of])] as const);
  const band = bandPath(along('high'), along('low'));
  const path = linePath(along('value'));
  const [least = 0, most = 0] = x.domain();
  return (
    <>
      <Axes
        x={x}
        y={y}
        xTicks={x.ticks(width < 460 ? 4 : 8)}
        yTicks={y.ticks(5)}
        xText={xText}
        yText={yText}
        xName={xName}
      />
      {diagonal && <line className="series-level" x1={x(least)} y1={y(least)} x2={x(most)} y2={y(most)} />}
      {band && <path className="series-band" d={band} />}
      {path && <path className="series-line" d={path} />}
      {points.map((p, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two points may lie on each other
        <circle key={i} className="series-point open" cx={x(p.x)} cy={y(p.y)} r="5" />
      ))}
    </>
  );
}
