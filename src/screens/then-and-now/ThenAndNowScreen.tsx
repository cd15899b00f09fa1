import { useMemo } from 'react';
import { useLocation } from 'wouter';
import { eyesOf, measuresOf, sculptureRecordOf, surveyors, thenAndNowOf } from '../../actions';
import { firstComparable, previousComparable } from '../../engine/change';
import type { SculptureRecord, Thing } from '../../engine/record';
import { thingNames, w, workName } from '../../words';
import { Choice, EmptyState, LinkButton, Notice, Page, Reading } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk, useQuestion } from '../shell';
import { CorrectedContext, correctedBy } from './CorrectedContext';
import { LongerView } from './LongerView';
import { MeasuredContext, measuredBy } from './MeasuredContext';
import { RoundPair } from './RoundPair';
import { ThenAndNowView } from './ThenAndNowView';

const words = w.thenAndNow;

interface ThenAndNowScreenProps {
  readonly sculpture: string;
  /** Rounds to hold against each other; left out, the last round and the one it can be compared with. */
  readonly earlier?: string | undefined;
  readonly later?: string | undefined;
}

/** This round against an earlier one. */
export function ThenAndNowScreen({ sculpture, earlier, later }: ThenAndNowScreenProps) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  const back = { to: pathTo.sculpture(sculpture), label: record?.sculpture.body.title ?? w.shell.nav.sculptures };
  return (
    <Page title={words.title} over={record ? workName(record.sculpture) : undefined} lead={words.lead} back={back}>
      {record === undefined ? (
        <Reading>{words.reading}</Reading>
      ) : record === null ? (
        <EmptyState title={words.sculptureNotFound} />
      ) : (
        <Chosen record={record} earlier={earlier} later={later} />
      )}
    </Page>
  );
}

function Chosen({
  record,
  earlier,
  later,
}: { readonly record: SculptureRecord } & Omit<ThenAndNowScreenProps, 'sculpture'>) {
  const [, go] = useLocation();
  const { rounds, sculpture } = record;
  const last = rounds.at(-1);
  if (!last || rounds.length < 2) {
    return (
      <EmptyState
        title={last ? words.oneRound : words.noRounds}
        actions={<LinkButton to={pathTo.startRound(sculpture.thing)}>{words.startRound}</LinkButton>}
      />
    );
  }
  const now = later ?? last.thing;
  const then = earlier ?? thenFor(record, now);
  const choose = (a: string, b: string) => go(pathTo.thenAndNow(sculpture.thing, a, b));
  return (
    <>
      <RoundPair
        rounds={rounds}
        then={then}
        now={now}
        onThen={(round) => choose(round, now)}
        onNow={(round) => choose(then, round)}
      />
      <Spans record={record} now={now} then={then} onThen={(round) => choose(round, now)} />
      {then === now ? (
        <Notice kind="caution" title={words.sameRound} />
      ) : (
        <Compared record={record} then={then} now={now} />
      )}
    </>
  );
}

interface SpansProps {
  readonly record: SculptureRecord;
  readonly now: string;
  readonly then: string;
  readonly onThen: (round: string) => void;
}

/** The two pairs most asked for, a touch each: a year may hide what six years show. */
function Spans({ record, now, then, onThen }: SpansProps) {
  const last = previousComparable(record, now).round?.thing;
  const first = firstComparable(record, now)?.thing;
  if (!last || !first || last === first) return null;
  return (
    <div className="not-printed">
      <Choice
        label={words.since}
        value={then === first ? 'first' : then === last ? 'last' : undefined}
        onChange={(span) => onThen(span === 'first' ? first : last)}
        options={[
          { value: 'last', label: words.sinceLast },
          { value: 'first', label: words.sinceFirst },
        ]}
      />
    </div>
  );
}

/** The round that can be compared, else the nearest earlier one, else any other: a person may turn the two around. */
const thenFor = (record: SculptureRecord, now: string): string => {
  const { round, instead } = previousComparable(record, now);
  const other: Thing<'round'> | undefined = round ?? instead ?? record.rounds.find(({ thing }) => thing !== now);
  return other?.thing ?? now;
};

function Compared({
  record,
  then,
  now,
}: {
  readonly record: SculptureRecord;
  readonly then: string;
  readonly now: string;
}) {
  const desk = useDesk();
  const answer = useQuestion(thenAndNowOf(desk, then, now));
  const people = useQuestion(surveyors(desk));
  const eyes = useQuestion(eyesOf(desk));
  const measures = useQuestion(measuresOf(desk, record.sculpture.thing));
  const nameOf = useMemo(() => thingNames(record, people ?? []), [record, people]);
  if (answer === undefined) return <Reading>{words.reading}</Reading>;
  if (answer === null) return <Notice kind="problem" title={words.notFound} />;
  return (
    <>
      <CorrectedContext value={correctedBy(answer, eyes)}>
        <MeasuredContext value={measuredBy(answer, measures)}>
          <ThenAndNowView record={record} answer={answer} nameOf={nameOf} />
        </MeasuredContext>
        <LongerView sculpture={record.sculpture.thing} />
      </CorrectedContext>
      <PrintRow />
    </>
  );
}
