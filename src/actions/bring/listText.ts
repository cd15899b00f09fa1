import type { Outcome } from '../desk';
import { attempt, refuse } from '../outcome';
import { refusal } from '../reasonCodes';

export type Encoding = 'UTF-8' | 'UTF-16' | 'Windows-1252';

/** Far over any list kept by hand; read at once it is still no matter of a second. */
const mostBytes = 5_000_000;

/**
 * The text of a list, by the mark it begins with, else UTF-8 where it is that, else Windows-1252, which takes any bytes. A text with
 * a nought in every other byte is UTF-16 without its mark.
 */
export const listText = (file: Blob): Promise<Outcome<{ readonly text: string; readonly encoding: Encoding }>> =>
  attempt(async () => {
    if (file.size > mostBytes) refuse(refusal('list too large', { most: mostBytes / 1_000_000 }));
    return decoded(new Uint8Array(await file.arrayBuffer()));
  });

const decoded = (bytes: Uint8Array): { text: string; encoding: Encoding } => {
  const [a, b] = bytes;
  const nought = (from: number) => bytes.length > 3 && bytes[from] === 0 && bytes[from + 2] === 0;
  if ((a === 0xff && b === 0xfe) || nought(1)) return { text: as('utf-16le', bytes), encoding: 'UTF-16' };
  if ((a === 0xfe && b === 0xff) || nought(0)) return { text: as('utf-16be', bytes), encoding: 'UTF-16' };
  try {
    return { text: as('utf-8', bytes, true), encoding: 'UTF-8' };
  } catch {
    return { text: as('windows-1252', bytes), encoding: 'Windows-1252' };
  }
};

const as = (label: string, bytes: Uint8Array, fatal = false): string => new TextDecoder(label, { fatal }).decode(bytes);
