export { PlanOfWorkScreen } from './PlanOfWorkScreen';
export { PlanScreen } from './PlanScreen';
