import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const yearReasons = {
  // Which survey.
  'year: away': ['to', 'due'],
  'year: no round yet': [],
  'year: danger': ['count'],
  'year: urgency': ['urgency'],
  'year: condition': ['condition'],
  'year: stop word': ['kinds'],
  'year: zones not seen': ['letters'],
  'year: no round the year before': ['day'],
  'year: too few rounds': ['rounds', 'least'],
  'year: a look will do': [],
  'year: usual least': [],
  // How many waxes.
  'year: never waxed': [],
  'year: waxed every so many years': ['years', 'last'],
  'year: waxed every year': ['last'],
  'year: green is back': ['letters'],
  'year: holds short': ['letters', 'months', 'percent'],
  'year: spray': ['letters'],
  'year: wax does not hold': ['letters'],
  'year: no wax before the stop word': [],
  // Lift.
  'year: lift for zones': ['letters'],
  // Time.
  'year: own pace': ['what', 'count'],
  'year: pace assumed': ['what'],
  'year: labour own': ['count'],
  'year: labour estimated': [],
  'year: all slow or all quick': [],
  'year: day too short for rounds': ['day', 'hours', 'most'],
  'year: day too short with waxing': ['day', 'hours', 'most'],
  // Order of visits.
  'year: shortest of all orders': ['works'],
  'year: short walk': ['works'],
  'year: no spot': ['works'],
  // Verdict.
  'year: campaign under way': ['title'],
  'year: asks whether major treatment is due': [],
  'year: recommendation': ['recommendation'],
  'year: incident open': ['day'],
  'year: nothing presses': [],
  // What stands against a plan.
  'year: day outside the year': ['day', 'year'],
  'year: work twice': [],
  'year: dates out of order': ['first', 'second'],
  'year: text missing': [],
  'year: name missing': [],
} as const satisfies Record<string, readonly string[]>;

export type YearReason = keyof typeof yearReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends YearReason>(
  code: C,
  ...[params]: (typeof yearReasons)[C] extends readonly []
    ? []
    : [Record<(typeof yearReasons)[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });
