import type { AgreementReason } from '../../engine/agreement';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

/** What has to be said beside a figure of how far two people agreed. */
export const reasonsOfAgreement = spoken('reasonsOfAgreement', 'reasonsOfAgreement', {
  'agreement: too few': (s) =>
    `${s.times('n', 'case is', 'cases are')} too few to tell agreement by a number; ${s.number('least', 0)} are needed at least.`,
  'agreement: all alike': (s) =>
    `You gave one and the same answer in all ${s.times('n', 'case', 'cases')}, so no figure can tell agreement from chance.`,
  'agreement: carried left out': (s) =>
    `${s.times('count', 'answer', 'answers')} carried over from an earlier round ${s.text('count') === '1' ? 'is' : 'are'} left out: not judged.`,
  'agreement: no zone judged by both': () => 'No zone was judged by both of you.',
  'agreement: rounds not alike': () =>
    'The two rounds are not of one kind and state, so that a difference may lie in the surface and not in the eye.',
  'agreement: days apart': (s) =>
    `The two rounds lie ${s.times('days', 'day', 'days')} apart; the surface may have changed a little between.`,
  'agreement: eyes differ as expected': () =>
    'The two of you differ in coverage by no more than two people usually do.',
  'agreement: eyes differ by more than expected': () =>
    'The two of you differ in coverage by more than two people usually do: look together before you compare your rounds.',
} satisfies Sentences<AgreementReason>);
