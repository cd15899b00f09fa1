import type { CampaignReason } from '../../engine/campaign';
import { causeOf } from '../../engine/trade';
import { spoken } from '../tongue';
import type { Params, Sentences } from './sentence';

const cause = (s: Params): string => causeOf(s.text('cause'))?.name ?? s.text('cause');
const onZones = (s: Params): string => (s.text('zones') === '' ? 'the whole work' : `zone ${s.text('zones')}`);
const paper = (s: Params): string =>
  ({ request: 'the request', proposal: 'the proposal', report: 'the report' })[s.text('of')] ?? s.text('of');
const approval = (s: Params): string =>
  ({
    'sample area': 'the sample area',
    colour: 'the colour',
    method: 'the method',
    'insert protection': 'the protection of the inserts',
    handover: 'the handover',
  })[s.text('of')] ?? s.text('of');
const days: Readonly<Record<string, string>> = {
  opened: 'the day it was opened',
  began: 'the first day of work',
  ended: 'the last day of work',
  accepted: 'the day of acceptance',
  warrantyUntil: 'the end of the warranty',
  found: 'the day the cause was found',
  changed: 'the day it changed',
  date: 'its own day',
  validUntil: 'the last day it is valid',
  withdrawn: 'the day it was withdrawn',
  letterSent: 'the day of the letter',
};
const dayNamed = (s: Params, key: string): string => days[s.text(key)] ?? s.text(key);

