import type { TrendReason } from '../../engine/trend';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

/** What a series is made of, how sure its trend is, and how far it may be carried on. */
export const reasonsOfTrend = spoken('reasonsOfTrend', 'reasonsOfTrend', {
  'trend: rounds of another kind left out': (s) =>
    `${s.times('rounds', 'round', 'rounds')} of another kind or state ${s.text('rounds') === '1' ? 'is' : 'are'} left out of the series.`,
  'trend: rounds with too little seen left out': (s) =>
    `${s.times('rounds', 'round', 'rounds')} in which less than half of the surface was seen ${s.text('rounds') === '1' ? 'is' : 'are'} left out of the series.`,
  'trend: zones left out': (s) =>
    `Over the zones seen in every round: ${s.times('zones', 'zone', 'zones')} with ${s.percent('area')} of the area ${s.text('zones') === '1' ? 'is' : 'are'} left out, or a zone missed once would look like a change.`,
  'trend: series broken': (s) =>
    `The series breaks at “${s.treatment('treatment')}”, ${s.day('date')}, which touched ${s.percent('share')} of the area: before and after are not one series.`,
  'trend: perhaps broken between': (s) =>
    `“${s.treatment('treatment')}”, ${s.day('date')}, breaks the series; its date is vague, so rounds it may lie before or after are in no trend.`,
  'trend: broken since': (s) =>
    `“${s.treatment('treatment')}”, ${s.day('date')}, came after the last round: the surface is another one since, so nothing is carried on from before.`,
  'trend: other surveyor': (s) =>
    `The surveyor changed ${s.times('count', 'time', 'times')}; part of a step there may be the eye’s.`,
  'trend: too few rounds': (s) =>
    `${s.times('n', 'round', 'rounds')} since the last break ${s.text('n') === '1' ? 'is' : 'are'} too few to tell a way it goes; ${s.number('least', 0)} are needed.`,
  'trend: all pairs': (s) =>
    `Over ${s.number('n', 0)} rounds such a run comes by chance with p = ${s.number('p', 3)} (signs of all pairs, all orders counted).`,
  'trend: slope interval': (s) =>
    `The slope is the median over all pairs of rounds; its range holds it ${s.percent('coverage')} of the time with ${s.number('n', 0)} rounds.`,
  'trend: not shown': (s) => `Over ${s.number('n', 0)} rounds it goes neither way for sure (p = ${s.number('p', 2)}).`,
  'trend: if care goes on': () => 'If care goes on as now.',
  'trend: no trend to carry on': () => 'There is no trend to carry on, so there is no forecast.',
  'trend: too far to tell': (s) => `${s.number('years', 1)} years on is too far to tell.`,
} satisfies Sentences<TrendReason>);
