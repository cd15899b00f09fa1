import type { FundReason } from '../../engine/fund';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

/** Why a fund or a gift is not kept as it stands. */
export const reasonsOfFund = spoken('reasonsOfFund', 'reasonsOfFund', {
  'fund: title missing': () => 'Say what the fund is for.',
  'fund: line without a name': () => 'Each cost needs a name: say what is paid.',
  'fund: line twice': (s) => `“${s.text('name')}” is in the list twice. Take one of them away.`,
  'fund: wanted before priced': (s) =>
    `The money is wanted on ${s.day('wanted')}, before the day of the prices, ${s.day('priced')}. Give a later day.`,
  'fund: day of prices to come': (s) => `Prices cannot be of ${s.day('day')}, which is still to come.`,
  'fund: nobody named': () => 'Say who gives it: a name, or “a visitor”.',
  'fund: nothing given': () => 'Give the amount; work and goods count at what they would cost.',
  'fund: chance missing': () => 'Say how likely a hoped-for gift is, in per cent.',
  'fund: came before it was here': (s) => `It cannot have come on ${s.day('day')}, which is still to come.`,
  'fund: day it came missing': () => 'Money in hand has come: say on which day.',
  'fund: not yet come': (s) =>
    `A gift that is ${s.text('state')} has no day on which it came. Say that it is in hand, or take the day away.`,
  'fund: line not known': () => 'It is tied to a cost this fund does not have. Choose again what it may pay for.',
} satisfies Sentences<FundReason>);
