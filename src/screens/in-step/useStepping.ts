import { useEffect, useRef, useState } from 'react';
import type { Doing, Outcome, Stepping } from '../../actions';
import { w } from '../../words';
import { say, useDeed } from '../shell';

interface Far {
  readonly doing?: Doing;
  readonly done: number;
  readonly all: number;
}

/** Where on the screen it was asked for: what is told of it stands there. */
export type AskedAt = 'server' | 'picked' | 'joined';

/** A step asked for by a tap: how far it is, and a way to leave off. Leaving the screen does not end it. */
export function useStepping() {
  const [far, setFar] = useState<Far>();
  const [at, setAt] = useState<AskedAt>();
  const off = useRef<AbortController>(null);
  const here = useRef(true);
  const { run, refused } = useDeed();
  useEffect(() => {
    here.current = true;
    return () => {
      here.current = false;
    };
  }, []);
  const go = async (
    askedAt: AskedAt,
    deed: (stepping: Stepping) => Promise<Outcome<{ readonly stepped?: unknown }>>,
  ) => {
    setAt(askedAt);
    off.current = new AbortController();
    setFar({ done: 0, all: 0 });
    const { signal } = off.current;
    const heard = (doing: Doing, done: number, all: number) => here.current && setFar({ doing, done, all });
    await run(
      () => deed({ heard, signal }),
      ({ stepped }) => stepped !== undefined && say(w.inStep.done),
    );
    setFar(undefined);
  };
  return { go, at, far, refused, leaveOff: () => off.current?.abort() } as const;
}
