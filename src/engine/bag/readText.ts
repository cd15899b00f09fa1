import type { Reason } from '../record';
import { bagReason } from './reasonCodes';

/** What a text of a bag says, or why it cannot be read. */
export type BagText<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: Reason };

export const says = <T>(value: T): BagText<T> => ({ ok: true, value });
export const refused = (reason: Reason): { readonly ok: false; readonly reason: Reason } => ({ ok: false, reason });

/** The lines of a tag file: UTF-8 without a byte-order mark, ended by CR, LF or CRLF (RFC 8493, 2.1). Empty ones at the end go. */
export const linesOf = (file: string, bytes: Uint8Array): BagText<readonly string[]> => {
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return refused(bagReason('bag: text', { file }));
  }
  if (text.startsWith('\ufeff')) return refused(bagReason('bag: text', { file }));
  const lines = text.split(/\r\n|\r|\n/);
  while (lines.at(-1) === '') lines.pop();
  return says(lines);
};
