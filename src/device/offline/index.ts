export { applyUpdate, type Watching, watchUpdates } from './updates';
export { type NotKeptCode, notKeptCodes } from './whyNotKept';
export { workerAddress } from './workerAddress';
