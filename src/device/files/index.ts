/** Ways to hand a file out of the browser. */
export { saveByDownload } from './download';
export { canPick, pickForSaving, saveByPicker } from './picker';
export { saveByShare } from './share';
export { saveWays, type WayOut } from './ways';
