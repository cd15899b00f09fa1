import { useEffect, useState } from 'react';
import {
  expectLookPhoto,
  type LookSaid,
  lastDeed,
  lookPhotoExpected,
  noLookPhoto,
  photoForLook,
  recordLook,
  sculptureRecordOf,
  undoLast,
  type ZoneToLook,
  zonesToLook,
} from '../../actions';
import type { SculptureRecord } from '../../engine/record';
import { date, deedNamed, w } from '../../words';
import { Button, Choice, EmptyState, LinkButton, Notice, Page, Reading, Section, UndoIcon } from '../parts';
import { PhotoTake } from '../parts/PhotoTake';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';
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
      () => say(words.kept(zone.zone.body.letter, words[result].toLowerCase())),
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
      <PhotoExpected record={record} keep={keep} />
      {refused && <Notice kind="problem" title={refused} />}
      <Section
        title={watched.length > 0 && !all ? words.watched : words.all}
        lead={watched.length > 0 ? words.watchedWhat : words.none}
      >
        <ul className="bare look-zones">
          {shown.map((zone) => (
            <ZoneRow key={zone.zone.thing} at={zone} answer={answer} keep={keep} />
          ))}
        </ul>
        {zones.length === 0 && <p>{words.noZones}</p>}
        {!all && watched.length > 0 && rest.length > 0 && (
          <Button size="round" onClick={() => setAll(true)}>
            {words.showAll(rest.length)}
          </Button>
        )}
      </Section>
    </Page>
  );
}

const deedsOfLook = ['deed: looked', 'deed: photo added to a look'];

/** One touch takes back the last answer, or the photo added to it. */
function UndoLook() {
  const desk = useDesk();
  const last = useQuestion(lastDeed(desk));
  const { run } = useDeed();
  if (!last || !deedsOfLook.includes(last.name.code)) return null;
  const what = deedNamed(last.name);
  return (
    <Button
      size="round"
      icon={<UndoIcon />}
      aria-label={w.shell.undoOf(what)}
      onClick={() =>
        void run(
          () => undoLast(desk),
          () => say(w.shell.undone(what)),
        )
      }
    >
      {w.shell.undo}
    </Button>
  );
}

interface ZoneRowProps {
  readonly at: ZoneToLook;
  readonly answer: (zone: ZoneToLook, result: LookSaid['result']) => void;
  readonly keep: (look: string, file: File) => void;
}

const results = ['clear', 'green', 'unsure'] as const;

function ZoneRow({ at, answer, keep }: ZoneRowProps) {
  const desk = useDesk();
  const { letter, name } = at.zone.body;
  const { last } = at;
  const today = last?.body.date === desk.today() ? last : undefined;
  const said = last && words[last.body.result].toLowerCase();
  const photos = today?.body.photos?.length ?? 0;
  return (
    <li className="look-zone">
      <p className="look-name">
        <span className="look-letter">{letter}</span>
        <span>
          <span className="strong">{name}</span>
          <br />
          {today && said ? words.today(said) : last && said ? words.last(date(last.body.date), said) : words.never}
          {photos > 0 && `, ${words.photoCount(photos)}`}
        </span>
      </p>
      <div className="look-answers">
        {results.map((result) => (
          <button
            key={result}
            type="button"
            className="look-answer"
            aria-label={words.answerFor(words[result], letter)}
            aria-pressed={today?.body.result === result}
            onClick={() => answer(at, result)}
          >
            {words[result]}
          </button>
        ))}
      </div>
      {today && today.body.result !== 'clear' && photos === 0 && (
        <div className="stack tight">
          <p>{words.photoWhat}</p>
          <div className="row">
            <PhotoTake
              what={w.round.zone.title(letter, name)}
              expect={() => expectLookPhoto(desk, today.thing).then(() => true)}
              keep={(file) => keep(today.thing, file)}
            />
          </div>
        </div>
      )}
    </li>
  );
}

interface PhotoExpectedProps {
  readonly record: SculptureRecord;
  readonly keep: (look: string, file: File) => void;
}

/** After a restart behind the camera: the photo that did not come is asked for again. */
function PhotoExpected({ record, keep }: PhotoExpectedProps) {
  const desk = useDesk();
  const [expected, setExpected] = useState<string>();
  useEffect(() => {
    void lookPhotoExpected(desk).then(setExpected);
  }, [desk]);
  const look = record.looks.find((l) => l.thing === expected);
  const zone = record.zones.find((z) => z.thing === look?.body.zone);
  if (!look || !zone || (look.body.photos ?? []).length > 0) return null;
  const what = w.round.zone.title(zone.body.letter, zone.body.name);
  return (
    <Notice
      kind="caution"
      title={w.round.photo.expected(what)}
      actions={
        <>
          <PhotoTake
            what={what}
            expect={() => expectLookPhoto(desk, look.thing).then(() => true)}
            keep={(file) => keep(look.thing, file)}
          />
          <Button size="round" onClick={() => void noLookPhoto(desk).then(() => setExpected(undefined))}>
            {w.round.photo.without}
          </Button>
        </>
      }
    >
      <p>{w.round.photo.expectedWhat}</p>
    </Notice>
  );
}
