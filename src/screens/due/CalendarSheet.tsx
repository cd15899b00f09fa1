import { useState } from 'react';
import { collectionState, type DueThings, prepareCalendar, saveFile, type Way, waysToSave } from '../../actions';
import { type NameOfThing, sayReason, w, whole } from '../../words';
import { Button, Choice, Notice, Sheet } from '../parts';
import { say, useDesk, useQuestion } from '../shell';
import { calendarDays } from './calendarDays';

const words = w.due.calendar;
type Alarm = keyof typeof words.alarms;
const alarms: readonly Alarm[] = ['none', '1', '7'];

interface CalendarSheetProps {
  readonly things: DueThings;
  readonly names: NameOfThing;
  readonly onClose: () => void;
}

/** What is due as a file for a calendar, saved in the ways this browser has. */
export function CalendarSheet({ things, names, onClose }: CalendarSheetProps) {
  const desk = useDesk();
  const collection = useQuestion(collectionState(desk));
  const [alarm, setAlarm] = useState<Alarm>('1');
  const [text, setText] = useState<string>();
  const [told, setTold] = useState<string>();
  const days = calendarDays(things, names, desk.today());
  const name = words.name(collection?.name ?? w.product);
  const prepared = prepareCalendar(desk, days, { name, ...(alarm === 'none' ? {} : { alarmDays: Number(alarm) }) });
  const leave = async (way: Way) => {
    const outcome = await saveFile(desk, prepared, way);
    if (!outcome.ok) return setTold(sayReason(outcome.reason));
    if (way === 'text') return setText(outcome.text);
    say(words.saved);
    onClose();
  };
  return (
    <Sheet
      open
      title={words.title}
      onClose={onClose}
      actions={waysToSave(prepared).map((way, i) => (
        <Button key={way} kind={i === 0 ? 'main' : 'plain'} onClick={() => leave(way)}>
          {words.ways[way]}
        </Button>
      ))}
    >
      <p>{words.what}</p>
      <p>
        {words.holds(whole(days.length))} {words.names}
      </p>
      {things.workingOut > 0 && <Notice kind="caution" title={w.due.stillWorking(things.workingOut)} />}
      <Choice
        label={words.alarm}
        tiles="narrow"
        options={alarms.map((value) => ({ value, label: words.alarms[value] }))}
        value={alarm}
        onChange={(value) => {
          setAlarm(value);
          setText(undefined);
        }}
      />
      {told && <Notice title={told} />}
      {text !== undefined && (
        <textarea className="calendar-text" readOnly rows={10} value={text} aria-label={words.text} />
      )}
    </Sheet>
  );
}
