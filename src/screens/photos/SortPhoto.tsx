import { useState } from 'react';
import { type PhotoOfWork, type PhotoSorting, type PhotosOfWork, sortPhoto } from '../../actions';
import { roundName, w, zoneName } from '../../words';
import { Button, Choice, Field, Notice } from '../parts';
import { Select } from '../parts/Select';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { squareName } from './placeNames';

const words = w.photos;

/** Where a photo belongs and what the light and surface were. Each choice is kept as soon as it is made. */
export function SortPhoto({ work, row }: { readonly work: PhotosOfWork; readonly row: PhotoOfWork }) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  const { thing, body } = row.photo;
  const [note, setNote] = useState(body.note ?? '');
  const typed = useTyped(['note of a photo', thing], { note: [note, setNote] });
  const sort = (sorting: PhotoSorting) =>
    void run(
      () => sortPhoto(desk, thing, sorting),
      () => {
        if ('note' in sorting) typed.kept();
        say(words.sorted);
      },
    );
  const sortSquare = (sentinel: string | undefined) => {
    const zone = work.sentinels.find((s) => s.thing === sentinel)?.body.zone;
    sort({ sentinel, ...(zone ? { zone } : {}) });
  };
  return (
    <section className="stack" aria-label={words.where}>
      {refused && <Notice kind="problem" title={refused} />}
      <div className="sort-places">
        <Place
          label={words.whereStation}
          value={body.station}
          options={work.stations.map((s) => [s.thing, words.station(s.body.letter, s.body.aim)])}
          choose={(station) => sort({ station })}
        />
        <Place
          label={words.whereSquare}
          value={body.sentinel}
          options={work.sentinels.map((s) => [s.thing, squareName(work, s)])}
          choose={sortSquare}
        />
        <Place
          label={words.whereZone}
          value={row.zone}
          options={work.zones.map((zone) => [zone.thing, zoneName(zone)])}
          choose={(zone) => sort({ zone })}
        />
        <Place
          label={words.whereRound}
          value={row.round}
          options={work.rounds.map((round) => [round.thing, roundName(round)])}
          choose={(round) => sort({ round })}
        />
      </div>
      <Choice
        label={words.light}
        tiles="narrow"
        options={named(words.lights)}
        value={body.light}
        onChange={(light) => sort({ light })}
      />
      <Choice
        label={words.wet}
        tiles="narrow"
        options={named(words.wetness)}
        value={body.wet}
        onChange={(wet) => sort({ wet })}
      />
      <Choice
        label={words.washed}
        tiles="narrow"
        options={named(words.washing)}
        value={body.washed}
        onChange={(washed) => sort({ washed })}
      />
      {typed.line}
      <Field label={words.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
      {note.trim() !== (body.note ?? '') && (
        <div className="row">
          <Button kind="main" onClick={() => sort({ note: note.trim() || undefined })}>
            {words.keepNote}
          </Button>
        </div>
      )}
    </section>
  );
}

const named = <T extends string>(names: Readonly<Record<T, string>>) =>
  (Object.keys(names) as T[]).map((value) => ({ value, label: names[value] }));

interface PlaceProps {
  readonly label: string;
  readonly value: string | undefined;
  readonly options: readonly (readonly [thing: string, name: string])[];
  readonly choose: (thing: string | undefined) => void;
}

/** Left out where there is nothing to choose. */
function Place({ label, value, options, choose }: PlaceProps) {
  if (options.length === 0) return null;
  const rows = [{ value: '', label: words.none }, ...options.map(([thing, name]) => ({ value: thing, label: name }))];
  return <Select label={label} value={value ?? ''} onChange={(thing) => choose(thing || undefined)} options={rows} />;
}
