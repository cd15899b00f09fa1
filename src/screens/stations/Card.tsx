import { w } from '../../words';
import { cardSize, greySteps } from './cardSize';
import { linesOf } from './linesOf';
import { ScaleBar } from './ScaleBar';

const words = w.stations.cards;

export interface CardProps {
  readonly number: string;
  readonly title: string;
  /** The letter of a station, or which square. */
  readonly mark: { readonly station: string } | { readonly square: 'best' | 'worst'; readonly zone: string };
  /** What it is aimed at, or how the frame is laid on. */
  readonly aim: string;
}

const { width, height } = cardSize;
const edge = 6;
const step = (width - 2 * edge) / greySteps.length;

/** One card, drawn in millimetres: number, mark, arrow, date, greys from white to black, ten centimetres. */
export function Card({ number, title, mark, aim }: CardProps) {
  const name = 'station' in mark ? w.stations.nameOf(mark.station, aim) : w.stations.squareOf(mark.square, mark.zone);
  return (
    <svg
      className="card-drawing"
      width={`${width}mm`}
      height={`${height}mm`}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={words.cardOf(number, title, name)}
    >
      <rect x="0.1" y="0.1" width={width - 0.2} height={height - 0.2} className="card-cut" />
      <text x={edge} y="15" className={number.length > 11 ? 'card-number long' : 'card-number'}>
        {linesOf(number, number.length > 11 ? 19 : 11, 1)[0]}
      </text>
      <Lines text={title} letters={26} most={2} x={edge} y={22} className="card-title" />
      <Lines text={aim} letters={40} most={2} x={edge} y={34} className="card-aim" />
      <path d="M96 6 104 16H99.5V34H92.5V16H88Z" fill="#000000" />
      <text x="96" y="40" className="card-up">
        {words.up}
      </text>
      <Mark mark={mark} />
      <rect x={edge} y="41.5" width="80" height="11" className="card-field" />
      <text x={edge + 1.5} y="45.4" className="card-small">
        {words.date}
      </text>
      {greySteps.map(({ fill, lightness }, i) => (
        <rect key={lightness} x={edge + i * step} y="56" width={step} height="20" fill={fill} />
      ))}
      <rect x={edge} y="56" width={width - 2 * edge} height="20" className="card-field" />
      <ScaleBar x={edge} y={80} />
      <text x="112" y="88" className="card-ten">
        {words.tenCm}
      </text>
      <Lines text={words.small} letters={80} most={2} x={edge} y={99.6} leading={3.2} className="card-small" />
    </svg>
  );
}

interface LinesProps {
  readonly text: string;
  readonly letters: number;
  readonly most: number;
  readonly x: number;
  readonly y: number;
  readonly leading?: number;
  readonly className: string;
}

function Lines({ text, letters, most, x, y, leading = 4.6, className }: LinesProps) {
  return linesOf(text, letters, most).map((line, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: lines of a text have no name but their place
    <text key={i} x={x} y={y + i * leading} className={className}>
      {line}
    </text>
  ));
}

/** Large enough to be read in a photo of the whole work. */
function Mark({ mark }: Pick<CardProps, 'mark'>) {
  if ('station' in mark)
    return (
      <text x="126" y="47" className={`card-letter ${sizeOf(mark.station)}`}>
        {mark.station}
      </text>
    );
  return (
    <>
      <rect x="113" y="6" width="28" height="28" className="card-square" />
      {mark.square === 'worst' && <path d="M113 22 119 16 125 24 131 13 136 20 141 15V34H113Z" fill="#000000" />}
      <text x="127" y="42" className="card-which">
        {words[mark.square]}
      </text>
      <text x="127" y="50" className="card-which">
        {words.zone(mark.zone)}
      </text>
    </>
  );
}

/** So that W, M and two letters stay clear of the arrow and the edge in any typeface. */
const sizeOf = (letters: string): string => {
  if (letters.length > 2) return 'long';
  if (letters.length === 2) return 'two';
  return 'MWQ'.includes(letters) ? 'wide' : '';
};
