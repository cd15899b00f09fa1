import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const heatReasons = {
  // Bounds, for a talk with those who do the work.
  'heat: share of the flame': ['low', 'high'],
  'heat: more through air': [],
  'heat: a sixth arrives': [],
  'heat: carries on along metal': [],
  'heat: practice limit leads': ['limit'],
  'heat: strength says more': ['low', 'high', 'weathered'],
  'heat: glass not known': ['kind'],
  'heat: figure not possible': ['what'],
  // Readings beside their limits.
  'heat: no reading': [],
  'heat: over the limit': ['time', 'celsius', 'limit'],
  'heat: near the limit': ['time', 'celsius', 'limit'],
  'heat: sides apart': ['time', 'kelvin', 'limit'],
  'heat: sides near apart': ['time', 'kelvin', 'limit'],
  'heat: rises fast': ['time', 'perMinute', 'limit'],
  'heat: gap in the log': ['spot', 'since', 'until', 'minutes', 'could'],
  'heat: one side only': [],
  'heat: two values at once': ['time', 'spot'],
  'heat: no limit set': [],
  'heat: limit by nobody': [],
  // The watch.
  'heat: clock went back': ['minutes'],
  'heat: not counted': ['minutes'],
  // Against lighting anything.
  'heat: no permit': [],
  'heat: nobody authorised': [],
  'heat: no watcher': [],
  'heat: clear zone short': ['metres', 'rule'],
  'heat: watch short': ['minutes', 'rule'],
  'heat: checks open': ['count'],
  'heat: insert not on the list': ['insert'],
  'heat: insert without limit': ['insert'],
  'heat: insert without a way': ['insert'],
  // Against closing the day.
  'heat: work not ended': [],
  'heat: watch has no length': [],
  'heat: watch running': ['minutes'],
  'heat: watch not said kept': ['minutes'],
  'heat: watch too short': ['kept', 'asked'],
  'heat: no photo after': ['insert'],
  // What a form may not hold.
  'heat: day is closed': [],
  'heat: days not in order': [],
  'heat: not of this day': [],
  'heat: a watch of no time': [],
  'heat: own watch turned round': ['since', 'until'],
  'heat: own watch before the end': ['since', 'ended'],
  'heat: no solution': [],
  'heat: signed by nobody': [],
  'heat: limit under the air': [],
} as const satisfies Record<string, readonly string[]>;

export type HeatReason = keyof typeof heatReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends HeatReason>(
  code: C,
  ...[params]: (typeof heatReasons)[C] extends readonly []
    ? []
    : [Record<(typeof heatReasons)[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });
