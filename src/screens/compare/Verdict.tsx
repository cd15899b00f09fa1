import type { FitVerdict, PhotoFit } from '../../engine/photo';
import type { Reason } from '../../engine/record';
import { w } from '../../words';
import { Notice, type NoticeKind } from '../parts';
import { Reasons } from '../parts/Reasons';

const words = w.compare;

const kinds: Readonly<Record<FitVerdict, NoticeKind>> = {
  same: 'note',
  'blink only': 'caution',
  'not the same station': 'stop',
};

interface VerdictProps {
  readonly fit: PhotoFit | undefined;
  /** Why the pairs there are do not lay it. */
  readonly refused: readonly Reason[];
  readonly begun: boolean;
}

/** How well the one lies on the other, and what that allows. */
export function Verdict({ fit, refused, begun }: VerdictProps) {
  if (fit)
    return (
      <Notice kind={kinds[fit.verdict]} title={words.verdicts[fit.verdict]}>
        <Reasons reasons={fit.reasons} />
      </Notice>
    );
  return (
    <Notice title={begun ? words.cannot : words.notYet}>
      {refused.length > 0 ? <Reasons reasons={refused} /> : <p>{words.onlyBeside}</p>}
    </Notice>
  );
}
