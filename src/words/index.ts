export * as w from './catalogue';
export { deedNamed, type NameOfThing, sayReason } from './en/reasons';
export * from './format';
export { type Same, tongueNow, tongues } from './tongue';
