import { useSyncExternalStore } from 'react';
import type { Question } from '../../actions';

/**
 * Reads a question: `useQuestion(sculptureList(desk))`. Undefined while it is read for the first time. Questions are the
 * same reference for the same desk and key, so asking again in each render costs nothing.
 */
export function useQuestion<T>(question: Question<T> & { get(): T }): T;
export function useQuestion<T>(question: Question<T>): T | undefined;
export function useQuestion<T>(question: Question<T>): T | undefined {
  return useSyncExternalStore(question.subscribe, question.get);
}
