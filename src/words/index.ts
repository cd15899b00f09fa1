export * as w from './catalogue';
export { costText, goodMonthsText, monthsText } from './costWords';
export { factSaid, sourceSaid } from './en/facts';
export { deedNamed, type NameOfThing, sayReason } from './en/reasons';
export * from './format';
export { amountText, seenText, taskName } from './lineWords';
export { midSentence } from './midSentence';
export { lettersOf, namesOfCampaign } from './namesOfCampaign';
export { nameOfOption, namesOfOptions } from './namesOfOptions';
export {
  namesOfWorks,
  roundName,
  roundNameInFull,
  thingNames,
  type WorkNamed,
  workName,
  worksNamed,
  zoneName,
  zoneOptions,
} from './namesOfThings';
export { pageFoot } from './pageFoot';
export { type ReadBack, readBack, readBackMoney } from './readBack';
export { type Same, tongueNow, tongues } from './tongue';
export { airText, whenDone, whereDone, whoDid, withWhat } from './treatmentText';
export { tripwireText } from './tripwireText';
export {
  percentTyped,
  readTyped,
  type TypedAs,
  typedHours,
  typedMeasure,
  typedNumber,
  typedPercent,
  typedRise,
} from './typedNumber';
