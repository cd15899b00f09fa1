import type { StraightScale } from './straightScale';

interface AxesProps {
  readonly x: StraightScale;
  readonly y: StraightScale;
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
  readonly xText: (value: number) => string;
  readonly yText: (value: number) => string;
  /** Under the axis, at its end. */
  readonly xName?: string;
}

/** The ground line with its marks, and thin lines across for reading heights off. */
export function Axes({ x, y, xTicks, yTicks, xText, yText, xName }: AxesProps) {
  const [left = 0, right = 0] = x.range();
  const [foot = 0] = y.range();
  return (
    <g className="axes">
      {yTicks.map((value) => (
        <g key={value}>
          <line className="axis-across" x1={left} x2={right} y1={y(value)} y2={y(value)} />
          <text className="axis-text" x={left - 8} y={y(value)} dy="0.35em" textAnchor="end">
            {yText(value)}
          </text>
        </g>
      ))}
      <line className="axis-ground" x1={left} x2={right} y1={foot} y2={foot} />
      {xTicks.map((value) => (
        <g key={value}>
          <line className="axis-ground" x1={x(value)} x2={x(value)} y1={foot} y2={foot + 5} />
          <text className="axis-text" x={x(value)} y={foot + 21} textAnchor="middle">
            {xText(value)}
          </text>
        </g>
      ))}
      {xName && (
        <text className="axis-text" x={right} y={foot + 40} textAnchor="end">
          {xName}
        </text>
      )}
    </g>
  );
}
