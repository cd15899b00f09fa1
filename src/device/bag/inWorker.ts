/** The door of the worker: what does the work. The page's own door (index.ts) stays light. */
export { type BagAsked, bites } from './bites';
export { checkedBag } from './checkedBag';
export { checking } from './checking';
export type { PhotosGone } from './contents';
export { opening } from './opened';
export { serve } from './serve';
export { writing } from './writing';
