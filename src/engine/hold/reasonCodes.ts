import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const holdReasons = {
  // What counts as back in a zone.
  'hold: told by looks': [],
  'hold: told by cover': ['level'],
  // Of a zone as a whole.
  'hold: no coating recorded': [],
  'hold: nobody looked at all': [],
  'hold: date not readable': ['treatment', 'date'],
  'hold: dated after today': ['treatment', 'date'],
  'hold: zone ended': ['date'],
  // How a hold starts.
  'hold: start seen clear': ['date'],
  'hold: start assumed clear': [],
  'hold: green stood before': ['date'],
  'hold: cleaned before': ['treatment', 'date'],
  'hold: coating day vague': ['first', 'last'],
  'hold: coatings counted as one': ['count'],
  // How it ends.
  'hold: returned': ['first', 'last'],
  'hold: coated again': ['date'],
  'hold: broken off': ['treatment', 'date'],
  'hold: still clear': ['date'],
  'hold: noticed in passing': [],
  'hold: looks of one day disagree': ['date'],
  'hold: seen clear again': ['date'],
  'hold: proves nothing': ['count', 'why'],
  'hold: two versions, not settled': ['things'],
  // Why there is none.
  'hold: no clean start': ['date'],
  'hold: perhaps no clean start': ['date'],
  'hold: coated again before a look': ['date'],
  'hold: broken off before a look': ['treatment', 'date'],
  'hold: zone ended before a look': ['date'],
  'hold: nobody has looked since': [],
  'hold: coating and break not in order': ['treatment', 'date'],
  // What a group of holds tells.
  'hold: too few zones': ['holds', 'zones', 'least'],
  'hold: too few ends': ['ends', 'least'],
  'hold: shape borrowed': ['shape', 'holds', 'ends'],
  'hold: shape within zones': ['shape', 'holds', 'zones'],
  'hold: nothing to borrow': [],
  'hold: no look in between': ['ends'],
  'hold: zones drawn anew': ['draws', 'zones'],
  'hold: no lower end in the draws': [],
  'hold: no upper end in the draws': [],
  'hold: earlier spans left out': ['holds'],
  'hold: noticed in passing, so many': ['holds'],
  // When to wax again.
  'hold: from its own holds': ['holds'],
  'hold: from its group': ['holds', 'zones'],
  'hold: from the last coating': ['date'],
  'hold: clear at the last look': ['date'],
  'hold: chance': ['percent'],
  'hold: capped': ['months'],
  'hold: severe exposure': ['months'],
  'hold: level reached in between': ['percent', 'first', 'last'],
  'hold: does not hold here': ['months'],
  'hold: green right after the coating': ['date'],
  'hold: green is back': ['date'],
  'hold: too few holds, no group': ['holds'],
  'hold: none came back': ['holds'],
  'hold: no coating on now': [],
  // When to look next.
  'hold: tells most': ['percent'],
  'hold: sooner is better': [],
  'hold: walk day': ['weekday'],
  'hold: no walk day yet': ['weekday'],
  'hold: look after the next coating': [],
  'hold: look from the whole collection': ['holds', 'zones'],
  'hold: never came back, yearly round will do': ['months'],
  'hold: clear past all that was seen': ['months'],
} as const satisfies Record<string, readonly string[]>;

export type HoldReason = keyof typeof holdReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends HoldReason>(
  code: C,
  ...[params]: (typeof holdReasons)[C] extends readonly []
    ? []
    : [Record<(typeof holdReasons)[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });
