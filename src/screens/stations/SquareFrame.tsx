import { w } from '../../words';

const words = w.stations.cards;

/** Millimetres: the sheet of card that is left, and the opening in it. */
const outer = 148;
const opening = 100;
const rim = (outer - opening) / 2;
const ticks = Array.from({ length: 11 }, (_, i) => rim + i * 10);

/** A frame to cut out and hold on a sentinel square: ten centimetres inside, a tick at every one, and which way is up. */
export function SquareFrame() {
  return (
    <svg
      className="card-drawing"
      width={`${outer}mm`}
      height={`${outer}mm`}
      viewBox={`0 0 ${outer} ${outer}`}
      role="img"
      aria-label={words.frameAlt}
    >
      <rect x="0.1" y="0.1" width={outer - 0.2} height={outer - 0.2} className="card-cut" />
      {ticks.map((at) => (
        <g key={at} fill="#000000">
          <rect x={at - 0.25} y={rim - 5} width="0.5" height="5" />
          <rect x={at - 0.25} y={outer - rim} width="0.5" height="5" />
          <rect y={at - 0.25} x={rim - 5} width="5" height="0.5" />
          <rect y={at - 0.25} x={outer - rim} width="5" height="0.5" />
        </g>
      ))}
      <rect x={rim} y={rim} width={opening} height={opening} className="card-cut" />
      <path d={`M${outer / 2} 4 ${outer / 2 + 7} 11H${outer / 2 + 3}V18H${outer / 2 - 3}V11H${outer / 2 - 7}Z`} />
      <text x={outer / 2 + 10} y="13" className="card-title">
        {words.up}
      </text>
      <rect x={rim} y={outer - 16} width="80" height="11" className="card-field" />
      <text x={rim + 1.5} y={outer - 12} className="card-small">
        {words.date}
      </text>
      <text x={outer / 2} y={outer / 2} className="card-which">
        {words.frameInside}
      </text>
      <text x={outer / 2} y={outer / 2 + 7} className="card-middle">
        {words.frameWhat}
      </text>
    </svg>
  );
}
