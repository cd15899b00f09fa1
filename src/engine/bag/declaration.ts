import { type BagText, linesOf, refused, says } from './readText';
import { bagReason } from './reasonCodes';

/** bagit.txt, exactly these two lines (RFC 8493, 2.1.1). */
export const declaration = 'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n';

/** Versions whose bags are laid out alike where ours are concerned. */
const readable = ['1.0', '0.97'];

/** Reads bagit.txt: gives the version of BagIt. */
export const readDeclaration = (bytes: Uint8Array): BagText<string> => {
  const lines = linesOf('bagit.txt', bytes);
  if (!lines.ok) return lines;
  const [first = '', second, ...more] = lines.value;
  const version = /^BagIt-Version: (\d+\.\d+)$/.exec(first)?.[1];
  if (version === undefined || second !== 'Tag-File-Character-Encoding: UTF-8' || more.length > 0)
    return refused(bagReason('bag: declaration', {}));
  return readable.includes(version) ? says(version) : refused(bagReason('bag: version', { found: version }));
};
