export { HelpScreen } from './HelpScreen';
