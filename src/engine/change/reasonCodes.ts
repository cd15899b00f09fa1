import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const changeReasons = {
  // Two rounds held against each other.
  'change: other sculpture': [],
  'change: same round': [],
  'change: other type of round': ['earlier', 'later'],
  'change: other washing': ['earlier', 'later'],
  'change: other wetness': ['earlier', 'later'],
  'change: rounds not alike': [],
  'change: other surveyor': ['earlier', 'later'],
  'change: surveyor not said': [],
  'change: own eye': ['surveyor', 'sd', 'pairs', 'patches'],
  // Which round to compare with.
  'change: no earlier round': [],
  'change: earlier rounds are of another kind or state': ['rounds'],
  // Why a zone or a finding cannot be compared, or only in part.
  'change: not looked then': ['round', 'why'],
  'change: not looked now': ['round', 'why'],
  'change: not visited then': ['round'],
  'change: not visited now': ['round'],
  'change: carried then': ['round', 'from'],
  'change: carried now': ['round', 'from'],
  'change: zone new since': ['zone'],
  'change: zone ended since': ['zone'],
  'change: kind not known': ['kind'],
  'change: no coverage given': [],
  'change: not spoken of': ['round'],
  'change: earlier said to be wrong': [],
  'change: some findings left out': ['count'],
  'change: no zone looked at both times': [],
  'change: zones compared': ['both', 'all', 'areaShare'],
  // How the zone was redrawn between.
  'change: zone area changed': ['zone', 'earlier', 'later'],
  'change: zone substrate changed': ['zone', 'earlier', 'later'],
  'change: zone redrawn': ['zone', 'earlier', 'later'],
  'change: zone split or joined': ['zone', 'earlier', 'later'],
  // How sure.
  'change: new, small: may have been missed before': [],
  'change: new, small: photos of both rounds': [],
  'change: counted, error not known': [],
  'change: told by presence, error not known': [],
  'change: rests on a step': [],
  'change: judged in different ways': ['earlier', 'later'],
  'change: said to be the same': [],
  'change: alone, could be chance': ['comparisons', 'expected'],
  'change: two versions, not settled': ['things'],
  // What was done between.
  'change: done between': ['treatment', 'date'],
  'change: perhaps done between': ['treatment', 'date'],
  'change: series broken': ['treatment', 'date'],
  'change: series perhaps broken': ['treatment', 'date'],
} as const satisfies Record<string, readonly string[]>;

export type ChangeReason = keyof typeof changeReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends ChangeReason>(
  code: C,
  ...[params]: (typeof changeReasons)[C] extends readonly []
    ? []
    : [Record<(typeof changeReasons)[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });
