import type { OptionReason } from '../../engine/options';
import { exposures } from '../../engine/trade';
import { currency } from '../format';
import { spoken } from '../tongue';
import type { Params, Sentences } from './sentence';

const amount = (s: Params, key: string): string => `${currency(s.text('currency'))} ${s.number(key)}`;
const exposure = (id: string): string => exposures.find((row) => row.id === id)?.name ?? id;
const size = (s: Params): string => {
  const word = s.text('size') === 'large' ? 'large ' : s.text('size') === 'small' ? 'small ' : '';
  return s.text('count') === '1' ? `one ${word}step` : `${s.number('count')} ${word}steps`;
};
const fewMonths = (s: Params): string =>
  Number(s.text('months')) < 1 ? 'under a month' : `${s.number('months', 1)} months`;
const whatIf: Readonly<Record<string, string>> = {
  colour: 'the colour holds a shorter time',
  interval: 'the interval is another',
  growth: 'prices rise otherwise',
  rate: 'the rate is another',
  price: 'its prices are off',
};
/** Of a share with a tenth of a per cent: rates are set so finely. */
const rate = (s: Params, key: string): string => {
  const value = Math.round(Number(s.text(key)) * 1000) / 10;
  return `${value < 0 ? '−' : ''}${Math.abs(value)} %`;
};

