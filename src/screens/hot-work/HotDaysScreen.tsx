import { useState } from 'react';
import { Link } from 'wouter';
import { tabs } from '../../actions';
import type { BodyOf } from '../../engine/record';
import { hotWorkRules } from '../../engine/trade';
import { date, measureNumber, number, sourceSaid, w, workName } from '../../words';
import { AddIcon, Button, EmptyState, Notice, OnIcon, Page } from '../parts';
import { Fold } from '../parts/Fold';
import { pathTo, useDesk, useQuestion } from '../shell';
import { type Around, AroundThing } from './AroundWork';
import { HotDaySheet } from './HotDaySheet';
import '../parts/lines.css';
import '../parts/plainTable.css';
import './hotWork.css';

const words = w.hotWork;

/** The days of hot work of a campaign, the last first. */
export function HotDaysScreen({ campaign }: { readonly campaign: string }) {
  return (
    <AroundThing kind="campaign" thing={campaign} show={(around) => <Days campaign={campaign} around={around} />} />
  );
}

export const stateOf = ({ closed, watchKept, workEnded }: BodyOf<'hotDay'>): keyof typeof words.states => {
  if (closed) return 'closed';
  if (watchKept) return 'kept';
  return workEnded ? 'watching' : 'working';
};

function Days({ campaign, around }: { readonly campaign: string; readonly around: Around }) {
  const { record, planned } = around;
  const mayWrite = useQuestion(tabs(useDesk())).mode === 'writing';
  const [adding, setAdding] = useState(false);
  const { body } = record.sculpture;
  const days = planned.hotDay
    .filter((day) => day.body.campaign === campaign)
    .sort((a, b) => (a.body.date < b.body.date ? 1 : -1));
  return (
    <Page
      title={words.title}
      over={workName({ body })}
      lead={words.lead}
      back={{ to: pathTo.campaign(campaign), label: words.back }}
      actions={
        mayWrite && (
          <Button kind="main" size="round" icon={<AddIcon />} onClick={() => setAdding(true)}>
            {words.add}
          </Button>
        )
      }
    >
      <Reminder />
      {days.length === 0 && (
        <EmptyState title={words.empty}>
          <p>{words.emptyWhat}</p>
        </EmptyState>
      )}
      <ul className="lines bare">
        {days.map(({ thing, body: day }) => (
          <li key={thing}>
            <Link className="line" href={pathTo.hotDay(thing)}>
              <span className="grow">
                <span className="strong">{date(day.date)}</span>
                <span className="soft line-detail file-name">
                  {[day.permit, words.states[stateOf(day)]].filter(Boolean).join(' · ')}
                </span>
              </span>
              <OnIcon />
            </Link>
          </li>
        ))}
      </ul>
      <Rules />
      {adding && <HotDaySheet around={around} campaign={campaign} day={undefined} onClose={() => setAdding(false)} />}
    </Page>
  );
}

export function Reminder() {
  return (
    <Notice kind="caution" title={words.reminder}>
      <p>{words.reminderWhat}</p>
    </Notice>
  );
}

function Rules() {
  const value = (n: number, unit: 'm' | 'min') =>
    unit === 'm' ? words.metres(measureNumber('length', n, 1)) : words.minutes(number(n));
  return (
    <Fold show={words.rules} hide={words.rulesShut} alsoOnPaper>
      <p className="soft">{words.rulesWhat}</p>
      <table className="plain-table cards">
        <thead>
          <tr>
            <th scope="col">{words.rule}</th>
            <th scope="col">{words.asks}</th>
            <th scope="col">{words.from}</th>
          </tr>
        </thead>
        <tbody>
          {hotWorkRules.map((rule) => (
            <tr key={rule.id}>
              <th scope="row">{rule.name}</th>
              <td data-head={words.asks}>{value(rule.value, rule.unit)}</td>
              <td data-head={words.from}>{sourceSaid(rule.source)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Fold>
  );
}
