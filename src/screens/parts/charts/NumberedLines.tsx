/** A day something happened on: a break in the series, or another surveyor. */
export interface NumberedLine {
  readonly day: string;
  readonly what: string;
  readonly kind: 'series-break' | 'series-mark';
}

const radius = 10;
/** Height one row of numbers takes over a drawing. */
export const numberRow = 22;

/** The row each number stands in, so that none lies on another: the first row that is free there. `at` ascending, in pixels. */
export const rowsOf = (at: readonly number[]): number[] => {
  const ends: number[] = [];
  return at.map((x) => {
    const free = ends.findIndex((end) => x - end >= 2 * radius + 2);
    const row = free < 0 ? ends.length : free;
    ends[row] = x;
    return row;
  });
};

interface NumberedLinesProps {
  readonly lines: readonly NumberedLine[];
  readonly at: (day: string) => number;
  readonly foot: number;
}

/** Lines down through the drawing, each with the number its remark has under it. */
export function NumberedLines({ lines, at, foot }: NumberedLinesProps) {
  const rows = rowsOf(lines.map(({ day }) => at(day)));
  return lines.map(({ day, kind }, i) => {
    const x = at(day);
    const y = radius + 2 + (rows[i] ?? 0) * numberRow;
    return (
      // biome-ignore lint/suspicious/noArrayIndexKey: the number is what the remark under the drawing has
      <g key={i}>
        <line className={kind} x1={x} x2={x} y1={y} y2={foot} />
        <g className="chart-number">
          <circle cx={x} cy={y} r={radius} />
          <text x={x} y={y} dy="0.35em" textAnchor="middle">
            {i + 1}
          </text>
        </g>
      </g>
    );
  });
}
