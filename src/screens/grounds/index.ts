export { GroundsScreen } from './GroundsScreen';
