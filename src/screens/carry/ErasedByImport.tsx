import type { CarryPreview } from '../../actions';
import { isErasure } from '../../engine/record';
import { date, w } from '../../words';
import { Notice, Tick } from '../parts';
import { LongList } from '../parts/LongList';

const words = w.erasing;

interface ErasedByImportProps {
  readonly preview: CarryPreview;
  readonly agreed: boolean;
  readonly onAgree: (agreed: boolean) => void;
}

/** What erasures in a file would take out of this device for good, asked for apart, and what of the file was erased here before. */
export function ErasedByImport({ preview, agreed, onAgree }: ErasedByImportProps) {
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
          <Tick label={words.arrivingTick} checked={agreed} onChange={onAgree} />
        </Notice>
      )}
      {refused > 0 && <p>{words.refused(refused)}</p>}
    </>
  );
}
