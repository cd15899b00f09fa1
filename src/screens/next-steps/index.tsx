export { NextStepsScreen } from './NextStepsScreen';
