export { ThenAndNowScreen } from './ThenAndNowScreen';
