export { DueScreen } from './DueScreen';
