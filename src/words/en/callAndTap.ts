import { kindOf } from '../../engine/trade';
import { spoken } from '../tongue';

const kindName = (id: string): string => (kindOf(id)?.name ?? id).toLowerCase();

/** How the steps of the coverage ladder are called down, by what stands on them. */
const calledSteps: Readonly<Record<string, string>> = {
  '0': 'none there',
  '<1': 'under one',
  '3': 'three',
  '5': 'five',
  '10': 'ten',
  '15': 'fifteen',
  '20': 'twenty',
  '30': 'thirty',
  '40': 'forty',
  '50': 'fifty',
  '70': 'seventy',
  '90+': 'ninety or more',
};

const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** Words of call and tap: one calls from the ladder, one taps on the ground, the screen reads back. */
export const callAndTap = spoken('callAndTap', 'callAndTap', {
  tick: 'Call and tap',
  tickWhat:
    'Two people: one looks and calls, a helper on the ground taps. After each touch the screen says in large letters what it took; the helper reads it back.',
  whole: 'All of this zone',
  step: (label: string) => calledSteps[label] ?? label,
  /** A value set between two steps. */
  between: (percent: string) => percent,
  photos: (n: number) => `${small[n] ?? n} ${n === 1 ? 'photo' : 'photos'}`,
  from: (letter: string) => `from ${letter}`,
  kind: kindName,
  gone: (kind: string) => `${kindName(kind)} gone`,
  count: { one: 'one', 'two to five': 'two to five', more: 'more than five' },
  there: 'still there',
  notReached: (letter: string) => `${letter}, could not reach: why?`,
  each: (letter: string) => `${letter}, nothing found: is each one gone?`,
  /** "D, green streak, thirty, sheets, two photos." */
  sentence: (letter: string, parts: readonly string[]) => `${letter}, ${parts.join(', ')}.`,
  /** What the pad goes on to ask about by itself. */
  next: (kind: string) => `Now: ${kindName(kind)}?`,
  /** A zone that just came up, after one that was left. */
  now: (letter: string, name: string) => `Now ${letter}, ${name.toLowerCase()}.`,
  kept: (letter: string, said: string) => `${letter}, ${said}.`,
} as const);
