import { useEffect, useRef, useState } from 'react';
import { noPhotoExpected, type TakenMany, takeMany } from '../../actions';
import { w } from '../../words';
import { say, useDesk } from '../shell';

export interface TakingNow {
  readonly done: number;
  readonly of: number;
  readonly name: string;
}

/** Photos being kept one after the other: how far, how it came out, and a way to stop. Leaving the screen stops it too. */
export const useTaking = (sculpture: string) => {
  const desk = useDesk();
  const [now, setNow] = useState<TakingNow>();
  const [result, setResult] = useState<TakenMany>();
  const stopper = useRef<AbortController>(undefined);
  useEffect(() => () => stopper.current?.abort(), []);
  const take = async (files: readonly File[]) => {
    stopper.current = new AbortController();
    setResult(undefined);
    setNow({ done: 0, of: files.length, name: files[0]?.name ?? '' });
    const taken = await takeMany(desk, sculpture, files, { heard: setNow, signal: stopper.current.signal });
    await noPhotoExpected(desk).catch(() => undefined);
    setNow(undefined);
    setResult(taken);
    say(w.photos.keptMany(taken.each.filter(({ photo }) => photo).length));
  };
  return { now, result, take, stop: () => stopper.current?.abort(), close: () => setResult(undefined) } as const;
};
