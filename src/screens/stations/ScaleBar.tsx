import { barLength } from './cardSize';

const centimetres = Array.from({ length: barLength / 10 }, (_, i) => i);
const black = '#000000';

/**
 * Ten centimetres, black and white by turns in two rows, so that both ends are seen on any ground; millimetres in the
 * first. Filled shapes only: a line's own width would lengthen it.
 */
export function ScaleBar({ x, y }: { readonly x: number; readonly y: number }) {
  return (
    <g transform={`translate(${x} ${y})`}>
      <rect className="scale-whole" width={barLength} height="1" fill={black} />
      <rect y="6" width={barLength} height="1" fill={black} />
      <rect y="11" width={barLength} height="1" fill={black} />
      {centimetres.map((i) => (
        <rect key={i} x={i * 10} y={i % 2 === 0 ? 1 : 7} width="10" height={i % 2 === 0 ? 5 : 4} fill={black} />
      ))}
      {centimetres.slice(0, 5).map((i) => (
        <rect key={i} x={i * 2 + 1} y="8.5" width="1" height="2.5" fill={black} />
      ))}
      {[...centimetres, centimetres.length].map((i) => (
        <text key={i} x={i * 10} y="15.6" className="card-mark">
          {i}
        </text>
      ))}
    </g>
  );
}
