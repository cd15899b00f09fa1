export { type BagReason, bagReasons } from './reasonCodes';
