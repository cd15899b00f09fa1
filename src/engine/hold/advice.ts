import type { Reason } from '../record';
import type { DayFigure, OpenFigure } from './hold';

/** What may be said of one zone: when to wax again, when to look next. What is not known is null, and the reasons say why. */
export interface Advice {
  readonly zone: string;
  /** The day the chance of return reaches the level set, or the cap. */
  readonly waxAgainBy: DayFigure | null;
  /** Waxing does not hold here: that is all that is said. */
  readonly asksConservator: boolean;
  readonly nextLook: {
    readonly day: string;
    /** Between these a look tells nearly as much. */
    readonly low: string | null;
    readonly high: string | null;
    readonly reasons: readonly Reason[];
  } | null;
  /** When a look would tell most if the zone were coated on a day a year after the last coating. */
  readonly ifCoated: (DayFigure & { readonly on: string }) | null;
  /** The coating is past the time half of such coatings have lasted, or the green is back on it. */
  readonly past: boolean;
  /** Months until half of the holds this rests on have come back; null where no fit stands. */
  readonly expected: OpenFigure | null;
  readonly reasons: readonly Reason[];
}
