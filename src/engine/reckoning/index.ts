/** What works come to: first each by itself, then all together, then each beside the others. */
export { collectionOwn, type OwnSources } from './collectionOwn';
export { type FirstPass, firstPass } from './firstPass';
export { lives, seedOfDraws } from './lives';
export type { PaperSource, WorkOnPaper } from './paperSource';
export { type SecondPass, secondPass } from './secondPass';
export type { SculptureSummary } from './summary';
