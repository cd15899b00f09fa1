import { useMemo, useState } from 'react';
import type { PhotoSeriesOfWork } from '../../actions';
import { isRefused, type PhotoFit } from '../../engine/photo';
import { w } from '../../words';
import { Button } from '../parts';
import { Select } from '../parts/Select';
import { ChangeShown } from './ChangeShown';
import { keptSpots, noSpots, type Spots, tellsApart } from './keptSpots';
import type { Looked } from './looked';
import { partsToCompare } from './partsToCompare';
import { SpotsOn } from './SpotsOn';

const words = w.compare;

interface ChangeOnPhotoProps {
  readonly work: PhotoSeriesOfWork;
  readonly earlier: Looked;
  readonly later: Looked;
  readonly fit: PhotoFit;
}

/** Where the green came and went: first which part and which spots tell green from sound on each photo, then the map. */
export function ChangeOnPhoto({ work, earlier, later, fit }: ChangeOnPhotoProps) {
  const [one, other] = [earlier.row.photo.thing, later.row.photo.thing];
  const parts = useMemo(() => partsToCompare(work, one, other, fit, words.wholePhoto), [work, one, other, fit]);
  const [zone, setZone] = useState(parts[0]?.zone ?? '');
  const [touched, setTouched] = useState<{ readonly [photo: string]: Spots }>({});
  const [again, setAgain] = useState(false);
  const part = parts.find((row) => row.zone === zone) ?? parts[0];
  const spotsOn = (photo: string): Spots => touched[photo] ?? keptSpots(work, photo, zone) ?? noSpots;
  const [before, after] = [spotsOn(one), spotsOn(other)];
  const ready = !isRefused(tellsApart(before)) && !isRefused(tellsApart(after));
  const photos = [
    { which: 'earlier', shown: earlier, thing: one, spots: before },
    { which: 'later', shown: later, thing: other, spots: after },
  ] as const;
  return (
    <div className="stack">
      <p className="soft">{words.changeLead}</p>
      <div className="fields not-printed">
        <Select
          label={words.part}
          value={zone}
          onChange={setZone}
          options={parts.map((row) => ({ value: row.zone, label: row.name }))}
        />
      </div>
      {(!ready || again) && (
        <div className="stack not-printed">
          <p>{words.tapWhat}</p>
          <div className="compare-two">
            {photos.map(({ which, shown, thing, spots }) => (
              <SpotsOn
                key={which}
                which={which}
                shown={shown}
                spots={spots}
                kept={!touched[thing] && spots !== noSpots}
                onChange={(next) => setTouched((all) => ({ ...all, [thing]: next }))}
              />
            ))}
          </div>
        </div>
      )}
      {ready && part && (
        <>
          <div className="row not-printed">
            <Button onClick={() => setAgain(!again)}>{again ? words.spotsDone : words.editSpots}</Button>
          </div>
          <ChangeShown earlier={earlier} later={later} fit={fit} part={part} before={before} after={after} />
        </>
      )}
    </div>
  );
}
