import { readFileSync, unlinkSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';

/**
 * A file of public/ that nobody but the app itself reads lies on the tablet gzipped, under the same name with `.bin`: no host is
 * asked to do it, and none undoes it. Serving without a build gives the file as it is.
 * @param {string} file @returns {import('vite').Plugin}
 */
export const packed = (file) => {
  let folder = '';
  return {
    name: 'packed',
    apply: 'build',
    configResolved: ({ root, build }) => {
      folder = resolve(root, build.outDir);
    },
    writeBundle: () => {
      writeFileSync(join(folder, `${file}.bin`), gzipSync(readFileSync(join(folder, file)), { level: 9 }));
      unlinkSync(join(folder, file));
    },
  };
};
