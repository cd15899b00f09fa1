import { useState } from 'react';
import { addStation, editStation, removeStation, thingsOf } from '../../actions';
import type { Thing } from '../../engine/record';
import { unitOf, w } from '../../words';
import { Choice, Field, LinkButton, Notice, Sheet, SheetActs } from '../parts';
import { pathTo, say, useDeed, useDesk, useQuestion, useTyped } from '../shell';
import { StandHere } from './StandHere';
import { draftOf, type FigureOfStation, fieldsOf, figures, numberWrong, type StationDraft } from './stationDraft';

const words = w.stations.form;

interface StationSheetProps {
  readonly sculpture: string;
  /** Undefined: a new one. */
  readonly station: Thing<'station'> | undefined;
  readonly onClose: () => void;
}

/** One station: what it is aimed at, how it is found again, and how the camera stands. */
export function StationSheet({ sculpture, station, onClose }: StationSheetProps) {
  const desk = useDesk();
  const [draft, setDraft] = useState(() => draftOf(station?.body));
  const [tried, setTried] = useState(false);
  const typed = useTyped(['station', station?.thing, sculpture], { draft: [draft, setDraft] });
  const { run, refused, busy } = useDeed(typed);
  const photos = useQuestion(thingsOf(desk, 'photo', sculpture));
  const taken = photos?.filter(({ body }) => station && body.station === station.thing).length ?? 0;
  const done = (text: string) => {
    say(text);
    onClose();
  };
  const fields = fieldsOf(draft);
  const save = () => {
    setTried(true);
    if (!fields?.aim) return;
    return station
      ? run(
          () => editStation(desk, station.thing, fields),
          () => done(words.saved),
        )
      : run(
          () => addStation(desk, sculpture, fields),
          ({ letter }) => done(words.added(letter)),
        );
  };
  const set =
    <K extends keyof StationDraft>(key: K) =>
    (value: StationDraft[K]) =>
      setDraft({ ...draft, [key]: value });
  const asked = (key: FigureOfStation, unit: string, hint?: string) => (
    <Field
      label={words[key]}
      takes={figures[key]}
      unit={unit}
      value={draft[key]}
      onChange={set(key)}
      hint={hint}
      error={tried && numberWrong(key, draft[key]) ? words.number : undefined}
      optional
    />
  );
  return (
    <Sheet
      open
      title={station ? w.stations.edit(station.body.letter) : w.stations.add}
      onClose={onClose}
      actions={
        <SheetActs
          save={words.keep}
          onSave={save}
          remove={
            station && {
              word: words.remove,
              go: () =>
                void run(
                  () => removeStation(desk, station.thing),
                  () => done(words.removed),
                ),
            }
          }
          busy={busy}
        />
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      {station && taken > 0 && (
        <Notice
          actions={
            <LinkButton to={pathTo.strip(sculpture, station.thing)} kind="quiet">
              {w.stations.toStrip}
            </LinkButton>
          }
        >
          <p>{words.moved(taken)}</p>
        </Notice>
      )}
      <Field
        label={words.aim}
        hint={words.aimHint}
        value={draft.aim}
        onChange={set('aim')}
        maxLength={300}
        error={tried && !draft.aim.trim() ? words.aimMissing : undefined}
      />
      <Field
        label={words.mark}
        hint={words.markHint}
        value={draft.mark}
        onChange={set('mark')}
        maxLength={300}
        optional
      />
      <div className="fields">
        {asked('distance', unitOf('length'))}
        {asked('height', unitOf('length'))}
        {asked('bearing', '°', words.bearingHint)}
        {asked('lens', 'mm', words.lensHint)}
      </div>
      <Choice
        label={words.format}
        tiles="narrow"
        options={withNone(words.formats)}
        value={draft.format}
        onChange={set('format')}
      />
      <Choice
        label={words.light}
        options={withNone(words.lights).map((option) => ({
          ...option,
          detail: option.value ? words.lightDetails[option.value] || undefined : undefined,
        }))}
        value={draft.light}
        onChange={set('light')}
      />
      <Choice label={words.wet} tiles="narrow" options={withNone(words.wets)} value={draft.wet} onChange={set('wet')} />
      {station && <StandHere station={station} />}
      <Field
        label={words.letter}
        hint={words.letterHint}
        value={draft.letter}
        onChange={set('letter')}
        maxLength={4}
        short
        optional
      />
      <Field label={words.note} kind="long" value={draft.note} onChange={set('note')} maxLength={4000} optional />
    </Sheet>
  );
}

/** The choices of a field that may also be left unsaid. */
const withNone = <K extends string>(rows: Readonly<Record<K, string>>): { value: K | ''; label: string }[] => [
  ...(Object.keys(rows) as K[]).map((value) => ({ value, label: rows[value] })),
  { value: '', label: words.notSaid },
];
