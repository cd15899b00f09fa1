/** Ways to go on with a work, what they cost over the years and what waiting costs. */
export { bestBuy, figuresAgainst, inOneCurrency, monthlyOf, overtaking, sideBySide, yearlyOf } from './compare';
export {
  type AtRate,
  figuresOf,
  isReckoned,
  type NotReckoned,
  type OptionFigures,
  perGoodMonth,
  type Span,
  threeRates,
} from './figures';
export { type GoodMonthsTold, goodMonthsOf } from './goodMonths';
export { colourHolds, optionNumbers, priceSpread, waitingYears } from './numbers';
export {
  type Costed,
  currencyOf,
  irreversibleTimes,
  type Option,
  type OptionCost,
  onceOff,
  paymentsOf,
  type Scenario,
} from './payments';
export { lastDayOfQuote, type QuoteStanding, quoteStanding } from './quote';
export { type OptionReason, optionReasons } from './reasonCodes';
export { optionRefused, quoteRefused, rulesRefused } from './refused';
export { monthsByZone, type Situation, type ZoneMonths } from './situation';
export { signsOf, speaking, treatedArea } from './triggers';
export { type PriceOfWaiting, priceOfWaiting, type Waiting } from './waiting';
export { type Answer, turningOf, type WhatIf, type WhatIfBar, type WhatIfs, whatIfs } from './whatIf';
