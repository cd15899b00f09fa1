import { canPick } from './picker';
import { shareable } from './share';

export type WayOut = 'picker' | 'share' | 'download' | 'text';

/** Text beyond this is no longer something to copy by hand. Bytes. */
const mostText = 300_000;

/** An app put on the home screen of an iPad or iPhone: a download there opens a viewer without a way back. */
const isHomeScreenApp = (): boolean => (navigator as { standalone?: boolean }).standalone === true;

/** The ways this browser offers for this file, the surest first. */
export const saveWays = (file: File): readonly WayOut[] => [
  ...(canPick() ? (['picker'] as const) : []),
  ...(shareable(file) ? (['share'] as const) : []),
  ...(isHomeScreenApp() ? [] : (['download'] as const)),
  ...(file.size <= mostText ? (['text'] as const) : []),
];
