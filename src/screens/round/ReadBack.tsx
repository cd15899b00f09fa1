import { useState } from 'react';
import type { ZoneView } from '../../actions';
import { w } from '../../words';
import { Sheet } from '../parts';
import { readBack } from './said';

/** What this zone's record says so far, in one sentence. A touch shows it in large type, to be called from the ground. */
export function ReadBack({ view }: { readonly view: ZoneView }) {
  const [big, setBig] = useState(false);
  const sentence = readBack(view);
  return (
    <div className={view.draft.touches === 0 && view.draft.already === undefined ? 'read-back unsaid' : 'read-back'}>
      <button type="button" className="read-back-line" onClick={() => setBig(true)} title={w.round.zone.readBig}>
        <span role="status">{sentence}</span>
      </button>
      <Sheet open={big} title={w.round.zone.readBack} onClose={() => setBig(false)}>
        <p className="read-back-big">{sentence}</p>
      </Sheet>
    </div>
  );
}