/** What stands in the way of a campaign, what is there, what a bid or paper lacks, and why an entry is not taken. */
export const reasonsOfCampaign = spoken('reasonsOfCampaign', 'reasonsOfCampaign', {
  'campaign: cause open': (s) =>
    `${cause(s)}: still at work on ${onZones(s)}. What is treated before it is gone may soon look the same again.`,
  'campaign: cause being removed': (s) => `${cause(s)}: being removed from ${onZones(s)}.`,
  'campaign: cause removed lately': (s) =>
    `${cause(s)}: removed on ${s.day('date')}. Look again after ${s.day('until')}: a year without it may be enough.`,
  'campaign: cause cannot be removed': (s) =>
    `${cause(s)}: cannot be removed. How long a treatment holds has to allow for it.`,
  'campaign: nobody looked for causes': () => 'Nobody has written down what feeds the damage. Look for causes first.',
  'campaign: causes settled': (s) => `${s.times('count', 'cause is', 'causes are')} settled.`,
  'campaign: no schedule': () => 'There is no schedule of quantities yet.',
  'campaign: zones without a line': (s) => `No line treats zone ${s.text('zones')}: check that this is meant.`,
  'campaign: zone ended': (s) => `Zone ${s.text('letter')} is no more, yet a line treats it.`,
  'campaign: area changed since': (s) =>
    `Zone ${s.text('letter')} was ${s.area('before')} when the line was made and is ${s.area('now')} now.`,
  'campaign: insert without protection': (s) => `No line protects ${s.thing('insert')}.`,
  'campaign: schedule of so many lines': (s) => `${s.times('count', 'line', 'lines')} in the schedule of quantities.`,
  'campaign: rate on the schedule': (s) =>
    `Over the area of the schedule, ${s.number('low', 2)} to ${s.number('high', 2)}.`,
  'campaign: rate on own area': (s) => `Over ${s.number('measured', 2)} as the bidder measured it.`,
  'campaign: area measured otherwise': (s) =>
    `${s.number('measured', 2)} measured lies outside ${s.number('low', 2)} to ${s.number('high', 2)}: measure again together.`,
  'campaign: price out of line': (s) =>
    `${s.number('times', 1)} times the median of this line, more than ${s.number('factor', 1)}: ask what is in it.`,
  'campaign: price far below': (s) =>
    `the median of this line is ${s.number('times', 1)} times as much: ask whether the same work is meant.`,
  'campaign: priced at nothing': () => 'Priced at nothing: ask whether it is in another line.',
  'campaign: too few prices to compare': (s) =>
    `With fewer than ${s.number('least')} bids in one currency no price can be called odd: each is as odd as the other.`,
  'campaign: lines not priced': (s) =>
    `${s.times('count', 'line is', 'lines are')} not priced: its total is not the price of the whole job.`,
  'campaign: lines no longer in the schedule': (s) =>
    `${s.times('count', 'price is', 'prices are')} for lines no longer in the schedule, and in no total.`,
  'campaign: insert protection not priced': (s) =>
    `${s.times('count', 'line', 'lines')} for the protection of inserts without a price.`,
  'campaign: bid past its day': (s) => `It was valid until ${s.day('date')}: ask for it to be renewed.`,
  'campaign: bid valid until': (s) => `Valid until ${s.day('date')}, ${s.times('days', 'day', 'days')} from now.`,
  'campaign: bid without a last day': () => 'It does not say how long it is valid.',
  'campaign: site not visited': () => 'No visit of the site is written down.',
  'campaign: sheets that count': (s) =>
    `Sheets that count: ${s.number('count')} of ${s.number('all')}. A sheet counts once it is handed in with a mark for each bid.`,
  'campaign: no price points': () =>
    'A bid of nothing leaves nothing to divide: the price gives no points, and there is no total.',
  'campaign: price points on shared lines': (s) =>
    `Points of the price rest on ${s.number('lines')} of ${s.times('all', 'line', 'lines')}: those that all of them priced.`,
  'campaign: one scorer tells none apart': (s) =>
    `Not told apart from ${s.thing('bid')}: with one scorer nobody knows how far two would differ.`,
  'campaign: scorers differ on the order': (s) =>
    `Not told apart from ${s.thing('bid')}: the scorers do not all put the same one ahead.`,
  'campaign: totals too close': (s) =>
    `Not told apart from ${s.thing('bid')}: ${s.number('gap', 1)} points between them, no more than the ${s.number('apart', 1)} of one mark on the weightiest criterion.`,
  'campaign: bids so many': (s) => `${s.times('count', 'bid is', 'bids are')} in.`,
  'campaign: no bids': () => 'There are no bids yet.',
  'campaign: none taken': () => 'None of the bids is marked as taken.',
  'campaign: bid taken': (s) => `Taken: ${s.thing('bid')}.`,
  'campaign: paper not looked through': (s) => `Nobody has looked through ${paper(s)} yet.`,
  'campaign: paper lacks': (s) =>
    `In ${paper(s)} ${s.times('count', 'thing is', 'things are')} missing or not looked for.`,
  'campaign: paper whole': (s) => `Everything asked for is in ${paper(s)}.`,
  'campaign: last payment waits': () => 'Until then the last payment waits.',
  'campaign: no proposal': () => 'No proposal of a conservator was looked through yet.',
  'campaign: no option chosen': () => 'No option is chosen and no decision is written.',
  'campaign: option or decision written': () => 'What was chosen is written down.',
  'campaign: no fund': () => 'No fund belongs to it yet.',
  'campaign: fund there': () => 'A fund belongs to it.',
  'campaign: no access sheet': () => 'There is no access sheet for the work.',
  'campaign: access sheet there': () => 'The access sheet is there.',
  'campaign: insert without a way': (s) => `It is not said how ${s.thing('insert')} is kept from heat.`,
  'campaign: insert limit without a name': (s) => `Nobody is named who set the limit of ${s.thing('insert')}.`,
  'campaign: inserts provided for': (s) => `${s.times('count', 'insert is', 'inserts are')} provided for.`,
  'campaign: no round before': () =>
    'No finished round “before treatment”. After the first day of work it is too late.',
  'campaign: round before': (s) => `Round before treatment: ${s.day('date')}.`,
  'campaign: not approved': (s) => `Nobody has approved ${approval(s)} yet.`,
  'campaign: approved': (s) => `Approved on ${s.day('date')}: ${approval(s)}.`,
  'campaign: refused': (s) => `The last word on ${approval(s)}, of ${s.day('date')}, is not a plain yes.`,
  'campaign: no colour card': () => 'There is no agreed-colour card.',
  'campaign: colour card lacks photos': (s) =>
    `The agreed-colour card lacks ${s.times('count', 'photo', 'photos')} of four.`,
  'campaign: colour card': (s) => `Agreed-colour card of ${s.day('date')}.`,
  'campaign: no layers written': () => 'No layer is written down.',
  'campaign: layers written': (s) => `${s.times('count', 'layer is', 'layers are')} written down.`,
  'campaign: no wax written': () => 'No wax since the work began is in the logbook.',
  'campaign: wax written': (s) => `Wax in the logbook: ${s.day('date')}.`,
  'campaign: no round after': () =>
    'No finished round “after treatment”: without it there is nothing to hold later years against.',
  'campaign: round after': (s) => `Round after treatment: ${s.day('date')}.`,
  'campaign: no warranty written': () => 'It is not written until when the contractor answers for it.',
  'campaign: warranty until': (s) => `The contractor answers for it until ${s.day('date')}.`,
  'campaign: warranty over': (s) => `The warranty ended on ${s.day('date')}.`,
  'campaign: days out of order': (s) =>
    `${dayNamed(s, 'later')}, ${s.day('last')}, lies before ${dayNamed(s, 'earlier')}, ${s.day('first')}. Put one of them right.`,
  'campaign: say when it changed': () => 'Say on which day the cause was removed.',
  'campaign: say why': () => 'Say why: whoever comes next will ask.',
  'campaign: line without an amount': (s) =>
    `“${s.text('line')}” has no amount. Give one above nought, or take the line out.`,
  'campaign: line range out of order': (s) =>
    `The range of “${s.text('line')}” does not hold its amount. Put it right.`,
  'campaign: line twice': (s) => `“${s.text('line')}” is there twice. Take one of the two out.`,
  'campaign: weights come to': (s) =>
    `The weights come to ${s.number('sum', 1)}. Change them until they come to ${s.number('whole')}.`,
  'campaign: criterion twice': () => 'One criterion is there twice. Take one of the two out.',
  'campaign: criterion without a name': () => 'A criterion has a weight and no name. Give it one, or take it out.',
  'campaign: weights changed after a bid': () =>
    'A bid is in already. Say why the weights change: it is kept with them.',
  'campaign: mark twice': () => 'A mark is there twice for one bid. Take one of the two out.',
  'campaign: sheet was handed in': (s) =>
    `This sheet was handed in on ${s.day('date')}: its marks stay as they are. Marks for bids that came later can be added.`,
  'campaign: sheet not whole': (s) =>
    `${s.times('count', 'mark is', 'marks are')} missing. Give each bid a mark on each criterion, then hand in.`,
  'campaign: decided by nobody': () => 'Say who decided, at least in what role.',
  'campaign: yes without a signature': () =>
    'A yes is somebody’s: say at least in what role it was given, and on which day.',
  'campaign: signed before': (s) =>
    `A signature lies before ${s.day('date')}, the day it was asked. Put one of the days right.`,
  'campaign: card without words': () => 'Say in words what colour was agreed: photos fade from memory first.',
  'campaign: card without a zone': () => 'Choose at least one zone the colour is for.',
} as const satisfies Sentences<CampaignReason>);
