import { basename, dirname } from 'node:path';
import { build } from 'vite';

/**
 * Bundles a TypeScript entry into one file for plain Node: with its libraries when `alone`, so that the file runs
 * anywhere. Warnings go to the error stream: standard output belongs to what runs afterwards.
 */
export async function bundleForNode(entry, file, { alone }) {
  await build({
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    ssr: { noExternal: alone ? true : undefined, target: 'node' },
    build: {
      ssr: entry,
      target: 'node20',
      outDir: dirname(file),
      emptyOutDir: false,
      minify: false,
      rolldownOptions: { output: { format: 'es', entryFileNames: basename(file), codeSplitting: false } },
    },
  });
}
