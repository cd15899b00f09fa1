/** What lies in a bag to be read without this app. */
export type { BagContents } from './contents';
export { readmeText } from './readme';
export { reportHtml } from './report';
