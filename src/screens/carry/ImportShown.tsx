import { useEffect, useRef, useState } from 'react';
import type { CarryPreview } from '../../actions';
import type { PreviewRow } from '../../engine/exchange';
import { bytes, sayReason, w, whole, workName } from '../../words';
import { Button, Notice, Tick } from '../parts';
import { ErasedByImport } from './ErasedByImport';

const words = w.carry;

interface ImportShownProps {
  readonly preview: CarryPreview;
  readonly fault: string | undefined;
  readonly onAccept: (otherCollection: boolean) => void;
  readonly onLeave: () => void;
}

/** What a file would change, sculpture by sculpture, before anything is stored. */
export function ImportShown({ preview, fault, onAccept, onLeave }: ImportShownProps) {
  const { fileName, rows, entries, photos, litter, otherCollection, inventedIntoReal, notes } = preview;
  const [known, setKnown] = useState(false);
  const [letGo, setLetGo] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const nothingNew = entries.length === 0 && photos.length === 0;
  const changing = rows.filter(changes);
  const still = rows.length - changing.length;
  const erasing = preview.erased.entries + preview.erased.photos > 0;
  const blocked = nothingNew || inventedIntoReal || (otherCollection !== undefined && !known) || (erasing && !letGo);
  return (
    <div className="stack">
      <h3 ref={heading} tabIndex={-1}>
        {words.preview}
      </h3>
      <p className="file-name">{words.previewOf(fileName)}</p>
      {otherCollection && (
        <Notice kind="caution" title={words.other}>
          <p>{words.otherWhat(otherCollection.theirs, otherCollection.here)}</p>
          {!inventedIntoReal && <Tick label={words.otherTick} checked={known} onChange={setKnown} />}
        </Notice>
      )}
      {inventedIntoReal && <Notice kind="stop" title={words.inventedIn} />}
      {notes.map((note) => (
        <Notice key={note.code} title={sayReason(note)} />
      ))}
      <ErasedByImport preview={preview} agreed={letGo} onAgree={setLetGo} />
      {nothingNew ? (
        <p>{words.nothingNew}</p>
      ) : (
        <table className="plain-table cards">
          <thead>
            <tr>
              <th scope="col">{words.columns.sculpture}</th>
              {counted.map((key) => (
                <th scope="col" key={key} className="of-number">
                  {words.columns[key]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {changing.map((row) => (
              <tr key={row.within}>
                <th scope="row">
                  {row.title === '' ? words.wholeCollection : workName({ body: row })}
                  {row.newHere && row.title !== '' && <span className="chip">{words.newSculpture}</span>}
                  {row.roundsThatMayBeOne > 0 && (
                    <span className="soft small row-note">{words.toSettleRounds(row.roundsThatMayBeOne)}</span>
                  )}
                  {row.erased > 0 && <span className="soft small row-note">{w.erasing.arrivingRow(row.erased)}</span>}
                </th>
                {counted.map((key) => (
                  <td
                    key={key}
                    data-head={words.columns[key]}
                    className={row[key] > 0 ? 'of-number strong' : 'of-number soft zero'}
                  >
                    {whole(row[key])}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {photos.length > 0 && <p>{words.photosComing(photos.length, megabytes(photos))}</p>}
      {litter.length > 0 && <p className="soft">{words.litter(litter.length)}</p>}
      {fault && <Notice kind="problem" title={fault} />}
      {!nothingNew && still > 0 && <p className="soft">{words.unchangedRows(still)}</p>}
      {!nothingNew && <p className="soft">{words.acceptWhat}</p>}
      <div className="row">
        <Button kind="main" disabled={blocked} onClick={() => onAccept(known)}>
          {words.accept}
        </Button>
        <Button onClick={onLeave}>{words.cancel}</Button>
      </div>
    </div>
  );
}

const counted = ['new', 'replaced', 'twoVersions', 'photosComing', 'photosMissing'] as const;

const megabytes = (photos: CarryPreview['photos']): string =>
  bytes(photos.reduce((sum, photo) => sum + photo.file.bytes, 0));

const changes = (row: PreviewRow): boolean =>
  row.new + row.replaced + row.twoVersions + row.photosComing + row.roundsThatMayBeOne + row.erased > 0;
