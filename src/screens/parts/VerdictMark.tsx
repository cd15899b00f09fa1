import type { ReactNode } from 'react';
import type { Verdict } from '../../engine/change';
import { w } from '../../words';
import './verdictMark.css';

interface VerdictMarkProps {
  readonly verdict: Verdict;
  readonly clearly?: boolean;
  /** Said in place of the bare word. */
  readonly children?: ReactNode;
}

/** Our own five shapes, told apart without colour: a climb, a slope, a level, a hand-over, a gap. */
export const verdictShapes: Readonly<Record<Verdict, string>> = {
  worse: 'M3 17L9 12l3 3 8-10M20 11V5h-6',
  better: 'M3 5l6 5 3-3 8 10M20 11v6h-6',
  'no sure change': 'M4 9h16M4 15h16',
  carried: 'M4 7c5 0 5 10 10 10h5M16 13.5l3.5 3.5-3.5 3.5',
  'not comparable': 'M4 12h5M15 12h5M11 7l2 10',
};

/** A verdict in a word, with its shape. "Clearly" is said and drawn heavier. */
export function VerdictMark({ verdict, clearly = false, children }: VerdictMarkProps) {
  const word = w.thenAndNow.verdict[verdict];
  const slug = verdict.replaceAll(' ', '-');
  return (
    <span className={clearly ? `verdict ${slug} clearly` : `verdict ${slug}`}>
      <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
        <path d={verdictShapes[verdict]} />
      </svg>
      <span>{children ?? (clearly ? w.thenAndNow.clearlyVerdict(word) : word)}</span>
    </span>
  );
}
