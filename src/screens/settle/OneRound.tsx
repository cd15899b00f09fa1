import { useState } from 'react';
import { type RoundsThatMayBeOne, sayApart, sayOne, sculptureRecordOf, surveyors } from '../../actions';
import type { Thing } from '../../engine/record';
import { date, sayReason, w } from '../../words';
import { Button, Notice } from '../parts';
import { say, useDesk, useQuestion } from '../shell';

const words = w.settle;

/** "Is this one round?": two rounds of a sculpture begun apart. Nothing is joined unless a person says so. */
export function OneRound({ pair }: { readonly pair: RoundsThatMayBeOne }) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, pair.sculpture));
  const people = useQuestion(surveyors(desk));
  const [fault, setFault] = useState('');
  const answer = async (deed: typeof sayOne, said: string) => {
    const outcome = await deed(desk, pair.earlier.thing, pair.later.thing);
    if (outcome.ok) say(said);
    else setFault(sayReason(outcome.reason));
  };
  const told = ({ thing, body }: Thing<'round'>) =>
    words.roundOf(
      people?.find((one) => one.thing === body.surveyor)?.role ?? words.unknownPerson,
      date(body.date),
      record?.visits.filter((visit) => visit.body.round === thing).length ?? 0,
    );
  return (
    <div className="card stack">
      <p>{words.roundsWhat(record?.sculpture.body.title ?? '', date(pair.earlier.body.date))}</p>
      <ul>
        <li>{told(pair.earlier)}</li>
        <li>{told(pair.later)}</li>
      </ul>
      <p className="soft small">{words.oneWhat}</p>
      {fault && <Notice kind="problem" title={fault} />}
      <div className="row">
        <Button onClick={() => answer(sayOne, words.saidOne)}>{words.one}</Button>
        <Button onClick={() => answer(sayApart, words.saidTwo)}>{words.two}</Button>
      </div>
    </div>
  );
}
