import { memo, useState } from 'react';
import type { PhotoOfWork, PhotosOfWork } from '../../actions';
import { roundName, w, zoneName } from '../../words';
import { Section } from '../parts';
import { LongList } from '../parts/LongList';
import { Select } from '../parts/Select';
import { PhotoSheet } from './PhotoSheet';
import { PhotoTile } from './PhotoTile';
import { isUnsorted, shownOn, squareName } from './placeNames';

const words = w.photos;
const outside = 'outside';

/** Of one group: six rows on an upright tablet. */
const picturesAtOnce = 24;

/** The photos in groups: those not sorted first, then round by round, the latest first. */
export const PhotoGroups = memo(function PhotoGroups({ work }: { readonly work: PhotosOfWork }) {
  const [round, setRound] = useState('');
  const [place, setPlace] = useState('');
  const [open, setOpen] = useState<string>();
  const shown = work.photos.filter((row) => inRound(row, round) && atPlace(row, place));
  const groups = groupsOf(work, shown);
  const opened = work.photos.find(({ photo }) => photo.thing === open);
  return (
    <>
      <div className="photo-filters not-printed">
        <Select
          label={words.whereRound}
          value={round}
          onChange={setRound}
          options={[
            { value: '', label: words.allRounds },
            ...work.rounds.map((r) => ({ value: r.thing, label: roundName(r) })),
            { value: outside, label: words.noRound },
          ]}
        />
        <Select
          label={words.where}
          value={place}
          onChange={setPlace}
          options={[
            { value: '', label: words.allPlaces },
            ...work.stations.map((s) => ({ value: s.thing, label: words.station(s.body.letter, s.body.aim) })),
            ...work.sentinels.map((s) => ({ value: s.thing, label: squareName(work, s) })),
            ...work.zones.map((zone) => ({ value: zone.thing, label: zoneName(zone) })),
          ]}
        />
      </div>
      {groups.length === 0 && <p className="soft">{words.noneSuch}</p>}
      {groups.map(({ title, lead, rows }) => (
        <Section key={title} title={title} lead={lead}>
          <LongList
            rows={rows}
            className="photo-grid"
            atOnce={picturesAtOnce}
            show={(row) => (
              <li key={row.photo.thing}>
                <PhotoTile row={row} what={shownOn(work, row)} open={() => setOpen(row.photo.thing)} />
              </li>
            )}
          />
        </Section>
      ))}
      {opened && <PhotoSheet key={opened.photo.thing} work={work} row={opened} close={() => setOpen(undefined)} />}
    </>
  );
});

const inRound = (row: PhotoOfWork, round: string): boolean =>
  round === '' || (round === outside ? row.round === undefined : row.round === round);

const atPlace = ({ photo, zone }: PhotoOfWork, place: string): boolean =>
  place === '' || photo.body.station === place || photo.body.sentinel === place || zone === place;

interface Group {
  readonly title: string;
  readonly lead?: string;
  readonly rows: readonly PhotoOfWork[];
}

const groupsOf = (work: PhotosOfWork, shown: readonly PhotoOfWork[]): readonly Group[] => {
  const sorted = shown.filter((row) => !isUnsorted(row));
  const known = new Set(work.rounds.map(({ thing }) => thing));
  const groups: Group[] = [
    { title: words.unsorted, lead: words.unsortedWhat, rows: shown.filter(isUnsorted) },
    ...work.rounds.map((round) => ({
      title: roundName(round),
      rows: sorted.filter((row) => row.round === round.thing),
    })),
    { title: words.noRound, rows: sorted.filter((row) => row.round === undefined || !known.has(row.round)) },
  ];
  return groups.filter(({ rows }) => rows.length > 0);
};
