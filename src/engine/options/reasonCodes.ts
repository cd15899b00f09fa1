import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const optionReasons = {
  // Of the sums of one option.
  'option: years and rate': ['years', 'rate'],
  'option: rules not set': [],
  'option: prices made up': ['share'],
  'option: good months not known': [],
  'option: no good month': [],
  'option: no costs': [],
  // Of one option beside the others.
  'option: cheapest a year': ['option'],
  'option: dearest a year': ['option'],
  'option: cheapest per good month': ['option'],
  'option: dearest per good month': ['option'],
  'option: overtakes': ['option', 'other', 'year'],
  'option: dearer throughout': ['option', 'other', 'years'],
  'option: never dearer': ['option', 'other'],
  'option: order turns at rate': ['option', 'other', 'rate'],
  'option: order turns if': ['what', 'option', 'other'],
  'option: steps that cannot be taken back': ['count', 'size'],
  'option: good months only said': [],
  'option: months from elsewhere': [],
  'option: ranges overlap': ['option', 'other'],
  // What the record says for a way or against it.
  'option: hold short': ['zone', 'months'],
  'option: hold long': ['months'],
  'option: waxing does not hold': ['zones'],
  'option: holds getting shorter': ['zones'],
  'option: green grows surely': ['m2', 'rounds'],
  'option: stop word': ['kinds'],
  'option: cause open': ['count'],
  'option: cause within reach': ['zones', 'exposure'],
  'option: cause just removed': ['date', 'months'],
  'option: nothing presses': ['share'],
  'option: green wide': ['share'],
  'option: green in few places': ['zones', 'green', 'area'],
  'option: too little known of holds': ['unknown', 'zones'],
  'option: no round yet': [],
  'option: stripped before': ['times'],
  'option: inserts near': ['count'],
  // Good months a year.
  'months: worst zone': ['zone', 'months'],
  'months: no clean start': ['zone'],
  'months: zones not known': ['count'],
  'months: coated once a year': [],
  'months: own holds of treated': ['zones', 'works'],
  'months: still holding': ['count'],
  'months: published': ['low', 'high'],
  'months: nothing to go by': [],
  // The price of waiting.
  'waiting: prices rise': ['growth'],
  'waiting: care meanwhile': ['option'],
  'waiting: no care named': [],
  'waiting: green grows': ['m2', 'unit', 'currency'],
  'waiting: whole surface priced': [],
  'waiting: growth not known': [],
  'waiting: upkeep spared': ['amount', 'currency'],
  // Quotes.
  'quote: renewed': [],
  'quote: expired': ['date', 'days'],
  'quote: ends soon': ['date', 'days'],
  'quote: valid': ['date', 'days'],
  'quote: no end said': [],
  'quote: paid': [],
  // What is refused.
  'option: last before first': ['line'],
  'option: beyond the years': ['line', 'years'],
  'option: months out of order': [],
  'quote: ends before it begins': [],
  'quote: dated after today': [],
  'quote: renews itself': [],
  'money: currency in use': ['currency', 'count'],
  'money: not the currency here': ['currency', 'here'],
} as const satisfies Record<string, readonly string[]>;

export type OptionReason = keyof typeof optionReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends OptionReason>(
  code: C,
  ...[params]: (typeof optionReasons)[C] extends readonly []
    ? []
    : [Record<(typeof optionReasons)[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });
