import { spoken } from '../tongue';
import type { Params } from './sentence';

const question: Readonly<Record<string, string>> = {
  origin: 'whether it is dirt, a stain from above, or in the metal',
  extent: 'how much of it there is',
  severity: 'how severe it is',
  against: 'how it stands to the earlier value',
};

/** Why a zone cannot be left like this yet, or a deed of the round was not done. */
export const reasonsOfRound = spoken('reasonsOfRound', 'reasonsOfRound', {
  'round: not here': () => 'This round is not on this device. Go back to the sculpture and open it again.',
  'round: sculpture has no zones': () => 'This sculpture has no zones yet. Draw up its zones, then start the round.',
  'round: zone not here': () => 'This zone is not part of this round. Go back to the walk and choose another.',
  'round: not to be rated again': () => 'This zone is not among those asked again. Go on with the round.',
  'round: finding not finished': (s) =>
    `${s.kind('kind')} is not finished: say ${question[s.text('question')] ?? 'the rest of it'}, or take it back.`,
  'round: not looked, yet something recorded': (s) =>
    `${s.kind('kind')} is recorded here, so the zone was looked at. Take that back first, or go on.`,
  'round: nothing found, yet something recorded': (s) =>
    `${s.kind('kind')} is recorded here, so something was found. Take that back first, or go on.`,
  'round: earlier finding not answered': (s) =>
    Number(s.text('n')) > 1
      ? `${s.times('n', 'earlier finding', 'earlier findings')} of this zone have no answer yet, ${s.kind('kind')} among them. Say for each what it is now, or that it is gone.`
      : `${s.kind('kind')} was here before and has no answer yet. Say what it is now, or that it is gone.`,
  'round: no earlier round': () => 'There is no earlier round to take an answer from. Look, and record what you see.',
  'round: stop word is not carried': (s) =>
    `${s.kind('kind')} is a stop word and is never carried over. Look at it, and record what you see.`,
  'round: nothing said yet': () => 'Nothing is said of this zone yet. Record a finding, or say that nothing was found.',
} satisfies Readonly<Record<string, (s: Params) => string>>);
