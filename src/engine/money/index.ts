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
export { readMoney } from './readMoney';
export { type MoneyReason, moneyReasons } from './reasonCodes';
export { defaultMoneyRules, type MoneyRules, rulesOf } from './rules';
