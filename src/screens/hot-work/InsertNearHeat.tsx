import { alarmAt, endOfWork, isOut, temperatureLog } from '../../engine/heat';
import type { Thing } from '../../engine/record';
import { measureNumber, w } from '../../words';
import { Notice } from '../parts';
import { Reasons } from '../parts/Reasons';
import { AfterHeat } from './AfterHeat';
import type { Around } from './AroundWork';
import { insertPlace, limitText } from './insertNames';
import { ReadingChart } from './ReadingChart';
import { ReadingEntry } from './ReadingEntry';
import { ReadingTable } from './ReadingTable';

const words = w.hotWork.readings;

interface InsertNearHeatProps {
  readonly around: Around;
  readonly day: Thing<'hotDay'>;
  readonly insert: string;
  readonly name: string;
  readonly mayWrite: boolean;
  readonly by: string;
  readonly onBy: (by: string) => void;
}

/** One insert in the day: its limit, what was read, what that says, and how it is afterwards. */
export function InsertNearHeat({ around, day, insert, name, mayWrite, by, onBy }: InsertNearHeatProps) {
  const { planned, record } = around;
  const itself = record.inserts.find(({ thing }) => thing === insert);
  const place = itself && insertPlace(record, itself);
  const care = planned.insertCare.find(({ body }) => body.insert === insert)?.body;
  const after = planned.insertAfter.find(({ body }) => body.insert === insert && body.hotDay === day.thing);
  const readings = planned.insertReading.filter(({ body }) => body.insert === insert && body.hotDay === day.thing);
  const { workEnded, date } = day.body;
  const out = isOut(care, date);
  const log = temperatureLog(
    readings.map(({ body }) => body),
    care,
    endOfWork(day.body),
  );
  const alarm = log.level === 'near' || log.level === 'over';
  const limits = limitText(care);
  return (
    <li className={alarm ? 'hot-card alarm' : 'hot-card'}>
      <h3 className="hot-name">{name}</h3>
      {place && <p>{place}</p>}
      {itself?.body.materialBy === 'not known' && <p className="strong">{w.inserts.materialByWords['not known']}</p>}
      {out ? (
        <p className="strong">{words.out}</p>
      ) : (
        <p className={limits ? undefined : 'strong'}>
          {limits ? words.limits(limits) : words.noLimit}{' '}
          {care?.most !== undefined && limits && words.alarmAt(measureNumber('temperature', alarmAt(care.most), 1))}
        </p>
      )}
      {care?.shield && <p className="soft">{care.shield}</p>}
      {alarm && <Notice kind={workEnded ? 'stop' : 'problem'} title={words.alarm(name)} />}
      {log.highest && (
        <p className="strong">
          {words.highest(measureNumber('temperature', log.highest.celsius, 1), log.highest.time)}
        </p>
      )}
      {(!out || readings.length > 0) && <Reasons reasons={log.reasons} />}
      {mayWrite && !out && (
        <ReadingEntry day={day} insert={insert} name={name} readings={log.rows} by={by} onBy={onBy} />
      )}
      <ReadingChart name={name} log={log} most={care?.most} />
      <ReadingTable log={log} readings={readings} mayWrite={mayWrite} />
      {(workEnded || after) && (
        <AfterHeat
          day={day}
          insert={insert}
          key={day.body.wentOn}
          name={name}
          after={after}
          before={care?.photos ?? []}
          by={by}
          mayWrite={mayWrite}
        />
      )}
    </li>
  );
}
