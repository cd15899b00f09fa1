import type { ChangeReason } from '../../engine/change';
import { spoken } from '../tongue';
import { eyeRests } from './reasonsOfEye';
import type { Sentences } from './sentence';

/** Why a verdict of this round against an earlier one is what it is. */
export const reasonsOfChange = spoken('reasonsOfChange', 'reasonsOfChange', {
  'change: other sculpture': () => 'The two rounds are of two sculptures.',
  'change: same round': () => 'Both are the same round.',
  'change: other type of round': (s) =>
    `The earlier one was made as “${s.text('earlier')}”, this one as “${s.text('later')}”.`,
  'change: other washing': (s) => `The earlier one was made ${s.text('earlier')}, this one ${s.text('later')}.`,
  'change: other wetness': (s) => `The surface was ${s.text('earlier')} then and is ${s.text('later')} now.`,
  'change: rounds not alike': () => 'The two rounds are not alike, so nothing is pressed on the strength of it.',
  'change: other surveyor': (s) =>
    `Two persons looked: ${s.thing('earlier')} then, ${s.thing('later')} now. Their eyes may differ, so more is needed before a change is called.`,
  'change: surveyor not said': () => 'Who looked is not said for both rounds, so they count as two persons.',
  'change: own eye': (s) =>
    `What ${s.thing('surveyor')} judged is held to that person’s own error, not to the usual one: known from ${eyeRests(s)}.`,
  'change: no earlier round': () => 'There is no earlier round.',
  'change: earlier rounds are of another kind or state': (s) =>
    `${s.times('rounds', 'earlier round is', 'earlier rounds are')} of another kind or state.`,
  'change: not looked then': (s) => `Not looked at then: ${s.notLooked('why')}.`,
  'change: not looked now': (s) => `Not looked at now: ${s.notLooked('why')}.`,
  'change: not visited then': () => 'Nobody went to this zone then.',
  'change: not visited now': () => 'Nobody has been to this zone now.',
  'change: carried then': (s) => `Then it was carried over from ${s.thing('from')}, not judged again.`,
  'change: carried now': (s) => `Now it is carried over from ${s.thing('from')}, not judged again.`,
  'change: zone new since': (s) => `${s.thing('zone')} is new since then.`,
  'change: zone ended since': (s) => `${s.thing('zone')} has ended since then.`,
  'change: kind not known': (s) => `${s.kind('kind')} is a kind this version does not know.`,
  'change: no coverage given': () => 'No coverage was given for one of the two.',
  'change: not spoken of': (s) => `Nothing was said of it in ${s.thing('round')}.`,
  'change: earlier said to be wrong': () => 'The earlier value was said to be wrong when this one was made.',
  'change: some findings left out': (s) =>
    `${s.times('count', 'finding is', 'findings are')} left out of the zone’s comparison: not judged both times.`,
  'change: no zone looked at both times': () => 'No zone was looked at both times.',
  'change: zones compared': (s) =>
    `Compared over ${s.number('both')} of ${s.number('all')} zones, ${s.percent('areaShare')} of the area.`,
  'change: zone area changed': (s) =>
    `The area of ${s.thing('zone')} was ${s.area('earlier')} then and is ${s.area('later')} now.`,
  'change: zone substrate changed': (s) =>
    `The substrate of ${s.thing('zone')} was ${s.substrate('earlier')} then and is ${s.substrate('later')} now.`,
  'change: zone redrawn': (s) =>
    `${s.thing('zone')} was drawn anew between (version ${s.text('earlier')} then, ${s.text('later')} now).`,
  'change: zone split or joined': (s) =>
    `${s.thing('zone')} was split or joined between; both sides are told over the whole of it.`,
  'change: new, small: may have been missed before': () => 'New, small: may have been missed before.',
  'change: new, small: photos of both rounds': () =>
    'New, small, and there are photos of both rounds: look at them side by side.',
  'change: counted, error not known': () => 'It is counted, and how far a count may be off is not known.',
  'change: told by presence, error not known': () =>
    'It is told by being there or not, and how far that may be off is not known.',
  'change: rests on a step': () => 'It rests on one step of severity, activity or count, whose error is not known.',
  'change: judged in different ways': (s) => `It was judged ${s.method('earlier')} then and ${s.method('later')} now.`,
  'change: said to be the same': () => 'The person who looked, shown the earlier value, said it is the same.',
  'change: alone, could be chance': (s) =>
    `Alone, could be chance: of ${s.number('comparisons')} comparisons about ${s.number('expected', 1)} would look changed though nothing did.`,
  'change: two versions, not settled': (s) =>
    `It rests on ${s.times('things', 'thing', 'things')} with two versions that nobody has settled yet.`,
  'change: done between': (s) => `Done between: ${s.treatment('treatment')}, ${s.day('date')}.`,
  'change: perhaps done between': (s) => `Perhaps done between: ${s.treatment('treatment')}, ${s.day('date')}.`,
  'change: series broken': (s) =>
    `Done between: ${s.treatment('treatment')}, ${s.day('date')}. The surface is another one since, so before and after do not tell how care goes on.`,
  'change: series perhaps broken': (s) =>
    `Perhaps done between: ${s.treatment('treatment')}, ${s.day('date')}. If so, the surface is another one since.`,
} satisfies Sentences<ChangeReason>);
