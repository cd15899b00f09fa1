export { OverTimeScreen } from './OverTimeScreen';
