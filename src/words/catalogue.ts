/** Every word on screen, by screen. A namespace and not an object, so that a screen brings only its own words along. */
export { carry } from './en/carry';
export { charts } from './en/charts';
export { eyeCheck } from './en/eyeCheck';
export { holds } from './en/holds';
export { logbook } from './en/logbook';
export { look } from './en/look';
export { method } from './en/method';
export { nextSteps } from './en/nextSteps';
export { overTime } from './en/overTime';
export { parts } from './en/parts';
export { round } from './en/round';
export { sculptures } from './en/sculptures';
export { settings } from './en/settings';
export { settle } from './en/settle';
export { shell } from './en/shell';
export { thenAndNow } from './en/thenAndNow';
export const product = 'Patina Round';
