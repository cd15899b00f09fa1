import type { CarryPreview } from '../../actions';
import { isErasure } from '../../engine/record';
import { date, w } from '../../words';
import { Notice } from '../parts';
import { LongList } from '../parts/LongList';

const words = w.erasing;

/** What erasures in a file would take out of this device for good, and what of the file was erased here before. */
export function ErasedByImport({ preview }: { readonly preview: CarryPreview }) {
  const { erased, refused, entries } = preview;
  return (
    <>
      {erased.entries + erased.photos > 0 && (
        <Notice kind="caution" title={words.arriving(erased.entries, erased.photos)}>
          <p>{words.arrivingWhat}</p>
          <LongList
            className="stack"
            rows={entries.filter(isErasure)}
            show={({ id, body }) => (
              <li key={id}>
                {words.soFarRow(
                  body.of === 'photo' ? words.soFarOf.photo : words.soFarOf.name,
                  date(String(body.date)),
                  String(body.reason),
                )}
              </li>
            )}
          />
        </Notice>
      )}
      {refused > 0 && <p>{words.refused(refused)}</p>}
    </>
  );
}
