import { useState } from 'react';
import type { PhotoOfWork, PhotoSeriesOfWork } from '../../actions';
import { fitBetween } from '../../engine/photo';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Choice } from '../parts';
import { StripYear } from './StripYear';

const words = w.compare.strip;

interface StripProps {
  readonly work: PhotoSeriesOfWork;
  readonly station: Thing<'station'>;
  /** Oldest first, at least one. */
  readonly photos: readonly PhotoOfWork[];
}

/** As they were taken, or each as it lies on the latest, so that the work keeps its place from year to year. */
export function Strip({ work, station, photos }: StripProps) {
  const latest = photos.at(-1) as PhotoOfWork;
  const fits = photos.map(({ photo }) => fitBetween(work.fits, photo.thing, latest.photo.thing));
  const canLay = fits.some((fit) => fit && fit.verdict !== 'not the same station');
  const [how, setHow] = useState<'asTaken' | 'laid'>('laid');
  return (
    <>
      {canLay && (
        <div className="not-printed">
          <Choice
            label={words.how}
            tiles="narrow"
            options={(['laid', 'asTaken'] as const).map((value) => ({ value, label: words[value] }))}
            value={how}
            onChange={setHow}
          />
        </div>
      )}
      <ol className="bare strip">
        {photos.map((row, i) => (
          <StripYear
            key={row.photo.thing}
            sculpture={work.sculpture.thing}
            station={station}
            row={row}
            before={photos[i - 1]}
            latest={latest}
            all={photos}
            fit={fits[i]}
            laid={canLay && how === 'laid'}
          />
        ))}
      </ol>
    </>
  );
}
