/** What lies in a bag to be read without this app. */
export type { BagContents } from '../device/bag';
export { papersInBag } from './papersInBag';
export { thingsOfAll } from './reading';
export { readmeText } from './readme';
export { paperSortOf, paperSorts } from './registry';
export { reportHtml } from './report';
export { type ConservatorQuestion, conservatorQuestions } from './work/conservatorQuestions';
