export { CardsScreen } from './CardsScreen';
export { ShotListScreen } from './ShotListScreen';
export { StationsScreen } from './StationsScreen';
