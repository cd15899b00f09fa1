import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { keepAwake, tabs } from '../../actions';
import type { Thing } from '../../engine/record';
import { date, w } from '../../words';
import { LinkButton, Page, Section } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';
import { AirLimits } from './AirLimits';
import { type Around, AroundThing } from './AroundWork';
import { BeforeLit } from './BeforeLit';
import { CloseDay } from './CloseDay';
import { FireWatch } from './FireWatch';
import { HotDaySheet } from './HotDaySheet';
import { Reminder } from './HotDaysScreen';
import { InsertNearHeat } from './InsertNearHeat';
import { insertNames, personText } from './insertNames';
import './hotWork.css';

const words = w.hotWork;

/** The card of one day of hot work: open points, watch, readings, photos afterwards, close. */
export function HotDayScreen({ hotDay }: { readonly hotDay: string }) {
  return (
    <AroundThing
      kind="hotDay"
      thing={hotDay}
      show={(around) => {
        const day = around.planned.hotDay.find(({ thing }) => thing === hotDay);
        return day ? <Day around={around} day={day} /> : <NotHere />;
      }}
    />
  );
}

function Day({ around, day }: { readonly around: Around; readonly day: Thing<'hotDay'> }) {
  const { record, planned } = around;
  const writing = useQuestion(tabs(useDesk())).mode === 'writing';
  const [, go] = useLocation();
  const [editing, setEditing] = useState(false);
  const [by, setBy] = useState(day.body.watcher ? personText(day.body.watcher) : '');
  const { body } = day;
  const isOpen = body.closed === undefined;
  useEffect(() => (isOpen ? keepAwake() : undefined), [isOpen]);
  const mayWrite = writing && isOpen;
  const names = insertNames(record);
  const facts = {
    day: body,
    cares: new Map(planned.insertCare.map((care) => [care.body.insert, care.body])),
    afters: new Map(
      planned.insertAfter
        .filter((after) => after.body.hotDay === day.thing)
        .map((after) => [after.body.insert, after.body]),
    ),
    read: planned.insertReading.filter((row) => row.body.hotDay === day.thing).map((row) => row.body.insert),
    inserts: record.inserts.map(({ thing }) => thing),
  };
  const near = [...new Set([...(body.inserts ?? []), ...facts.read])];
  const { number, title } = record.sculpture.body;
  const back = body.campaign
    ? { to: pathTo.hotDays(body.campaign), label: words.backToDays }
    : { to: pathTo.sculpture(record.sculpture.thing), label: title || w.sculptures.untitled };
  return (
    <Page title={words.dayTitle(date(body.date))} over={`${number} ${title}`.trim()} back={back}>
      <Reminder />
      <FireWatch day={day} mayWrite={mayWrite} />
      <BeforeLit day={day} facts={facts} names={names} mayWrite={mayWrite} onEdit={() => setEditing(true)} />
      <Section
        title={words.readings.title}
        actions={
          <LinkButton kind="quiet" to={pathTo.inserts(record.sculpture.thing)}>
            {words.readings.toInserts}
          </LinkButton>
        }
      >
        {near.length === 0 && <p className="soft">{words.readings.none}</p>}
        <ul className="bare hot-inserts">
          {near.map((insert) => (
            <InsertNearHeat
              key={insert}
              around={around}
              day={day}
              insert={insert}
              name={names(insert) ?? w.sculptures.work.notHere}
              mayWrite={mayWrite}
              by={by}
              onBy={setBy}
            />
          ))}
        </ul>
      </Section>
      <CloseDay day={day} facts={facts} names={names} by={by} mayWrite={writing} />
      <AirLimits />
      <PrintRow />
      {editing && (
        <HotDaySheet
          around={around}
          campaign={body.campaign}
          day={day}
          onClose={() => setEditing(false)}
          onRemoved={() => go(back.to)}
        />
      )}
    </Page>
  );
}
