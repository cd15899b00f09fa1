/** What works come to: first each by itself, then all together, then each beside the others. */
export { type FirstPass, firstPass } from './firstPass';
export { type SecondPass, secondPass } from './secondPass';
export type { SculptureSummary } from './summary';
