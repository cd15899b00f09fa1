import type { FirmPlace } from '../../engine/firmness';
import { sayReason, w } from '../../words';

const words = w.nextSteps;

/** A post that stands on its ground; an arrow that goes up and down. Told apart without colour. */
const shapes = {
  firm: 'M4 20h16M9 20V6h6v14',
  'could be elsewhere': 'M12 4v16M8 8l4-4 4 4M8 16l4 4 4-4',
} as const;

/** How firm a zone's place is, in a word and a sentence. */
export function FirmMark({ place }: { readonly place: FirmPlace }) {
  const [first] = place.reasons;
  return (
    <p className="firm-mark small">
      {place.word && (
        <svg width="20" height="20" viewBox="0 0 24 24" aria-hidden="true">
          <path d={shapes[place.word]} />
        </svg>
      )}
      <span>
        {place.word && <span className="strong">{words.firmWord[place.word]} </span>}
        {first && sayReason(first)}
      </span>
    </p>
  );
}
