import type { Coverage } from '../condition';
import type { Reason } from '../record';

/** Share of what the photo shows of the zone, 0 to 1, with its 95 % interval. */
export interface Measured {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly method: 'traced' | 'dots' | 'photo';
  /** The same as the record holds it and engine/condition reads it: for dots and masks with the 90 % range, for tracings with the reach of the hand. */
  readonly coverage: Coverage;
  readonly reasons: readonly Reason[];
}

/** Why nothing is told. */
export interface Refused {
  readonly refused: readonly Reason[];
}

export type Measurement = Measured | Refused;

export const isRefused = <T extends object>(outcome: T | Refused): outcome is Refused => 'refused' in outcome;
