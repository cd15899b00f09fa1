import type { LifeReason } from '../../engine/life';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

const limits: Readonly<Record<string, string>> = { shape: 'the shape', scale: 'the scale', median: 'the median' };

/** Why a curve of lives is what it is, or is none. */
export const reasonsOfLife = spoken('reasonsOfLife', 'reasonsOfLife', {
  'life: no interval': () => 'There is no interval to work with.',
  'life: no end seen': (s) =>
    `None of the ${s.times('n', 'life', 'lives')} was seen to end, so nothing says how long they last: only that it is longer.`,
  'life: never seen lasting': (s) =>
    `Each of the ${s.times('n', 'life', 'lives')} was over at the first look, so nothing says how short they are. An earlier look would.`,
  'life: one interval only': () => 'One interval alone gives no curve.',
  'life: all share a stretch': (s) =>
    `One moment between ${s.number('from', 1)} and ${s.number('to', 1)} would suit all ${s.times('n', 'interval', 'intervals')}, so nothing says how far the lives differ: the likelihood has no maximum.`,
  'life: no maximum': (s) =>
    `The likelihood of the ${s.times('n', 'interval', 'intervals')} has no maximum: it goes on growing with an ever flatter or steeper curve.`,
  'life: shape borrowed': (s) =>
    `The shape of the curve (${s.number('shape', 2)}) is borrowed; only its scale comes from here.`,
  'life: no lower limit': (s) =>
    `There is no lower limit for ${limits[s.text('what')] ?? s.text('what')}: the intervals do not set one.`,
  'life: no upper limit': (s) =>
    `There is no upper limit for ${limits[s.text('what')] ?? s.text('what')}: the intervals do not set one.`,
} satisfies Sentences<LifeReason>);
