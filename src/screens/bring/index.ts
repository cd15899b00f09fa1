export { BringScreen } from './BringScreen';
