/** The only place that knows how the record lies in IndexedDB. */
export { type OpenStore, openStore, type StoreOpening, type Surroundings } from './openStore';
export { openReader, type Reader } from './reader';
export type { Batch, DeedRow, LookedThrough, NewEntry, PhotoBytes, Store, TouchRow } from './store';
export { typedStart } from './typedRows';
