export * as w from './catalogue';
export { deedNamed, type NameOfThing, sayReason } from './en/reasons';
export * from './format';
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
export { type Same, tongueNow, tongues } from './tongue';
export { airText, whenDone, whereDone, whoDid, withWhat } from './treatmentText';
