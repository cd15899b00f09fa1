/** Amounts of one currency, never added across two; interest and the worth of money over the years. */
export {
  amountRefused,
  amountsRefused,
  isMoney,
  type Money,
  mixed,
  moneyOf,
  mostUnits,
  sumOf,
  sumsByCurrency,
  times,
  unitsOf,
} from './amount';
export { isCurrency, noCurrency, placesOf, unitOf } from './currencies';
export {
  capitalRecovery,
  compoundAmount,
  presentWorth,
  priceAfter,
  realRate,
  seriesCompoundAmount,
  seriesPresentWorth,
  sinkingFund,
} from './factors';
export { readMoney } from './readMoney';
export { type MoneyReason, moneyReasons } from './reasonCodes';
export { defaultMoneyRules, type MoneyRules, rulesOf } from './rules';
export { cumulativeWorth, equivalentAnnualCost, netPresentValue, overtakesIn, type Payments } from './worth';
