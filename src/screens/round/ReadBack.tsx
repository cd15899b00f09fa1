import { useState } from 'react';
import { settings, type ZoneView } from '../../actions';
import type { DraftFinding, ZoneDraft } from '../../engine/record';
import { w } from '../../words';
import { Sheet } from '../parts';
import { useQuestion } from '../shell';
import { called, calledNext, takenBetween } from './called';
import { readBack } from './said';

interface ReadBackProps {
  readonly view: ZoneView;
  /** What was said on leaving the zone before, in call and tap. */
  readonly left: string | undefined;
}

/** What this zone's record says so far, in one sentence. A touch shows it in large type, to be called from the ground. */
export function ReadBack({ view, left }: ReadBackProps) {
  const [big, setBig] = useState(false);
  const { callAndTap } = useQuestion(settings);
  const [seen, setSeen] = useState<{ draft: ZoneDraft; taken?: DraftFinding | undefined }>({ draft: view.draft });
  if (seen.draft !== view.draft) setSeen({ draft: view.draft, taken: takenBetween(seen.draft, view.draft) });
  const sentence = readBack(view);
  const untouched = view.draft.touches === 0;
  return (
    <div className={untouched && view.draft.already === undefined && !callAndTap ? 'read-back unsaid' : 'read-back'}>
      {callAndTap ? (
        <button
          type="button"
          className="read-back-line called"
          onClick={() => setBig(true)}
          aria-description={w.callAndTap.whole}
        >
          <span role="status" className="read-back-big">
            {untouched && left && `${left} `}
            {called(view, seen.taken)}
            <span className="called-next"> {calledNext(view, seen.taken)}</span>
          </span>
        </button>
      ) : (
        <button type="button" className="read-back-line" onClick={() => setBig(true)} title={w.round.zone.readBig}>
          <span role="status">{sentence}</span>
        </button>
      )}
      <Sheet open={big} title={w.round.zone.readBack} onClose={() => setBig(false)}>
        <p className="read-back-big">{sentence}</p>
      </Sheet>
    </div>
  );
}
