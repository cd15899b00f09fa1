export { AccessScreen } from './AccessScreen';
export { HotDayScreen } from './HotDayScreen';
export { HotDaysScreen } from './HotDaysScreen';
export { InsertsScreen } from './InsertsScreen';
export { LayersScreen } from './LayersScreen';
