/**
 * Compound-interest factors, as the tables of engineering economics write them: i a share a year (0.05), n whole years. At no
 * interest each is its own limit. Source: standard table factors; the identity A/P = A/F + i binds them.
 */

/** F/P: what one now has grown to after n years. */
export const compoundAmount = (i: number, n: number): number => (1 + i) ** n;

/** P/F: what one after n years is worth now. */
export const presentWorth = (i: number, n: number): number => (1 + i) ** -n;

/** F/A: what one at the end of each year has grown to after n years. */
export const seriesCompoundAmount = (i: number, n: number): number => (i === 0 ? n : Math.expm1(n * Math.log1p(i)) / i);

/** A/F, the sinking fund: what to lay by at the end of each year to have one after n years. Not for no years at all. */
export const sinkingFund = (i: number, n: number): number => 1 / seriesCompoundAmount(i, n);

/** P/A: what one at the end of each of n years is worth now. */
export const seriesPresentWorth = (i: number, n: number): number => (i === 0 ? n : -Math.expm1(-n * Math.log1p(i)) / i);

/** A/P, capital recovery: what one now comes to at the end of each of n years. Not for no years at all. */
export const capitalRecovery = (i: number, n: number): number => 1 / seriesPresentWorth(i, n);

/** The real rate behind a nominal one: what is left of interest when prices rise by `inflation`; shares a year. Fisher's relation. */
export const realRate = (nominal: number, inflation: number): number => (1 + nominal) / (1 + inflation) - 1;

/** What a price of today comes to after so many years, or parts of one, of rising by `growth` a year. */
export const priceAfter = (price: number, growth: number, years: number): number => price * (1 + growth) ** years;
