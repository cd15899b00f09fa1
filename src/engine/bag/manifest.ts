import { type BagText, linesOf, refused, says } from './readText';
import { bagReason } from './reasonCodes';

/** One file of a bag, by its path from the base folder, and the SHA-256 of its bytes as 64 lower-case hexadecimal digits. */
export interface Listed {
  readonly path: string;
  readonly sha256: string;
}

/** CR, LF and % are the three that a manifest writes as hexadecimal (RFC 8493, 2.1.3). */
const encoded = (path: string): string =>
  path.replace(/[%\r\n]/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase().padStart(2, '0')}`);

const decoded = (path: string): string =>
  path.replace(/%(25|0a|0d)/gi, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));

/** A manifest as `sha256sum -c` reads it: checksum, two spaces, path; in the order of the paths. */
export const writeManifest = (files: readonly Listed[]): string =>
  [...files]
    .sort((a, b) => (a.path < b.path ? -1 : 1))
    .map(({ path, sha256 }) => `${sha256}  ${encoded(path)}\n`)
    .join('');

const row = /^([0-9a-fA-F]{64})[ \t]+\*?(\S.*)$/;

/** A path may not climb, start at a root, a home or a drive, or hold what a file system would take for more than a name. */
const climbs = (path: string): boolean =>
  /^[/~\\]|^[A-Za-z]:|[\\\p{Cc}\p{Cf}]/u.test(path) ||
  path.split('/').some((part) => part === '' || part === '.' || part === '..');

const belongs = (file: string, path: string): boolean =>
  file.startsWith('tagmanifest-') ? !path.startsWith('data/') : path.startsWith('data/');

/** Reads a manifest (`file` is its name): checksum by path, each path once. */
export const readManifest = (file: string, bytes: Uint8Array): BagText<ReadonlyMap<string, string>> => {
  const lines = linesOf(file, bytes);
  if (!lines.ok) return lines;
  const listed = new Map<string, string>();
  for (const [i, line] of lines.value.entries()) {
    const [, sum, written] = row.exec(line) ?? [];
    if (sum === undefined || written === undefined)
      return refused(bagReason('bag: manifest line', { file, line: i + 1 }));
    const path = decoded(written);
    if (climbs(path) || !belongs(file, path)) return refused(bagReason('bag: path', { file, path }));
    if (listed.has(path)) return refused(bagReason('bag: listed twice', { file, path }));
    listed.set(path, sum.toLowerCase());
  }
  return says(listed);
};
