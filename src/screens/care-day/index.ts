export { CareDayScreen } from './CareDayScreen';
export { LedgerScreen } from './LedgerScreen';
export { MethodSheetScreen } from './MethodSheetScreen';
export { SeasonScreen } from './SeasonScreen';
