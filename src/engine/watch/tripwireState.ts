import type { Figure, Reason, Thing } from '../record';

export type Tripwire = Thing<'decision'>['body']['tripwires'][number];

/**
 * Where a tripwire stands. 'perhaps': the figure lies over the line and its range reaches back across it. 'cannot tell': the record
 * says nothing of it, which is never read as "not met".
 */
export type TripwireWord = 'met' | 'perhaps' | 'not met' | 'cannot tell';

export interface TripwireState {
  readonly word: TripwireWord;
  /** Day of the latest evidence that it is met, or perhaps met; null where it is neither. */
  readonly since: string | null;
  readonly reasons: readonly Reason[];
}

export const cannotTell = (...reasons: readonly Reason[]): TripwireState => ({
  word: 'cannot tell',
  since: null,
  reasons,
});
export const notMet = (...reasons: readonly Reason[]): TripwireState => ({ word: 'not met', since: null, reasons });
export const met = (since: string, ...reasons: readonly Reason[]): TripwireState => ({ word: 'met', since, reasons });

/** A figure against a line, over it or under it, as sure as its range allows. */
export const against = (
  figure: Omit<Figure, 'reasons'>,
  line: number,
  side: 'over' | 'under',
  day: string,
  reason: Reason,
): TripwireState => {
  const sign = side === 'over' ? 1 : -1;
  const past = (x: number): boolean => sign * (x - line) > 0;
  if (!past(figure.value)) return notMet(reason);
  const sure = past(side === 'over' ? figure.low : figure.high);
  return { word: sure ? 'met' : 'perhaps', since: day, reasons: [reason] };
};
