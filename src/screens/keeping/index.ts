export { KeepingScreen } from './KeepingScreen';
