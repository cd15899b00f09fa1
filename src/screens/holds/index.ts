export { HoldsScreen } from './HoldsScreen';
