import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import {
  type RoundStart,
  roundsUnderWay,
  sculptureRecordOf,
  setSetting,
  setSurveyor,
  settings,
  startRound,
  surveyors,
  tryRoom,
} from '../../actions';
import type { SculptureRecord } from '../../engine/record';
import { cautionsAt, roundTypes } from '../../engine/trade';
import { date, w } from '../../words';
import { Button, Choice, EmptyState, Field, LinkButton, Notice, Page, Reading, Section, Tick } from '../parts';
import { LinkLines } from '../parts/LinkLines';
import { pathTo, useDeed, useDesk, useQuestion } from '../shell';
import { typeName } from './Round';
import { RoundMissing } from './RoundMissing';
import './round.css';

const words = w.round.start;

/** Before the walk: what round it is, its day, the state of the surface, and who looks. */
export function StartRoundScreen({ sculpture }: { readonly sculpture: string }) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  if (record === undefined) return <Reading />;
  if (record === null) return <RoundMissing />;
  return <StartForm record={record} />;
}

type Wet = RoundStart['wet'];
type Washed = RoundStart['washed'];
type Type = RoundStart['type'];

function StartForm({ record }: { readonly record: SculptureRecord }) {
  const desk = useDesk();
  const [, go] = useLocation();
  const { run, refused, busy } = useDeed();
  const usual = useQuestion(settings);
  const [type, setType] = useState<Type>('annual');
  const [day, setDay] = useState(desk.today());
  const [wet, setWet] = useState<Wet>();
  const [washed, setWashed] = useState<Washed>();
  const [ownEye, setOwnEye] = useState(usual.ownEye);
  const [asked, setAsked] = useState(false);
  const [fromPaper, setFromPaper] = useState(false);
  const [looked, setLooked] = useState<string>();
  // A tablet without room is told here, and not on the ladder.
  useEffect(() => void tryRoom(), []);
  const { sculpture, zones, rounds } = record;
  const back = { to: pathTo.sculpture(sculpture.thing), label: words.back };

  if (zones.length === 0) {
    return (
      <Page title={words.title} over={sculpture.body.title} back={back}>
        <EmptyState
          title={words.noZones}
          actions={
            <LinkButton to={pathTo.zones(sculpture.thing)} kind="main">
              {words.toZones}
            </LinkButton>
          }
        >
          <p>{words.noZonesWhat}</p>
        </EmptyState>
      </Page>
    );
  }

  const last = rounds.at(-1);
  const start = () => {
    setAsked(true);
    if (!wet || !washed || !day) return;
    void run(
      () =>
        startRound(desk, sculpture.thing, {
          ...{ type, date: day, wet, washed },
          // The cards show no earlier share: what is on them was judged by the own eye.
          ownEye: fromPaper || ownEye,
          ...(fromPaper ? { fromPaper: { looked: looked ?? usual.surveyor } } : {}),
        }),
      ({ round }) => {
        const first = zones[0];
        go(first ? pathTo.zoneInRound(round, first.thing) : pathTo.round(round));
      },
    );
  };
  return (
    <Page
      title={words.title}
      over={sculpture.body.title}
      lead={words.lead}
      back={back}
      narrow
      actions={
        <Button kind="main" size="big" onClick={start} disabled={busy}>
          {day ? words.do(date(day)) : words.doPlain}
        </Button>
      }
    >
      <UnderWay sculpture={sculpture.thing} />
      <Choice
        label={words.type}
        size="round"
        value={type}
        onChange={setType}
        options={roundTypes.map(({ id, name, means }) => ({ value: id, label: name, detail: means }))}
      />
      <Tick
        label={w.paperCards.fromPaper}
        detail={w.paperCards.fromPaperWhat}
        checked={fromPaper}
        onChange={setFromPaper}
        size="round"
      />
      <Field
        kind="date"
        label={fromPaper ? w.paperCards.seenOn : words.date}
        hint={fromPaper ? w.paperCards.seenOnHint : words.dateHint}
        value={day}
        onChange={setDay}
        error={asked && !day ? words.dateMissing : undefined}
      />
      {day > desk.today() && <Notice kind="caution" title={words.dateFuture} />}
      {last && day !== '' && day < last.body.date && (
        <Notice kind="caution" title={words.dateBefore(date(last.body.date))} />
      )}
      <Choice
        label={words.wet}
        size="round"
        value={wet}
        onChange={setWet}
        error={asked && !wet ? words.wetMissing : undefined}
        options={(['dry', 'damp', 'wet'] as const).map((value) => ({ value, label: words.wetName[value] }))}
      />
      <Choice
        label={words.washed}
        size="round"
        value={washed}
        onChange={setWashed}
        error={asked && !washed ? words.washedMissing : undefined}
        options={(['before wash', 'after wash'] as const).map((value) => ({ value, label: words.washedName[value] }))}
      />
      {fromPaper ? (
        <>
          <WhoLooks label={w.paperCards.whoSaw} value={looked ?? usual.surveyor} onChange={setLooked} />
          <WhoLooks label={w.paperCards.whoEnters} value={usual.surveyor} onChange={setSurveyor} />
        </>
      ) : (
        <>
          <Tick label={words.ownEye} detail={words.ownEyeWhat} checked={ownEye} onChange={setOwnEye} size="round" />
          <WhoLooks label={words.surveyor} value={usual.surveyor} onChange={setSurveyor} />
          <CallAndTap />
        </>
      )}
      <Section title={words.cautions}>
        <ul className="cautions">
          {cautionsAt('round').map(({ id, text }) => (
            <li key={id}>{text}</li>
          ))}
        </ul>
      </Section>
      <LinkLines
        rows={[
          {
            to: pathTo.paper('zone-cards', sculpture.thing),
            name: w.paperCards.print,
            what: w.paperCards.printWhat,
          },
        ]}
      />
      {refused && <Notice kind="problem" title={refused} />}
    </Page>
  );
}

function UnderWay({ sculpture }: { readonly sculpture: string }) {
  const desk = useDesk();
  const underWay = useQuestion(roundsUnderWay(desk))?.find(({ round }) => round.body.sculpture === sculpture);
  if (!underWay) return null;
  const { round } = underWay;
  return (
    <Notice
      kind="caution"
      title={words.underWay}
      actions={
        <LinkButton to={pathTo.round(round.thing)} size="round" kind="main">
          {words.goOn}
        </LinkButton>
      }
    >
      <p>{words.underWayWhat(typeName(round.body.type), date(round.body.date))}</p>
    </Notice>
  );
}

function CallAndTap() {
  const { callAndTap } = useQuestion(settings);
  return (
    <Tick
      label={w.callAndTap.tick}
      detail={w.callAndTap.tickWhat}
      checked={callAndTap}
      onChange={(on) => setSetting('callAndTap', on)}
      size="round"
    />
  );
}

interface WhoLooksProps {
  readonly label: string;
  /** Thing name, or '' for nobody. */
  readonly value: string;
  readonly onChange: (surveyor: string) => void;
}

function WhoLooks({ label, value, onChange }: WhoLooksProps) {
  const desk = useDesk();
  const people = useQuestion(surveyors(desk));
  if (!people) return null;
  if (people.length === 0) {
    return <Notice title={words.nobody} actions={<LinkButton to={pathTo.settings()}>{words.toSettings}</LinkButton>} />;
  }
  return (
    <Choice
      label={label}
      size="round"
      value={people.some((p) => p.thing === value) ? value : undefined}
      onChange={onChange}
      options={people.map(({ thing, role, name }) => ({ value: thing, label: role, detail: name }))}
    />
  );
}
