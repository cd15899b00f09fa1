import { useContext, useLayoutEffect, useSyncExternalStore } from 'react';
import type { Question } from '../../actions';
import { ArrivalContext } from './arrival';

/**
 * Reads a question: `useQuestion(sculptureList(desk))`. Undefined while it is read for the first time; a screen that comes
 * up waits for it. Questions are the same reference for the same desk and key, so asking again in each render costs nothing.
 */
export function useQuestion<T>(question: Question<T> & { get(): T }): T;
export function useQuestion<T>(question: Question<T>): T | undefined;
export function useQuestion<T>(question: Question<T>): T | undefined {
  const arrival = useContext(ArrivalContext);
  useLayoutEffect(() => {
    if (!arrival || question.answered?.() !== false) return undefined;
    const come = arrival.waitFor();
    const stop = question.subscribe(() => {
      if (question.answered?.()) come();
    });
    return () => {
      stop();
      come();
    };
  }, [arrival, question]);
  return useSyncExternalStore(question.subscribe, question.get);
}
