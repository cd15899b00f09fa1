export { SettleScreen } from './SettleScreen';
