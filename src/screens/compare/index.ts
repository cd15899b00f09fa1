export { CompareScreen } from './CompareScreen';
export { StripScreen } from './StripScreen';
