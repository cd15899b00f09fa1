import type { BagPrepared, Prepared } from '../../actions';
import { bytes, w, whole } from '../../words';
import { Notice } from '../parts';

const words = w.carry;

/** What a file that is about to leave still holds, and what of the photos travels in it. */
export function StillHolds({ prepared }: { readonly prepared: Prepared | BagPrepared }) {
  if (prepared.mime === 'text/csv') return <p>{words.csvWhat}</p>;
  return (
    <>
      <ul className="holds">
        {prepared.holds.map(({ what, count }) => (
          <li key={what}>
            {words.holdKinds[what] ?? what} <span className="figures soft">{whole(count)}</span>
          </li>
        ))}
      </ul>
      {'file' in prepared ? <PhotosInIt prepared={prepared} /> : <p>{words.photosStay(prepared.photosStay)}</p>}
      {prepared.keptAtHome > 0 && <p>{words.keptAtHome(prepared.keptAtHome)}</p>}
    </>
  );
}

function PhotosInIt({ prepared }: { readonly prepared: BagPrepared }) {
  const { photos, photoBytes, missing, damaged } = prepared;
  return (
    <>
      <p>
        {words.photosInIt(photos, whole(photos), bytes(photoBytes))}
        {missing > 0 && ` ${words.bagMissing(missing, whole(missing))}`}
      </p>
      {damaged > 0 && <Notice kind="caution" title={words.bagDamaged(damaged, whole(damaged))} />}
    </>
  );
}
