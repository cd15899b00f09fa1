import { moneyOf } from '../../engine/money';
import type { WatchReason } from '../../engine/watch';
import { money } from '../format';
import { spoken } from '../tongue';
import type { Params, Sentences } from './sentence';

/** "between 1.4 and 2.5 months", "at least 6.7 months". */
const months = (s: Params): string =>
  s.text('last') === ''
    ? `at least ${s.number('first', 1)} months so far`
    : `between ${s.number('first', 1)} and ${s.number('last', 1)} months`;

const heldFrom = (s: Params): string => `The coating of ${s.day('date')} held ${months(s)}`;

/** Own words at the head of a sentence: their own full stop is left off. */
const said = (s: Params, key: string): string =>
  s
    .text(key)
    .trim()
    .replace(/[.\s]+$/, '');

/** What a tripwire of a form asks for, by the name of its field. */
const asked: Readonly<Record<string, string>> = { zone: 'a zone', level: 'a level', by: 'a day' };

/** Where tripwires stand, why something is due, what came of a treatment, and why a form was not kept. */
export const reasonsOfWatch = spoken('reasonsOfWatch', 'reasonsOfWatch', {
  'tripwire: hold over': (s) => `${heldFrom(s)}: surely over ${s.number('level', 1)}.`,
  'tripwire: hold under': (s) => `${heldFrom(s)}: surely not over ${s.number('level', 1)}.`,
  'tripwire: hold between': (s) => `${heldFrom(s)}: over or under ${s.number('level', 1)} cannot be told.`,
  'tripwire: seasons seen': (s) => `${s.number('seen')} of ${s.number('times')} seasons in a row so far.`,
  'tripwire: no holds known': (s) =>
    `No hold of ${s.thing('zone')} is known since the decision. A coating and looks after it would tell.`,
  'tripwire: green share': (s) =>
    `Green that is not at rest on ${s.thing('zone')}: ${s.percent('share')} (${s.percent('low')} to ${s.percent('high')}) on ${s.day('date')}, against ${s.percent('level')}.`,
  'tripwire: area': (s) =>
    `${s.text('what') === 'bare' ? 'Bare metal' : 'Green'} that is not at rest: ${s.area('m2')} (${s.area('low')} to ${s.area('high')}) on ${s.day('date')}, against ${s.area('level')}.`,
  'tripwire: index': (s) =>
    `Condition index ${s.number('index')} (${s.number('low')} to ${s.number('high')}) on ${s.day('date')}, against ${s.number('level')}.`,
  'tripwire: zone not judged': (s) => `The round of ${s.day('date')} did not judge it.`,
  'tripwire: not all seen': (s) => `Only ${s.percent('percent')} of the surface was seen; the rest could still tip it.`,
  'tripwire: nobody looked': () => 'There is no round since the decision.',
  'tripwire: round before decision': (s) =>
    `The last round, of ${s.day('date')}, was known when it was decided. The next one will tell.`,
  'tripwire: surely worse': (s) =>
    `The round of ${s.day('date')} finds more green on ${s.thing('zone')} than the one before, clearly.`,
  'tripwire: not surely worse': (s) =>
    `The round of ${s.day('date')} finds no zone clearly worse than the one before it.`,
  'tripwire: nothing to compare': (s) =>
    `There is no earlier round that the one of ${s.day('date')} may be compared with.`,
  'tripwire: stop word': (s) => `${s.kind('kind')} on ${s.thing('zone')}, ${s.day('date')}: ask the conservator.`,
  'tripwire: no stop word': () => 'No round since the decision saw anything to ask the conservator about at once.',
  'tripwire: fund': (s) =>
    `${money(moneyOf(Number(s.text('sum')), s.text('currency')))} in hand, against ${money(moneyOf(Number(s.text('level')), s.text('currency')))}. Pledged and hoped are not counted.`,
  'tripwire: no fund': () => 'No open fund belongs to this work.',
  'tripwire: fund of several currencies': () =>
    'The gifts in hand are of several currencies, and those are never added. Give them in the currency of the fund.',
  'tripwire: quote ended': (s) => `The quote of ${s.text('who')} ended on ${s.day('date')}, and none took its place.`,
  'tripwire: quotes stand': (s) => `${s.times('count', 'quote stands', 'quotes stand')}.`,
  'tripwire: no quote': () => 'No quote is written down.',
  'tripwire: day': (s) => `The day said: ${s.day('date')}.`,
  'tripwire: sort not known': (s) =>
    `“${s.text('sort')}” is not known to this version, and is not watched here. A newer version does.`,

  'due: danger': (s) => `${said(s, 'what')}. Open since ${s.day('date')}, until a named person closes it.`,
  'due: incident open': (s) => `${said(s, 'what')}. Written down on ${s.day('date')} and still open.`,
  'due: incident with danger': (s) => `${said(s, 'what')}. People may be in danger. Written down on ${s.day('date')}.`,
  'due: tripwire': (s) => `“${s.text('title')}”: a reason to decide anew, seen ${s.day('date')}.`,
  'due: look': (s) =>
    `A look from the ground at ${s.times('count', 'zone', 'zones')} tells most about ${s.day('date')}.`,
  'due: wax': (s) => `${s.times('count', 'zone', 'zones')} to wax again, the first by ${s.day('date')}.`,
  'due: round': (s) => `The last yearly round was on ${s.day('date')}.`,
  'due: round, none yet': () => 'There is no yearly round yet.',
  'due: round, as planned': (s) => `The day stands in the plan of ${s.text('year')}.`,
  'due: watch': (s) =>
    `A look ${s.times('months', 'month', 'months')} after the treatment that ended on ${s.day('date')}: does the colour hold, and where does green come first?`,
  'due: warranty': (s) =>
    `The warranty${s.text('who') === '' ? '' : ` of ${s.text('who')}`} ends on ${s.day('date')}. See the whole work ${s.number('days')} days before, while somebody can still be called back.`,
  'due: quote ends': (s) => `${ofWhom(s)} stands until ${s.day('date')}.`,
  'due: quote ended': (s) => `${ofWhom(s)} ended on ${s.day('date')}. Ask for it anew.`,
  'due: review': (s) => `“${s.text('title')}”, decided on ${s.day('date')}, was to be looked at again.`,
  'due: agreement': (s) => `Agreed with ${s.text('who')} on ${s.day('date')}; go through it together.`,
  'due: product': (s) => `${s.text('name')} is good until ${s.day('date')}.`,
  'due: loan back': (s) => `The loan with ${s.text('to')} ends on ${s.day('date')}. Make a round when it is back.`,
  'due: task': (s) => `Task: ${said(s, 'what')}.`,
  'due: lift': (s) => `The lift is planned for ${s.day('date')}.`,
  'due: gift': (s) => `${s.text('who')}: ${s.text('state')}, expected on ${s.day('date')}.`,
  'due: hot day open': (s) => `The day of hot work of ${s.day('date')} was not closed.`,
  'due: put off': (s) => `Put off to ${s.day('date')}.`,

  'held: still clear': (s) => `Still clear when last looked at, on ${s.day('last')}.`,
  'held: back between': (s) => `Green came back between ${s.day('first')} and ${s.day('last')}.`,
  'held: nobody looked since': (s) => `Nobody has looked since the coating of ${s.day('date')}.`,
  'held: before': (s) => `Before: ${months(s)}, from ${s.day('date')}.`,
  'held: nothing before': () => 'No hold is known from before, so there is nothing to set beside it.',
  'held: no coating since': (s) => `No coating is written down since the treatment of ${s.day('date')}.`,
  'held: no clean start': (s) =>
    `Nothing can be told from the coating of ${s.day('date')}: it did not start clear, or nobody looked.`,

  'watch: title missing': () => 'Say in a few words what it is about.',
  'watch: review before decision': (s) =>
    `It is decided on ${s.day('date')} and looked at again on ${s.day('review')}, before that. Put the days in order.`,
  'watch: signed before decision': (s) =>
    `Somebody signed on ${s.day('signed')}, before it was decided on ${s.day('date')}. Put the days in order.`,
  'watch: tripwire incomplete': (s) =>
    `A tripwire lacks ${asked[s.text('field')] ?? s.text('field')}: without it nothing could ever be told.`,
  'watch: tripwire level': (s) =>
    `The level of a tripwire must lie between ${s.number('least')} and ${s.number('most')}.`,
  'watch: two tripwires of one name': () => 'Two tripwires bear the same name. Remove one and add it again.',
  'watch: replaced by itself': () => 'A decision cannot take its own place.',
  'watch: answer without name': () => 'Say who answers: a role, or a name.',
  'watch: put off without a day': () => 'Say until when it is put off.',
  'watch: put off to the past': (s) => `${s.day('date')} is not to come. Choose a later day.`,
  'watch: task ends before it begins': (s) =>
    `The task begins on ${s.day('first')} and ends on ${s.day('last')}, before that. Put the days in order.`,
} satisfies Sentences<WatchReason>);

/** A bid says in its lines what for; a quote in its words. */
function ofWhom(s: Params): string {
  const what = s.text('what');
  return what === '' ? `The bid of ${s.text('who')}` : `The price of ${s.text('who')} for ${what}`;
}
