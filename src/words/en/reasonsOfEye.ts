import type { EyeReason } from '../../engine/eye';
import { spoken } from '../tongue';
import type { Params, Sentences } from './sentence';

/** "9 coverages judged twice and 12 patches of an eye check", or the one of the two there is. */
export const eyeRests = (s: Params): string => {
  const pairs = s.times('pairs', 'coverage judged twice', 'coverages judged twice');
  const patches = s.times('patches', 'patch of an eye check', 'patches of an eye check');
  if (s.text('patches') === '0') return pairs;
  return s.text('pairs') === '0' ? patches : `${pairs} and ${patches}`;
};

/** Why the error of one eye, or a figure corrected for it, is what it is. */
export const reasonsOfEye = spoken('reasonsOfEye', 'reasonsOfEye', {
  'eye: assumed, not known yet': () => 'How steady this eye is, is not known yet; the usual error is assumed.',
  'eye: known from': (s) => `Known from ${eyeRests(s)}, worth ${s.number('worth', 1)} beside the 10 assumed ones.`,
  'eye: not held steadier than': (s) =>
    `It came out steadier still, but no eye is held to be steadier than ${s.number('sd', 2)}.`,
  'eye: widened for few pairs': (s) => `Taken ${s.number('times', 2)} times as wide, for how little it rests on.`,
  'eye: corrected by the curve': (s) =>
    `Corrected by what this eye said of ${s.times('patches', 'patch', 'patches')} whose coverage is known. What was entered stays as it is.`,
  'eye: bias not shown': () =>
    'This eye shows no lean to either side that chance would not make, so nothing is corrected.',
  'eye: no curve yet': () => 'This eye has made no eye check yet, so nothing is corrected.',
  'eye: curve too flat': () =>
    'This eye said much the same of little and of much, so what it said cannot be turned into what is true.',
} satisfies Sentences<EyeReason>);
