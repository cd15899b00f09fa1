import { useState } from 'react';
import { addPlanned } from '../../actions';
import type { HeatReading } from '../../engine/heat';
import type { Thing } from '../../engine/record';
import { fromUnit, inUnit, measureNumber, typedMeasure, w } from '../../words';
import { Button, Choice, Field, Notice } from '../parts';
import { Fold } from '../parts/Fold';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { timeIn, typedTime } from './typed';

const words = w.hotWork.readings;

/** What one touch adds: a thermometer is read to a degree, and metal warms by tens. */
const steps = [-10, -1, 1, 10] as const;

interface ReadingEntryProps {
  readonly day: Thing<'hotDay'>;
  readonly insert: string;
  readonly name: string;
  /** Of this insert on this day, in order of time. */
  readonly readings: readonly HeatReading[];
  readonly by: string;
  readonly onBy: (by: string) => void;
}

/** One hand on the thermometer: the last value of the spot stands there, a few touches make it the new one, now. */
export function ReadingEntry({ day, insert, name, readings, by, onBy }: ReadingEntryProps) {
  const desk = useDesk();
  const spots = [...new Set(readings.map((reading) => reading.spot))];
  const [spot, setSpot] = useState(readings.at(-1)?.spot ?? words.spotFirst);
  const [added, setAdded] = useState<readonly string[]>([]);
  const [newSpot, setNewSpot] = useState('');
  const lastOf = (where: string) => readings.filter((reading) => reading.spot === where).at(-1)?.celsius;
  const [celsius, setCelsius] = useState(lastOf(spot) ?? startAt);
  const [typed, setTyped] = useState({ time: '', degrees: '' });
  const [tried, setTried] = useState(false);
  const unkept = useTyped(['temperature', undefined, day.thing, insert], {
    spot: [spot, setSpot],
    added: [added, setAdded],
    newSpot: [newSpot, setNewSpot],
    celsius: [celsius, setCelsius],
    typed: [typed, setTyped],
  });
  const { run, refused, busy } = useDeed(unkept);
  const all = [...new Set([...(spots.length > 0 ? spots : [words.spotFirst]), ...added])];
  const choose = (where: string) => {
    setSpot(where);
    setCelsius(lastOf(where) ?? celsius);
  };
  const keep = (value: number, time: string, done?: () => void) => {
    const { sculpture } = day.body;
    const body = { sculpture, insert, hotDay: day.thing, time, spot, celsius: value, by: by.trim() };
    void run(
      () => addPlanned(desk, 'insertReading', body),
      () => {
        say(words.written(measureNumber('temperature', value, 1), spot));
        done?.();
      },
    );
  };
  const time = typedTime(typed.time);
  const degrees = typedMeasure('temperature', typed.degrees);
  const degreesWrong = degrees === undefined || degrees < -60 || degrees > 1200;
  const keepTyped = () => {
    setTried(true);
    if (!time || degreesWrong) return;
    keep(degrees, time, () => {
      setTyped({ time: '', degrees: '' });
      setTried(false);
    });
  };
  return (
    <div className="stack not-printed">
      {unkept.line}
      {refused && <Notice kind="problem" title={refused} />}
      {all.length > 1 && (
        <Choice
          label={words.spot}
          tiles="narrow"
          size="round"
          options={all.map((value) => ({ value, label: value }))}
          value={spot}
          onChange={choose}
        />
      )}
      <div className="hot-degrees">
        {steps.slice(0, 2).map((step) => (
          <Step key={step} step={step} name={name} go={() => setCelsius(stepped(celsius, step))} />
        ))}
        <output className="hot-value">{words.value(measureNumber('temperature', celsius, 1))}</output>
        {steps.slice(2).map((step) => (
          <Step key={step} step={step} name={name} go={() => setCelsius(stepped(celsius, step))} />
        ))}
      </div>
      <div className="row by-hand">
        <Button
          kind="main"
          size="big"
          disabled={busy}
          aria-label={words.writeOf(measureNumber('temperature', celsius, 1), name)}
          onClick={() => keep(celsius, timeIn(desk.now()))}
        >
          {words.write(measureNumber('temperature', celsius, 1))}
        </Button>
      </div>
      <Fold show={words.late} hide={words.lateShut} whenOpened alsoOnPaper>
        <div className="stack">
          <Field label={words.by} value={by} onChange={onBy} maxLength={200} />
          <div className="row">
            <Field label={words.spotName} value={newSpot} onChange={setNewSpot} maxLength={100} optional short />
            <Button
              disabled={!newSpot.trim()}
              onClick={() => {
                setAdded([...added, newSpot.trim()]);
                choose(newSpot.trim());
                setNewSpot('');
              }}
            >
              {words.newSpot}
            </Button>
          </div>
          <div className="hot-pair">
            <Field
              label={words.time}
              value={typed.time}
              onChange={(value) => setTyped({ ...typed, time: value })}
              maxLength={12}
              error={tried && !time ? w.hotWork.watch.timeWrong : undefined}
              short
            />
            <Field
              label={words.degrees}
              kind="text"
              takes="temperature"
              value={typed.degrees}
              onChange={(value) => setTyped({ ...typed, degrees: value })}
              maxLength={8}
              error={tried && degreesWrong ? words.degreesWrong : undefined}
              short
            />
          </div>
          <div className="row by-hand">
            <Button size="round" disabled={busy} onClick={keepTyped}>
              {words.writeTyped}
            </Button>
          </div>
        </div>
      </Fold>
    </div>
  );
}

/** One step of the unit shown. */
const stepped = (celsius: number, step: number): number =>
  fromUnit('temperature', Number((inUnit('temperature', celsius) + step).toFixed(1)));

/** Where the first reading of a day begins, degrees Celsius: a mild morning. */
const startAt = 20;

function Step({ step, name, go }: { readonly step: number; readonly name: string; readonly go: () => void }) {
  const by = step > 0 ? `+${step}` : `−${-step}`;
  return (
    <Button size="big" aria-label={words.change(by, name)} onClick={go}>
      {by}
    </Button>
  );
}
