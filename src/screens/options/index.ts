export { OptionsScreen } from './OptionsScreen';
