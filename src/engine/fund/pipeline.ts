import { type Money, mixed, times } from '../money';
import type { BodyOf, Reason } from '../record';

export type Fund = BodyOf<'fund'>;
export type Gift = BodyOf<'gift'>;
export type GiftState = Gift['state'];

/** What there is, what is promised and what is hoped for: three sums that are never made one. */
export interface Pipeline {
  readonly spent: Money;
  readonly inHand: Money;
  readonly pledged: Money;
  readonly hoped: Money;
  /** Of the pledged and hoped: work or goods, not money. */
  readonly inKind: Money;
  /** What is in hand, pledged and hoped, each by its chance: a guess to plan with, and no sum of money. What is spent is gone. */
  readonly guess: Money;
}

/** How likely a gift comes: what is here is here; a promise counts whole, a hope not at all, unless somebody gave it a chance. */
export const chanceOf = ({ state, chance }: Pick<Gift, 'state' | 'chance'>): number => {
  if (state === 'spent' || state === 'in hand') return 1;
  if (state === 'lost') return 0;
  return chance ?? (state === 'pledged' ? 1 : 0);
};

/** The gifts of one fund by their state. Refused where they are of two currencies. */
export const pipelineOf = (gifts: readonly Gift[], currency: string): Pipeline | Reason => {
  const two = mixed([{ minor: 0, currency }, ...gifts.map(({ amount }) => amount)]);
  if (two) return two;
  const sum = (of: (gift: Gift) => number): Money => ({
    minor: gifts.reduce((all, gift) => all + of(gift), 0),
    currency,
  });
  const of = (state: GiftState) => sum((gift) => (gift.state === state ? gift.amount.minor : 0));
  return {
    spent: of('spent'),
    inHand: of('in hand'),
    pledged: of('pledged'),
    hoped: of('hoped'),
    inKind: sum(({ inKind, state, amount }) =>
      inKind && (state === 'pledged' || state === 'hoped') ? amount.minor : 0,
    ),
    guess: sum((gift) => (gift.state === 'spent' ? 0 : times(gift.amount, chanceOf(gift)).minor)),
  };
};
