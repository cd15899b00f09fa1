import { useState } from 'react';
import { removePlanned, reportIncident, type WorkAround } from '../../actions';
import { readTimeOfDay } from '../../engine/numerals';
import type { BodyOf, Thing } from '../../engine/record';
import { cautionsAt, incidentSortOf, incidentSorts } from '../../engine/trade';
import { w, workName, zoneOptions } from '../../words';
import { Choice, Choices, Field, Notice, PhotosHere, Sheet, SheetActs } from '../parts';
import { PeopleEntry } from '../parts/PeopleEntry';
import { peopleKept, peopleWhole } from '../parts/peopleSaid';
import { Select } from '../parts/Select';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { type IncidentText, incidentText, timeRight } from './incidentText';

const words = w.incidents;
const dangers = ['none', 'possible', 'yes'] as const;

interface IncidentSheetProps {
  readonly works: readonly WorkAround[];
  /** Undefined: a new one. */
  readonly incident: Thing<'incident'> | undefined;
  readonly onClose: () => void;
}

/** A report: people first, what to do first, then what and where. */
export function IncidentSheet({ works, incident, onClose }: IncidentSheetProps) {
  const desk = useDesk();
  const [text, setText] = useState<IncidentText>(() => incidentText(incident?.body, desk.today()));
  const [tried, setTried] = useState(false);
  const typed = useTyped(['incident', incident?.thing], { text: [text, setText] });
  const { run, refused, busy } = useDeed(typed);
  const set =
    <K extends keyof IncidentText>(key: K) =>
    (value: IncidentText[K]) =>
      setText({ ...text, [key]: value });
  const done = (said: string) => {
    say(said);
    onClose();
  };
  const work = works.find(({ sculpture }) => sculpture.thing === text.work);
  const save = () => {
    setTried(true);
    const { danger } = text;
    if (!danger || !text.what.trim() || !text.day || !timeRight(text.time) || !peopleWhole(text.told)) return;
    const told = peopleKept(text.told).map((person) => ({ ...person }));
    const said = {
      sculpture: text.work || undefined,
      date: text.day,
      time: readTimeOfDay(text.time),
      sort: text.sort,
      what: text.what.trim(),
      zones: work && text.zones.length > 0 ? [...text.zones] : undefined,
      danger,
      done: text.done.trim() || undefined,
      told: told.length > 0 ? told : undefined,
      photos: text.photos.length > 0 ? [...text.photos] : undefined,
    } satisfies Partial<BodyOf<'incident'>>;
    return run(
      () => reportIncident(desk, incident ? { ...incident.body, ...said } : said, incident?.thing),
      ({ personCheck }) => done(personCheck ? words.savedWithCheck : incident ? words.edited : words.saved),
    );
  };
  const inDanger = text.danger === 'possible' || text.danger === 'yes';
  const sort = incidentSortOf(text.sort);
  return (
    <Sheet
      open
      title={incident ? words.edit : words.report}
      onClose={onClose}
      actions={
        <SheetActs
          save={incident ? words.saveEdit : words.save}
          onSave={() => void save()}
          remove={
            incident && {
              word: words.remove,
              go: () =>
                void run(
                  () => removePlanned(desk, 'incident', incident.thing),
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
      <Choice
        label={words.danger}
        tiles="full"
        options={dangers.map((value) => ({ value, label: words.dangers[value] }))}
        value={text.danger}
        onChange={set('danger')}
        error={tried && !text.danger ? words.dangerMissing : undefined}
      />
      {inDanger && (
        <Notice kind="stop" title={words.peopleFirst}>
          <p>{words.peopleFirstWhat}</p>
          {(!incident || incident.body.danger === 'none') && <p>{text.work ? words.checkOpens : words.checkNoWork}</p>}
        </Notice>
      )}
      <Choice
        label={words.sort}
        options={incidentSorts.map(({ id, name }) => ({ value: id, label: name }))}
        value={text.sort}
        onChange={set('sort')}
      />
      <Notice kind="caution" title={words.first}>
        <ol>
          {[...(sort?.first ?? []), ...cautionsAt('after storm').map((caution) => caution.text)].map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ol>
      </Notice>
      <Select
        label={words.work}
        value={text.work}
        onChange={(thing) => setText({ ...text, work: thing, zones: [] })}
        options={[
          { value: '', label: words.noWork },
          ...works.map(({ sculpture }) => ({
            value: sculpture.thing,
            label: workName(sculpture),
          })),
        ]}
      />
      {work && work.zones.length > 0 && (
        <Choices label={words.zones} options={zoneOptions(work.zones)} values={text.zones} onChange={set('zones')} />
      )}
      <Field
        label={words.day}
        kind="date"
        value={text.day}
        onChange={set('day')}
        error={tried && !text.day ? words.dayMissing : undefined}
        short
      />
      <Field
        label={words.time}
        hint={words.timeHint}
        value={text.time}
        onChange={set('time')}
        maxLength={12}
        error={tried && !timeRight(text.time) ? words.timeWrong : undefined}
        short
        optional
      />
      <Field
        label={words.what}
        kind="long"
        value={text.what}
        onChange={set('what')}
        maxLength={4000}
        error={tried && !text.what.trim() ? words.whatMissing : undefined}
      />
      {work && (
        <PhotosHere
          desk={desk}
          sculpture={work.sculpture.thing}
          as="other"
          label={words.photos}
          photos={text.photos}
          onChange={set('photos')}
        />
      )}
      <Field label={words.done} kind="long" value={text.done} onChange={set('done')} maxLength={2000} optional />
      <PeopleEntry label={words.told} hint={words.toldHint} people={text.told} onChange={set('told')} tried={tried} />
    </Sheet>
  );
}
