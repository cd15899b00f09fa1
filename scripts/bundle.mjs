import { build } from 'vite';

/**
 * Bundles a TypeScript entry and everything it needs, libraries included, into one file for plain Node.
 * Warnings go to the error stream, so that what runs afterwards has standard output to itself.
 */
export async function bundleForNode(entry, file) {
  const slash = file.lastIndexOf('/');
  await build({
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    ssr: { noExternal: true, target: 'node' },
    build: {
      ssr: entry,
      target: 'node20',
      outDir: file.slice(0, slash),
      emptyOutDir: false,
      minify: false,
      rolldownOptions: {
        output: { format: 'es', entryFileNames: file.slice(slash + 1), codeSplitting: false },
      },
    },
  });
}