/** What ways to go on cost, what the record says for and against them, and why money is refused. */
export const reasonsOfOptions = spoken('reasonsOfOptions', 'reasonsOfOptions', {
  'option: years and rate': (s) =>
    `Over ${s.number('years')} years at ${rate(s, 'rate')} a year over the rise of prices.`,
  'option: rules not set': () => 'Nobody here has set the rate, the rise and the years: they are our own assumption.',
  'option: prices made up': (s) => `${s.percent('share')} of it rests on made-up prices that nobody gave.`,
  'option: good months not known': () =>
    'How many good months a year it gives is not known, so there is no cost per good month.',
  'option: no good month': () => 'It gives no good month at all, so there is no cost per good month.',
  'option: no costs': () => 'No costs yet.',

  'option: cheapest a year': (s) => `Cheapest in money: ${s.thing('option')}.`,
  'option: dearest a year': (s) => `Dearest in money: ${s.thing('option')}.`,
  'option: cheapest per good month': (s) => `Cheapest per good month: ${s.thing('option')}.`,
  'option: dearest per good month': (s) => `Dearest per good month: ${s.thing('option')}.`,
  'option: overtakes': (s) =>
    `${s.thing('option')} costs more than ${s.thing('other')} until year ${s.number('year')}; only from then on has it cost no more, in today’s worth.`,
  'option: dearer throughout': (s) =>
    `${s.thing('option')} has cost more than ${s.thing('other')} through all ${s.number('years')} years.`,
  'option: never dearer': (s) => `${s.thing('option')} never costs more than ${s.thing('other')}.`,
  'option: order turns at rate': (s) => `At ${rate(s, 'rate')} ${s.thing('other')} is the better buy.`,
  'option: order turns if': (s) =>
    `If ${whatIf[s.text('what')] ?? s.text('what')}, ${s.thing('other')} may be the better buy.`,
  'option: steps that cannot be taken back': (s) => `It takes ${size(s)} that cannot be taken back.`,
  'option: good months only said': () => 'Its good months are what somebody said, not what was seen.',
  'option: months from elsewhere': () => 'Its good months come from published ranges of other works.',
  'option: ranges overlap': (s) => `Prices are so loose that ${s.thing('other')} may be the better buy per good month.`,
  'option: beyond the years': (s) =>
    `“${s.text('line')}” falls after the ${s.number('years')} years looked at, and is not counted.`,

  'option: hold short': (s) =>
    Number(s.text('months')) === 0
      ? `Green stood there right after the coating: ${s.thing('zone')}.`
      : `A coating is expected to last ${fewMonths(s)}: ${s.thing('zone')}.`,
  'option: hold long': (s) => `Even in the worst zone a coating is expected to last ${s.number('months', 1)} months.`,
  'option: waxing does not hold': (s) => `Waxing does not hold in ${s.times('zones', 'zone', 'zones')}.`,
  'option: holds getting shorter': (s) => `Holds are getting shorter in ${s.times('zones', 'zone', 'zones')}.`,
  'option: green grows surely': (s) =>
    `The green grows by about ${s.area('m2')} a year: a trend over ${s.number('rounds')} rounds.`,
  'option: stop word': (s) => `Seen: ${s.kinds('kinds')}. Ask the conservator before anything else.`,
  'option: cause open': (s) => `${s.times('count', 'cause is', 'causes are')} not removed yet.`,
  'option: cause within reach': (s) =>
    `In ${s.times('zones', 'zone', 'zones')}: ${exposure(s.text('exposure'))}. Nobody has said whether it is a cause.`,
  'option: cause just removed': (s) =>
    `A cause was removed on ${s.day('date')}; what that does shows within ${s.number('months')} months.`,
  'option: nothing presses': (s) => `${s.percent('share')} of the surface seen is green, and nothing else presses.`,
  'option: green wide': (s) => `${s.percent('share')} of the surface seen is green.`,
  'option: green in few places': (s) =>
    `${s.percent('green')} of the green lies in ${s.times('zones', 'zone', 'zones')}, ${s.percent('area')} of the surface.`,
  'option: too little known of holds': (s) =>
    `For ${s.number('unknown')} of ${s.times('zones', 'zone', 'zones')} nobody can tell how long a coating lasts.`,
  'option: no round yet': () => 'No round has been made yet.',
  'option: stripped before': (s) => `It was stripped before: ${s.times('times', 'time', 'times')} on record.`,
  'option: inserts near': (s) => `It carries ${s.times('count', 'insert', 'inserts')} that heat and media may harm.`,

  'months: worst zone': (s) =>
    `The zone that holds least says it for the work, about ${fewMonths(s)}: ${s.thing('zone')}.`,
  'months: no clean start': (s) =>
    `Green stood there right after the coating, so no month was clear: ${s.thing('zone')}.`,
  'months: zones not known': (s) =>
    `${s.times('count', 'zone is', 'zones are')} left out: nothing is known of their holds.`,
  'months: coated once a year': () => 'Taken as waxed once a year, and every zone as in public view.',
  'months: own holds of treated': (s) =>
    `From ${s.times('zones', 'zone', 'zones')} of ${s.times('works', 'work', 'works')} here that were treated so: the holds since, worst zone.`,
  'months: still holding': (s) =>
    `In ${s.times('count', 'zone it was', 'zones it was')} still clear when last looked at, so it may be more.`,
  'months: published': (s) =>
    `Nothing of its own yet. Published for such coatings: ${s.number('low')} to ${s.number('high')} months.`,
  'months: nothing to go by': () => 'Neither this collection nor a published range tells. Ask who proposes it.',

  'waiting: prices rise': (s) => `Prices rise ${rate(s, 'growth')} a year.`,
  'waiting: care meanwhile': (s) => `Care meanwhile: ${s.thing('option')}.`,
  'waiting: no care named': () => 'No way to keep the surface going meanwhile is priced, so no care is counted.',
  'waiting: green grows': (s) => `The green grows about ${s.area('m2')} a year, at ${amount(s, 'unit')} a m².`,
  'waiting: whole surface priced': () => 'The price is for the whole surface, so more green adds nothing to it.',
  'waiting: growth not known': () => 'Too few rounds tell how the green grows, so nothing is counted for it.',
  'waiting: upkeep spared': (s) =>
    `The upkeep after treatment, ${amount(s, 'amount')} a year, falls away while waiting; it is not taken off here.`,

  'quote: renewed': () => 'Renewed by a later one.',
  'quote: expired': (s) => `Expired on ${s.day('date')}, ${s.times('days', 'day', 'days')} ago. Ask for a renewal.`,
  'quote: ends soon': (s) =>
    s.text('days') === '0' ? 'Ends today.' : `Ends on ${s.day('date')}, in ${s.times('days', 'day', 'days')}.`,
  'quote: valid': (s) => `Valid until ${s.day('date')}: ${s.times('days', 'day', 'days')} left.`,
  'quote: no end said': () => 'No end of validity said. Ask for one.',
  'quote: paid': () => 'Paid: what it came to.',

  'option: last before first': (s) => `“${s.text('line')}” ends before it begins. Correct its years.`,
  'option: months out of order': () => 'The good months are out of order: the least first, the most last.',
  'quote: ends before it begins': () => 'The quote ends before its own date. Correct one of the two.',
  'quote: dated after today': () => 'The quote is dated after today. Correct its date.',
  'quote: renews itself': () => 'A quote cannot renew itself.',
  'money: currency in use': (s) =>
    `${s.times('count', 'entry is', 'entries are')} in ${currency(s.text('currency'))}. Change or remove them before the currency.`,
  'money: not the currency here': (s) =>
    `This collection reckons in ${currency(s.text('here'))}, and ${currency(s.text('currency'))} is never added to it.`,
} satisfies Sentences<OptionReason>);
