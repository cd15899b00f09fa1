import type { ReactNode } from 'react';
import { ChartFrame } from '../parts/charts/ChartFrame';
import { straightScale } from '../parts/charts/straightScale';

interface SpanBarsProps {
  readonly title: string;
  readonly label: string;
  readonly bars: readonly {
    readonly key: string;
    readonly name: string;
    readonly low: number;
    readonly high: number;
  }[];
  /** Where things stand as entered. */
  readonly middle: number;
  /** What it is set beside. */
  readonly mark: number;
  readonly text: (value: number) => string;
  readonly remark: string;
  readonly table: ReactNode;
}

const row = 46;
const top = 6;
const foot = 34;

/** Bars from the lowest to the highest, over a line at what stands as entered and a dashed one at what it is set beside. */
export function SpanBars({ title, label, bars, middle, mark, text, remark, table }: SpanBarsProps) {
  const height = top + bars.length * row + foot;
  const ends = [middle, mark, ...bars.flatMap(({ low, high }) => [low, high])];
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  const room = (most - least) * 0.06 || 1;
  return (
    <>
      <ChartFrame
        title={title}
        titleUnseen
        label={label}
        height={height}
        draw={(width) => {
          const x = straightScale([Math.max(0, least - room), most + room], [6, width - 6]);
          const ground = height - foot;
          return (
            <>
              {bars.map(({ key, name, low, high }, i) => {
                const y = top + i * row;
                return (
                  <g key={key}>
                    <text x="6" y={y + 16}>
                      {name}
                    </text>
                    <text className="axis-text" x={width - 6} y={y + 16} textAnchor="end">
                      {low === high ? text(low) : `${text(low)} – ${text(high)}`}
                    </text>
                    <rect
                      className="span-bar"
                      x={x(low)}
                      y={y + 24}
                      width={Math.max(2, x(high) - x(low))}
                      height="14"
                    />
                    <line className="span-middle" x1={x(middle)} x2={x(middle)} y1={y + 20} y2={y + 42} />
                    <line className="span-mark" x1={x(mark)} x2={x(mark)} y1={y + 20} y2={y + 42} />
                  </g>
                );
              })}
              <text className="axis-text" x={x(middle)} y={ground + 20} textAnchor="middle">
                {text(middle)}
              </text>
              <text className="axis-text" x={x(mark)} y={ground + 20} textAnchor="middle">
                {text(mark)}
              </text>
            </>
          );
        }}
        table={table}
      />
      <p className="soft small">{remark}</p>
    </>
  );
}
