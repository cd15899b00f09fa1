import { midSentence, sayReason, w } from '../../words';
import { Button, Notice } from '../parts';
import { PhotoTake } from '../parts/PhotoTake';
import { usePad } from './PadContext';
import { kindName } from './said';

const words = w.round;

/** What must be known before the next touch: people first, then stop words, what cannot be, the photo that did not come. */
export function ZoneNotices() {
  const { view, touch, expectPhoto, keepPhoto, keepingPhoto } = usePad();
  const { draft, personChecks, stops, conflicts } = view;
  const expected = draft.photoExpected;
  const what = expected === 'zone' ? words.photo.theZone : midSentence(kindName((expected ?? '').split('/')[0] ?? ''));
  const quietStops = stops.filter((f) => !personChecks.includes(f));
  return (
    <>
      {personChecks.length > 0 && (
        <Notice kind="stop" title={personChecks.map((f) => kindName(f.kind)).join(', ')}>
          <p className="strong">{words.zone.people}</p>
          <p>{words.zone.stop}</p>
          <p>{words.zone.peopleWhat}</p>
        </Notice>
      )}
      {quietStops.length > 0 && (
        <Notice kind="stop" title={quietStops.map((f) => kindName(f.kind)).join(', ')}>
          <p className="strong">{words.zone.stop}</p>
        </Notice>
      )}
      {conflicts.map((conflict) => (
        <Notice key={conflict.code} kind="problem" title={sayReason(conflict)} />
      ))}
      {keepingPhoto && <Notice kind="note" title={words.photo.keeping} />}
      {expected && !keepingPhoto && (
        <Notice
          kind="caution"
          title={words.photo.expected(what)}
          actions={
            <>
              <PhotoTake what={what} expect={() => expectPhoto(expected)} keep={(file) => keepPhoto(expected, file)} />
              <Button size="round" onClick={() => touch({ do: 'no photo' })}>
                {words.photo.without}
              </Button>
            </>
          }
        >
          <p>{words.photo.expectedWhat}</p>
        </Notice>
      )}
    </>
  );
}
