/** The look between rounds. */
export { LookScreen } from './Look';
