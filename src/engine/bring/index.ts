export { type BringReason, bringReasons } from './reasonCodes';
