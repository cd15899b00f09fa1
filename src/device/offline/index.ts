export { type KeptFiles, keptFiles } from './keptFiles';
export { applyUpdate, type Watching, watchUpdates } from './updates';
export { notKeptCodes } from './whyNotKept';
export { workerAddress } from './workerAddress';
