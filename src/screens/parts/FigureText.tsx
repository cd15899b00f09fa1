import type { Figure } from '../../engine/record';
import { w, figure as written } from '../../words';

interface FigureTextProps {
  readonly figure: Pick<Figure, 'value' | 'low' | 'high'> | null;
  /** What it is counted in. */
  readonly as?: 'index' | 'm2' | 'share';
  readonly large?: boolean;
}

/** A figure with its range, never bare: "72 (64 to 79)". */
export function FigureText({ figure, as = 'index', large }: FigureTextProps) {
  if (!figure) return <span className="soft">{w.parts.notKnown}</span>;
  const { value, range } = written(figure, as);
  return (
    <span className="figures">
      <span className={large ? 'figure-large' : 'strong'}>{value}</span> <span className="soft">({range})</span>
    </span>
  );
}
