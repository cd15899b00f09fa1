import type { ReactNode } from 'react';
import { type AskedRound, roundScore, thenAndNowOf } from '../../actions';
import { previousComparable, type ThenAndNow } from '../../engine/change';
import { date, share, w, whole } from '../../words';
import { IndexDial, LinkButton, Reading, Section } from '../parts';
import { VerdictMark } from '../parts/VerdictMark';
import { noAnswer, pathTo, useDesk, useQuestion } from '../shell';

const words = w.round.end;

interface RoundResultProps {
  readonly round: string;
  /** What stands under it comes with it: it would be pushed away. */
  readonly children: ReactNode;
}

/** Share seen, then the index with its range, then what changed for sure. */
export function RoundResult({ round, children }: RoundResultProps) {
  const desk = useDesk();
  const asked = useQuestion(roundScore(desk, round));
  if (asked === undefined) return <Reading>{words.working}</Reading>;
  if (asked === null) return children;
  return (
    <>
      <IndexOfRound asked={asked} />
      <WhatChanged asked={asked}>{children}</WhatChanged>
    </>
  );
}

function IndexOfRound({ asked }: { readonly asked: AskedRound }) {
  const { score, record } = asked;
  const { value, low, high, seenShare, ifUnseenBest, ifUnseenWorst, weakest } = score;
  const zone = record.zones.find((z) => z.thing === weakest?.zone)?.body;
  const figure = value !== null && low !== null && high !== null ? { value, low, high } : null;
  return (
    <Section title={words.index}>
      <p>{words.seenShare(share(seenShare))}</p>
      {figure ? (
        <div className="row top">
          <IndexDial figure={figure} of={record.sculpture.body.title} size="large" />
          <div className="grow stack tight">
            {weakest && zone && <p>{words.weakest(zone.letter, zone.name, whole(weakest.value))}</p>}
            {seenShare < 1 && ifUnseenBest !== null && ifUnseenWorst !== null && (
              <p>{words.ifUnseen(whole(ifUnseenWorst), whole(ifUnseenBest))}</p>
            )}
          </div>
        </div>
      ) : (
        <p>{words.indexNone}</p>
      )}
    </Section>
  );
}

function WhatChanged({ asked, children }: { readonly asked: AskedRound; readonly children: ReactNode }) {
  const desk = useDesk();
  const { record, round } = asked;
  const earlier = previousComparable(record, round).round;
  const changed = useQuestion<ThenAndNow | null>(earlier ? thenAndNowOf(desk, earlier.thing, round) : noAnswer);
  if (!earlier) {
    return (
      <>
        <Section title={words.changed}>
          <p>{words.noEarlier}</p>
        </Section>
        {children}
      </>
    );
  }
  const letters = new Map(record.zones.map((z) => [z.thing, z.body.letter]));
  const sure = (changed?.findings ?? []).filter(
    (f) => (f.verdict === 'worse' || f.verdict === 'better') && !f.aloneCouldBeChance,
  );
  return (
    <>
      <Section
        title={words.changed}
        lead={words.changedSince(date(earlier.body.date))}
        actions={
          <LinkButton to={pathTo.thenAndNow(record.sculpture.thing, earlier.thing, round)} size="round">
            {words.toThenAndNow}
          </LinkButton>
        }
      >
        {changed === undefined && <Reading>{words.working}</Reading>}
        {changed && sure.length === 0 && <p>{words.changedNone}</p>}
        <ul className="bare stack tight">
          {sure.map((f) => (
            <li key={f.series}>
              <VerdictMark verdict={f.verdict} clearly={f.clearly}>
                {words.changeRow(
                  letters.get(f.zone) ?? '',
                  f.kind,
                  f.earlier.coverage ? share(f.earlier.coverage.value) : w.round.said.none,
                  f.later.coverage ? share(f.later.coverage.value) : w.round.said.none,
                )}
              </VerdictMark>
            </li>
          ))}
        </ul>
      </Section>
      {changed !== undefined && children}
    </>
  );
}
