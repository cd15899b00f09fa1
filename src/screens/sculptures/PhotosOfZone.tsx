import { type MeasureOfWork, measuresOf, type PhotoOfZone, photosOfZone, photoUrl } from '../../actions';
import { kindOf } from '../../engine/trade';
import { date, w } from '../../words';
import { LinkButton, PhotoView, Section } from '../parts';
import { LongList } from '../parts/LongList';
import { measuredText } from '../parts/measuredText';
import { pathTo, useDesk, useQuestion } from '../shell';

const words = w.measure;

/** Photos a zone can be measured on, with what was measured on each. */
export function PhotosOfZone({ sculpture, zone }: { readonly sculpture: string; readonly zone: string }) {
  const desk = useDesk();
  const photos = useQuestion(photosOfZone(desk, sculpture, zone));
  const measures = useQuestion(measuresOf(desk, sculpture));
  if (!photos) return null;
  const all = measures ?? [];
  const gone = all.filter((told) => told.zone === zone && told.photo === null);
  return (
    <Section title={words.onPhotos} lead={photos.length > 0 ? words.onPhotosWhat : words.photosNone}>
      {photos.length > 0 && (
        <LongList
          rows={photos}
          className="photos-of-zone"
          show={(row) => (
            <OnePhoto
              key={`${row.photo.thing} ${row.about}`}
              row={row}
              told={all.filter(({ measure: { body } }) => body.photo === row.photo.thing && body.about === row.about)}
            />
          )}
        />
      )}
      {gone.length > 0 && <Told told={gone} />}
    </Section>
  );
}

function OnePhoto({ row, told }: { readonly row: PhotoOfZone; readonly told: readonly MeasureOfWork[] }) {
  const url = useQuestion(photoUrl(useDesk(), row.photo.thing, 'thumb'));
  const name = words.photoNamed(row.sentinel?.body.which, row.day && date(row.day));
  return (
    <li className="photo-of-zone">
      <PhotoView url={url} alt="" caption={name} />
      <Told told={told} />
      <div className="not-printed">
        <LinkButton to={pathTo.measure(row.photo.thing, row.about)} label={words.measureOn(name)}>
          {words.link}
        </LinkButton>
      </div>
    </li>
  );
}

function Told({ told }: { readonly told: readonly MeasureOfWork[] }) {
  if (told.length === 0) return null;
  return (
    <ul className="bare small">
      {told.map((one) => (
        <li key={one.measure.thing}>
          <span className="strong">{kindOf(one.measure.body.kind)?.name ?? one.measure.body.kind}</span>{' '}
          {measuredText(one)}
        </li>
      ))}
    </ul>
  );
}
