import { type PhotoOfWork, photoUrl } from '../../actions';
import { date, w } from '../../words';
import { useDesk, useQuestion } from '../shell';

interface PhotoTileProps {
  readonly row: PhotoOfWork;
  readonly what: string;
  readonly open: () => void;
}

/** One photo in small, with what it shows and what is wrong with it. */
export function PhotoTile({ row, what, open }: PhotoTileProps) {
  const { flaw } = row.photo.body;
  const day = date(row.day);
  return (
    <button type="button" className="photo-tile" onClick={open}>
      {flaw && flaw !== 'cut short' ? <span className="photo-tile-none" /> : <Small photo={row.photo.thing} />}
      <span className="photo-tile-words">
        <span className="strong">{what}</span> <span className="soft small">{day}</span>{' '}
        {flaw && <span className="photo-flaw small">{w.photos.flaw[flaw]}</span>}
      </span>
    </button>
  );
}

function Small({ photo }: { readonly photo: string }) {
  const url = useQuestion(photoUrl(useDesk(), photo, 'thumb'));
  // The space keeps the sentence apart from the words below it where the tile is read aloud.
  if (!url) return <span className="photo-tile-none">{url === null ? `${w.parts.photoElsewhere} ` : ''}</span>;
  return <img src={url} alt="" loading="lazy" decoding="async" />;
}
