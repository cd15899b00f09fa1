import type { BodyOf } from '../record';

type Kept = BodyOf<'moneyRules'>;

/** How money is reckoned in a collection; no currency until the first amount is entered. */
export type MoneyRules = Pick<Kept, 'rate' | 'growth' | 'contingency' | 'years' | 'spending'> & {
  readonly currency: string | undefined;
  /** False: nobody has set them, they are this project's own. */
  readonly set: boolean;
};

/**
 * Shares a year, but contingency (a share of the sum) and years. Source: this project's own choice, near what municipal and museum
 * plans commonly reckon with; shown as an assumption, and hers to change.
 */
export const defaultMoneyRules = { rate: 0.03, growth: 0.04, contingency: 0.12, years: 20, spending: 0.04 } as const;

export const rulesOf = (kept: Kept | undefined): MoneyRules => ({
  ...defaultMoneyRules,
  ...(kept && {
    rate: kept.rate,
    growth: kept.growth,
    contingency: kept.contingency,
    years: kept.years,
    spending: kept.spending,
  }),
  currency: kept?.currency,
  set: kept !== undefined,
});
