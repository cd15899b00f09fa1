export { EyeCheckScreen } from './EyeCheckScreen';
