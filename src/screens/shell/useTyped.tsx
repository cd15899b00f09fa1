import { type ReactNode, useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { forgetTyped, holdTyped, type Typed, typedAt } from '../../actions';
import type { Reason } from '../../engine/record';
import { useDesk } from './DeskContext';
import { TypedLine, type TypedState } from './TypedLine';
import { type Flat, flat, movedSince, putBack, wordOf } from './typedFields';

/** Which form, of which thing (undefined: a new one), and what tells it from others of its sort: the work, the campaign. */
export type TypedPlace = readonly [form: string, thing: string | undefined, ...beside: (string | undefined)[]];

/** Each field as useState gives it. */
type Fields<T> = { readonly [K in keyof T]: readonly [T[K], (value: T[K]) => void] };

export interface TypedHere {
  /** Stands at the head of the form; nothing while nothing is to be said. */
  readonly line: ReactNode;
  /** What was typed is in the record now. Handed to useDeed this happens by itself. */
  readonly kept: () => void;
}

/** What a form opened with, and what was last held of it. */
interface Course {
  readonly start: Flat;
  /** A person touched or typed something, or what was held is back. Before, values may still come from the record. */
  readonly begun: boolean;
  readonly ready: boolean;
  readonly last: string;
}

const atRest: Course = { start: {}, begun: false, ready: false, last: '' };

const quiet: TypedState = { is: 'quiet' };

/**
 * Holds on this device what is typed into a form, from the first letter until it is kept, and puts it back when the form is opened again:
 * after the back button, Escape, a reload, a browser that was ended. Of a new thing all fields are held, a day that was "today" too; of
 * one that is there only what was changed, so that what came from elsewhere meanwhile stands.
 */
export function useTyped<T extends object>([form, thing, ...beside]: TypedPlace, fields: Fields<T>): TypedHere {
  const desk = useDesk();
  const [where] = useLocation();
  const place = [form, thing ?? 'new', ...beside.filter(Boolean)].join(' ');
  const [state, setState] = useState(quiet);
  const [problem, setProblem] = useState<Reason>();
  const course = useRef(atRest);
  const latest = useRef(fields as Fields<Flat>);
  latest.current = fields as Fields<Flat>;
  const values = (): Flat =>
    Object.fromEntries(Object.entries(latest.current).map(([name, [value]]) => [name, value] as const));
  const put = (to: Flat) => {
    for (const [name, [value, set]] of Object.entries(latest.current)) if (to[name] !== value) set(to[name]);
  };
  const go = (to: Partial<Course>) => {
    course.current = { ...course.current, ...to };
  };

  const hold = () => {
    const { start, begun, ready, last } = course.current;
    const now = flat(values());
    if (!begun) return go({ start: values() });
    const moved = movedSince(flat(start), now);
    const word = Object.keys(moved).length > 0 ? wordOf(now) : '';
    if (!ready || word === last) return;
    go({ last: word });
    const title = document.title.split(' · ')[0] ?? '';
    const outcome =
      word === ''
        ? forgetTyped(desk, place)
        : holdTyped(desk, place, { at: desk.now(), where, title, values: thing === undefined ? now : moved });
    void outcome.then((came) => setProblem(came.ok ? undefined : came.reason));
  };
  const opened = (typed: Typed | undefined) => {
    go({ ready: true });
    if (!typed) return hold();
    const moved = Object.keys(movedSince(flat(course.current.start), flat(values())));
    const held = Object.fromEntries(Object.entries(typed.values).filter(([name]) => !moved.includes(name)));
    const back = putBack(values(), held);
    go({ begun: true, last: wordOf(flat(back)) });
    put(back);
    setState({ is: 'back', at: typed.at });
  };
  const now = useRef({ hold, opened });
  now.current = { hold, opened };

  useEffect(() => {
    let left = false;
    course.current = atRest;
    const begin = () => {
      course.current = { ...course.current, begun: true };
    };
    const events = ['input', 'change', 'click'] as const;
    for (const event of events) addEventListener(event, begin, true);
    void typedAt(desk, place).then((typed) => {
      if (!left) now.current.opened(typed);
    });
    return () => {
      left = true;
      for (const event of events) removeEventListener(event, begin, true);
    };
  }, [desk, place]);
  useEffect(() => now.current.hold());

  const rest = () => {
    const held = course.current.last !== '';
    go({ begun: false, last: '' });
    if (held) void forgetTyped(desk, place);
  };
  const line = (
    <TypedLine
      state={state}
      problem={problem}
      onDiscard={(at) => {
        const taken = values();
        rest();
        put(course.current.start);
        setState({ is: 'discarded', values: taken, at });
      }}
      onBringBack={(taken, at) => {
        go({ begun: true });
        put(taken);
        setState({ is: 'back', at });
      }}
    />
  );
  const kept = () => {
    rest();
    setState(quiet);
  };
  return { line, kept };
}
