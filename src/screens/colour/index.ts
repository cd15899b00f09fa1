export { ColourScreen } from './ColourScreen';
