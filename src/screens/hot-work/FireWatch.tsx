import { useState } from 'react';
import { endHotWork, fireWatch, goOnWithHotWork, sayWatchKept } from '../../actions';
import { minutesKept, type WatchCount, type WatchState, watchState } from '../../engine/heat';
import type { Thing } from '../../engine/record';
import { number, w } from '../../words';
import { Button, Field, Notice, Progress } from '../parts';
import { Reasons } from '../parts/Reasons';
import { say, useDeed, useDesk, useQuestion, useTyped } from '../shell';
import { personText } from './insertNames';
import { timeIn, typedTime } from './typed';

const words = w.hotWork.watch;

interface FireWatchProps {
  readonly day: Thing<'hotDay'>;
  readonly mayWrite: boolean;
}

/** The watch after the flame is out: what is still to be counted, and the watcher's word at its end. */
export function FireWatch({ day, mayWrite }: FireWatchProps) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const { workEnded, watchMinutes, watchKept, closed } = day.body;
  const end = () =>
    void run(
      () => endHotWork(desk, day.thing),
      () => say(words.begun),
    );
  const goOn = () =>
    void run(
      () => goOnWithHotWork(desk, day.thing),
      () => say(words.wentOn),
    );
  const acts = mayWrite && !closed;
  return (
    <section className="hot-watch" aria-label={words.title}>
      {refused && <Notice kind="problem" title={refused} />}
      <h2>{words.title}</h2>
      {!workEnded && (
        <>
          <p>
            <span className="strong">{words.working}</span> {words.begins(number(watchMinutes, 0))}
          </p>
          {acts && (
            <div className="row by-hand not-printed">
              <Button kind="main" size="big" disabled={busy} onClick={end}>
                {words.end}
              </Button>
            </div>
          )}
        </>
      )}
      {workEnded && watchKept && (
        <>
          <p>{words.ended(timeIn(workEnded))}</p>
          <p className="strong">{words.keptAt(timeIn(watchKept.at), watchKept.by, number(minutesKept(day.body), 0))}</p>
          {watchKept.seen && <p>{watchKept.seen}</p>}
        </>
      )}
      {workEnded && !watchKept && (
        <Counting key={workEnded} day={day} workEnded={workEnded} mayWrite={mayWrite} again={end} />
      )}
      {workEnded && acts && (
        <div className="row by-hand not-printed">
          <Button kind="quiet" disabled={busy} onClick={goOn}>
            {words.goOn}
          </Button>
        </div>
      )}
    </section>
  );
}

interface CountingProps extends FireWatchProps {
  readonly workEnded: string;
  readonly again: () => void;
}

function Counting({ day, workEnded, mayWrite, again }: CountingProps) {
  const count = useQuestion(fireWatch(useDesk(), day.thing, workEnded));
  const { watchMinutes } = day.body;
  if (count === undefined) return <p>{words.ended(timeIn(workEnded))}</p>;
  const state = count && watchState(count, watchMinutes);
  return (
    <>
      <p>{words.ended(timeIn(workEnded))}</p>
      {state === null ? <p>{words.notHere}</p> : <Left state={state} count={count} minutes={watchMinutes} />}
      {mayWrite && state?.state !== 'running' && (
        <Word day={day} doubt={state?.state !== 'over'} again={state?.state === 'in doubt' ? again : undefined} />
      )}
    </>
  );
}

interface LeftProps {
  readonly state: WatchState;
  readonly count: WatchCount | null;
  readonly minutes: number;
}

/** Large enough to be read across the yard; for ears once a minute. */
function Left({ state, count, minutes }: LeftProps) {
  const seconds = Math.ceil(state.left / 1000);
  const whole = Math.ceil(state.left / 60_000);
  return (
    <>
      {state.state === 'over' ? (
        <Notice title={words.over}>
          <p>{words.overWhat(number(minutes, 0))}</p>
        </Notice>
      ) : (
        <>
          <p aria-hidden="true">
            <span className="hot-clock">{clockText(seconds)}</span> {words.left}
          </p>
          <p className="unseen" role="timer">
            {words.leftFor(whole)}
          </p>
          <Progress label={words.counted} done={count?.counted ?? 0} all={minutes * 60_000} />
          <p className="soft small">{words.counts}</p>
        </>
      )}
      {state.state === 'in doubt' && (
        <Notice kind="caution" title={words.doubt}>
          <p>{words.doubtWhat}</p>
        </Notice>
      )}
      <Reasons reasons={state.reasons} />
    </>
  );
}

const clockText = (seconds: number): string => `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;

interface WordProps {
  readonly day: Thing<'hotDay'>;
  /** The tablet did not count the whole time: the watcher's own watch is asked for. */
  readonly doubt: boolean;
  readonly again: (() => void) | undefined;
}

function Word({ day, doubt, again }: WordProps) {
  const desk = useDesk();
  const [by, setBy] = useState(day.body.watcher ? personText(day.body.watcher) : '');
  const [seen, setSeen] = useState('');
  const [from, setFrom] = useState('');
  const [until, setUntil] = useState('');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['word on the fire watch', undefined, day.thing], {
    by: [by, setBy],
    seen: [seen, setSeen],
    from: [from, setFrom],
    until: [until, setUntil],
  });
  const { run, refused, busy } = useDeed(typed);
  const own = { from: typedTime(from), until: typedTime(until) };
  const save = () => {
    setTried(true);
    if (!by.trim() || (doubt && (!own.from || !own.until))) return;
    const given = doubt && own.from && own.until ? { from: own.from, until: own.until } : undefined;
    void run(
      () => sayWatchKept(desk, day.thing, { by, seen: seen.trim() || undefined, own: given }),
      () => say(words.said),
    );
  };
  const timeWrong = (time: string | undefined) => (tried && !time ? words.timeWrong : undefined);
  return (
    <fieldset className="photos-here stack not-printed">
      <legend>{words.word}</legend>
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.by}
        value={by}
        onChange={setBy}
        maxLength={200}
        error={tried && !by.trim() ? words.byMissing : undefined}
      />
      {doubt && (
        <fieldset className="photos-here">
          <legend>{words.own}</legend>
          <div className="hot-pair">
            <Field
              label={words.ownFrom}
              hint={words.timeHint}
              value={from}
              onChange={setFrom}
              maxLength={12}
              error={timeWrong(own.from)}
              short
            />
            <Field
              label={words.ownUntil}
              hint={words.timeHint}
              value={until}
              onChange={setUntil}
              maxLength={12}
              error={timeWrong(own.until)}
              short
            />
          </div>
        </fieldset>
      )}
      <Field label={words.seen} value={seen} onChange={setSeen} maxLength={500} optional />
      <div className="row by-hand">
        {again && (
          <Button disabled={busy} onClick={again}>
            {words.again}
          </Button>
        )}
        <Button kind="main" size="big" disabled={busy} onClick={save}>
          {words.say}
        </Button>
      </div>
    </fieldset>
  );
}
