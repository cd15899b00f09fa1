export { BriefingScreen } from './BriefingScreen';
export { CloseDownScreen } from './CloseDownScreen';
export { PackingScreen } from './PackingScreen';
export { SitePlanScreen } from './SitePlanScreen';
export { YearScreen } from './YearScreen';
