export { LookScreen } from './Look';
export { WalkScreen } from './Walk';
