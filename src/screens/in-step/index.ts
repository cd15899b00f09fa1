export { InStepScreen } from './InStepScreen';
