import { enClasses } from '../../engine/trade';
import type { YearReason } from '../../engine/year';
import { date } from '../format';
import { spoken } from '../tongue';
import type { Params, Sentences } from './sentence';

const zones = (s: Params): string =>
  s.text('letters').includes(',') ? `zones ${s.text('letters')}` : `zone ${s.text('letters')}`;
const level = (family: keyof typeof enClasses, s: Params): string => {
  const row = enClasses[family][Number(s.text(family))];
  return row ? `${row.id}, ${row.name}` : s.text(family);
};
const paces: Readonly<Record<string, string>> = {
  oneTouch: 'A zone answered in one touch',
  withFinding: 'A zone with findings',
};

/** Why a year is proposed as it is, what its time rests on, and what stands against keeping it. */
export const reasonsOfYear = spoken('reasonsOfYear', 'reasonsOfYear', {
  'year: away': (s) =>
    s.text('due') === '' ? `It is away: ${s.text('to')}.` : `It is away until ${date(s.text('due'))}: ${s.text('to')}.`,
  'year: no round yet': () => 'Nobody has made a round of it yet.',
  'year: danger': (s) => `${s.times('count', 'thing', 'things')} could hurt someone.`,
  'year: urgency': (s) => `Urgency ${level('urgency', s)}.`,
  'year: condition': (s) => `Condition ${level('condition', s)}.`,
  'year: stop word': (s) => `A stop word was seen: ${s.kinds('kinds')}. Ask the conservator.`,
  'year: zones not seen': (s) => `Not seen in the last round: ${zones(s)}.`,
  'year: no round the year before': (s) => `The last round was on ${s.day('day')}; none the year before.`,
  'year: too few rounds': (s) =>
    `Only ${s.times('rounds', 'round', 'rounds')}; from ${s.number('least')} on a work may be called quiet.`,
  'year: a look will do': () => 'Seen last year, nothing presses: a look from the ground may do.',
  'year: usual least': () => 'A full round every year is the usual least; common practice, no source.',
  'year: never waxed': () => 'No wax is recorded. Whether to begin is for a conservator to say.',
  'year: waxed every so many years': (s) => `Waxed every ${s.number('years')} years so far, last on ${s.day('last')}.`,
  'year: waxed every year': (s) => `Waxed every year so far, last on ${s.day('last')}.`,
  'year: green is back': (s) => `The green is back in ${zones(s)}.`,
  'year: holds short': (s) =>
    `In ${zones(s)}, ${s.number('percent')} % of the area, a coating is expected to keep it away under ${s.number('months')} months.`,
  'year: spray': (s) => `Spray reaches ${zones(s)}, and how long wax holds there is not known yet.`,
  'year: wax does not hold': (s) => `Waxing does not hold in ${zones(s)}: ask the conservator. More wax is no answer.`,
  'year: no wax before the stop word': () => 'Not before the conservator has spoken on the stop word.',
  'year: lift for zones': (s) => `Reached by lift or scaffold only: ${zones(s)}.`,
  'year: own pace': (s) =>
    `${paces[s.text('what')] ?? s.text('what')}: your own pace, the median of ${s.number('count')}.`,
  'year: pace assumed': (s) => `${paces[s.text('what')] ?? s.text('what')}: assumed until enough of yours are timed.`,
  'year: labour own': (s) => `Waxing: your own pace, from ${s.number('count')} entries of the logbook with hours.`,
  'year: labour estimated': () =>
    'Waxing: 1 m2 an hour for one person, from one published estimate; two entries of the logbook with hours replace it.',
  'year: all slow or all quick': () => 'The range is what it comes to if all of it goes quick, or all of it slow.',
  'year: day too short for rounds': (s) =>
    `${s.day('day')}: the rounds alone take about ${s.number('hours')} hours of one person, more than a day of ${s.number('most')}. Take two days.`,
  'year: day too short with waxing': (s) =>
    `${s.day('day')}: washed and waxed the same day it comes to about ${s.number('hours')} hours of one person. Wax on other days, or with more hands.`,
  'year: shortest of all orders': (s) => `Of all orders of ${s.times('works', 'work', 'works')} none is shorter.`,
  'year: short walk': (s) => `A short walk past ${s.number('works')} works; a shorter one may exist.`,
  'year: no spot': (s) => `${s.times('works', 'work is', 'works are')} not on the site plan, and last.`,
  'year: campaign under way': (s) => `A campaign is under way: ${s.text('title')}.`,
  'year: asks whether major treatment is due': () => 'The record asks whether major treatment is due.',
  'year: recommendation': (s) => `Recommendation ${level('recommendation', s)}.`,
  'year: incident open': (s) => `The incident of ${s.day('day')} is still open.`,
  'year: nothing presses': () => 'Nothing in the record presses.',
  'year: day outside the year': (s) => `${s.day('day')} is not in ${s.text('year')}. Give a day of that year.`,
  'year: work twice': () => 'One work stands there twice. Take one of the two away.',
  'year: dates out of order': (s) => `${s.day('second')} comes before ${s.day('first')}. Put the days right.`,
  'year: text missing': () => 'Something is not said yet. Say it in a few words.',
  'year: name missing': () => 'Say who: a name, or a role.',
} satisfies Sentences<YearReason>);
