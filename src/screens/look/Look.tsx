import { useState } from 'react';
import {
  type LookSaid,
  photoForLook,
  recordLook,
  sculptureRecordOf,
  type ZoneToLook,
  zonesToLook,
} from '../../actions';
import type { SculptureRecord } from '../../engine/record';
import { date, midSentence, w } from '../../words';
import { Button, Choice, EmptyState, LinkButton, Notice, Page, Reading, Section } from '../parts';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';
import { LookRow } from './LookRow';
import { PhotoExpected } from './PhotoExpected';
import { UndoLook } from './UndoLook';
import './look.css';

const words = w.look;

/** Three minutes from the ground, between rounds: is the green back in the watched zones? */
export function LookScreen({ sculpture }: { readonly sculpture: string }) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  if (record === undefined) return <Reading />;
  if (record === null) {
    return (
      <EmptyState
        page
        title={w.round.walk.missing}
        actions={<LinkButton to={pathTo.sculptures()}>{w.round.walk.toSculptures}</LinkButton>}
      />
    );
  }
  return <LookAt record={record} />;
}

function LookAt({ record }: { readonly record: SculptureRecord }) {
  const desk = useDesk();
  const [wet, setWet] = useState<LookSaid['wet']>('dry');
  const [planned, setPlanned] = useState<'planned' | 'passing'>('planned');
  const [all, setAll] = useState(false);
  const { run, refused } = useDeed();
  const { sculpture } = record;
  const zones = zonesToLook(record, desk.today());
  const watched = zones.filter((z) => z.watched);
  const rest = zones.filter((z) => !z.watched);
  const answer = (zone: ZoneToLook, result: LookSaid['result']) => {
    // Said already today: the same answer once more is no second look.
    if (zone.last?.body.date === desk.today() && zone.last.body.result === result) return;
    void run(
      () => recordLook(desk, sculpture.thing, { zone: zone.zone.thing, result, planned: planned === 'planned', wet }),
      () => say(words.kept(zone.zone.body.letter, midSentence(words[result]))),
    );
  };
  const keep = (look: string, file: File) =>
    void run(
      () => photoForLook(desk, look, file),
      () => say(w.round.photo.kept),
    );
  const shown = all || watched.length === 0 ? zones : watched;
  return (
    <Page
      title={words.title}
      over={sculpture.body.title}
      lead={words.lead}
      back={{ to: pathTo.sculpture(sculpture.thing), label: words.back }}
      narrow
      actions={<UndoLook />}
    >
      {zones.length === 0 && (
        <EmptyState
          title={words.noZones}
          actions={
            <LinkButton to={pathTo.zones(sculpture.thing)} kind="main" size="round">
              {w.sculptures.work.addZones}
            </LinkButton>
          }
        />
      )}
      <div className="look-setting">
        <Choice
          label={words.surface}
          hint={words.surfaceWhat}
          size="round"
          value={wet}
          onChange={setWet}
          options={(['dry', 'damp', 'wet'] as const).map((value) => ({ value, label: words.wetName[value] }))}
        />
        <Choice
          label={words.how}
          size="round"
          value={planned}
          onChange={setPlanned}
          options={[
            { value: 'planned', label: words.planned },
            { value: 'passing', label: words.passing },
          ]}
        />
      </div>
      <p>{words.greenWhat}</p>
      <PhotoExpected looks={record.looks} zones={record.zones} keep={keep} />
      {refused && <Notice kind="problem" title={refused} />}
      <Section
        title={watched.length > 0 && !all ? words.watched : words.all}
        lead={watched.length > 0 ? words.watchedWhat : words.none}
      >
        <ul className="bare look-zones">
          {shown.map((zone) => (
            <LookRow
              key={zone.zone.thing}
              zone={zone.zone}
              today={todayOf(zone, desk.today())}
              lines={[seenIn(zone, desk.today())]}
              answer={(result) => answer(zone, result)}
              keep={keep}
            />
          ))}
        </ul>
        {!all && watched.length > 0 && rest.length > 0 && (
          <Button size="round" onClick={() => setAll(true)}>
            {words.showAll(rest.length)}
          </Button>
        )}
      </Section>
    </Page>
  );
}

const todayOf = ({ last }: ZoneToLook, today: string) => (last?.body.date === today ? last : undefined);

/** What was seen last, today or before. */
const seenIn = ({ last }: ZoneToLook, today: string): string => {
  if (!last) return words.never;
  const said = midSentence(words[last.body.result]);
  return last.body.date === today ? words.today(said) : words.last(date(last.body.date), said);
};
