import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { packed } from './src/build/packed.mjs';
import { shortImports } from './src/build/shortImports.mjs';

/** What the built page may do. `vite dev` puts scripts and styles inline, so only the build carries it. */
const pagePolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  // Text never becomes code: the one policy there is makes the addresses of our own workers (src/device/offline).
  "require-trusted-types-for 'script'",
  'trusted-types own-workers',
].join('; ');

/** The page's script asks for the app when it knows the language: the browser is told beforehand, so that nobody waits for that. */
const appAhead: Plugin = {
  name: 'app-ahead',
  apply: 'build',
  transformIndexHtml: (_, { bundle = {} }) => {
    const start = Object.values(bundle).find((piece) => piece.type === 'chunk' && piece.name === 'start');
    if (start?.type !== 'chunk') return [];
    const styles = new Set<string>();
    const seen = new Set<string>();
    const look = (file: string): void => {
      const piece = bundle[file];
      if (piece?.type !== 'chunk' || seen.has(file)) return;
      seen.add(file);
      piece.imports.forEach(look);
      for (const style of piece.viteMetadata?.importedCss ?? []) styles.add(style);
    };
    look(start.fileName);
    return [
      ...[...styles].map((file) => ({
        tag: 'link',
        injectTo: 'head' as const,
        attrs: { rel: 'stylesheet', href: `./${file}` },
      })),
      { tag: 'link', injectTo: 'head' as const, attrs: { rel: 'modulepreload', href: `./${start.fileName}` } },
    ];
  },
};

const strictPage: Plugin = {
  name: 'strict-page',
  apply: 'build',
  transformIndexHtml: () => [
    { tag: 'meta', injectTo: 'head-prepend', attrs: { 'http-equiv': 'Content-Security-Policy', content: pagePolicy } },
    // The host should say it too; a copy on a host that does not is no worse.
    { tag: 'meta', injectTo: 'head-prepend', attrs: { name: 'referrer', content: 'no-referrer' } },
  ],
};

/** Headers a page cannot give itself in a meta element; the real host should send the same. */
const hostHeaders = {
  'Content-Security-Policy': "frame-ancestors 'none'",
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  // A page that opened ours has no hold on its window.
  'Cross-Origin-Opener-Policy': 'same-origin',
};

const serviceWorker = VitePWA({
  strategies: 'injectManifest',
  srcDir: 'src',
  filename: 'sw.ts',
  // The page registers it itself (src/device/offline), and the web manifest is a plain file in public/.
  injectRegister: false,
  manifest: false,
  injectManifest: {
    globPatterns: ['**/*'],
    dontCacheBustURLsMatching: /^assets\//,
    maximumFileSizeToCacheInBytes: 2_000_000,
  },
});

/** Where time or memory is measured, a finger is held for so many milliseconds, or a slow tablet is imitated: nothing runs beside these. */
const measured = ['bagIn', 'bagOut', 'fieldModes', 'keeping', 'photos', 'pixels', 'steady'].map(
  (name) => `tests/browser/${name}.test.ts`,
);
/** A whole run (tests/run.mjs) asks for these by themselves, and for the others two at once. */
const part = process.env.BROWSER_PART;

export default defineConfig({
  // Relative addresses: the app works on any host and under any sub-path. Routes are in the hash.
  base: './',
  resolve: {
    // Builds for the browsers named below, where the usual ones are written out for browsers of 2015: 12 kB less.
    alias: process.env.VITEST
      ? []
      : [
          { find: /^dexie$/, replacement: 'dexie/dist/modern/dexie.mjs' },
          { find: /^workbox-window$/, replacement: 'workbox-window/build/workbox-window.prod.mjs' },
          // What it makes up for has been in React itself since 18.
          { find: /^use-sync-external-store\/shim\/index\.js$/, replacement: 'react' },
        ],
  },
  plugins: [
    react(),
    packed('survey.schema.json'),
    shortImports(),
    strictPage,
    appAhead,
    process.env.VITEST ? [] : serviceWorker,
  ],
  build: {
    // iPadOS 17, Chrome 121, Firefox 126: what the storage and file features need.
    target: ['safari17', 'chrome121', 'firefox126'],
    // The worker keeps every file on the tablet: lists of what to fetch ahead would cost the first screen 4 kB and the tablet 20.
    modulePreload: false,
    assetsInlineLimit: 0,
    reportCompressedSize: false,
    rolldownOptions: {
      // Workers share their pieces with the page, so that nothing is kept twice on the tablet; their addresses are known beforehand.
      input: {
        index: 'index.html',
        figures: 'src/device/workers/figuresWorker.ts',
        photos: 'src/device/photo/photosWorker.ts',
        pixels: 'src/device/pixels/pixelsWorker.ts',
        bag: 'src/papers/bagWorker.ts',
      },
      output: {
        // Some two thousand imports name these files: with their own names in them they would take 30 kB more of the tablet.
        chunkFileNames: ({ name, facadeModuleId }) => {
          if (name === 'start') return 'assets/start-[hash].js';
          return facadeModuleId?.includes('/words/de/') ? 'assets/de-[hash:7].js' : 'assets/[hash:7].js';
        },
        entryFileNames: ({ name }) =>
          ['figures', 'photos', 'pixels', 'bag'].includes(name) ? '[name].js' : 'assets/[name]-[hash].js',
      },
    },
  },
  preview: { port: 4173, headers: hostHeaders },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'engine',
          environment: 'node',
          include: ['tests/{engine,laws,published,device,actions,command}/**/*.test.ts', 'tests/*.test.ts'],
          testTimeout: 60_000,
          expect: { poll: { timeout: 15_000 } },
          setupFiles: ['fake-indexeddb/auto', 'tests/quiet.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'screens',
          environment: 'jsdom',
          include: ['tests/{screens,words}/**/*.test.{ts,tsx}'],
          testTimeout: 60_000,
          expect: { poll: { timeout: 15_000 } },
          setupFiles: ['fake-indexeddb/auto', 'tests/quiet.ts', 'tests/screens/setup.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
          include: part === 'measured' ? measured : ['tests/browser/**/*.test.ts'],
          exclude: part === 'others' ? measured : [],
          globalSetup: ['tests/browser/setup.ts'],
          maxWorkers: part === 'others' ? 2 : 1,
          // A real browser on a busy machine misses a touch now and then: tried once more, and the run says so. Never where losses are counted.
          retry: 1,
          // Where so many fail the browser is what is wrong, and each further test would wait its minutes twice.
          bail: 8,
          testTimeout: 240_000,
          hookTimeout: 300_000,
          expect: { poll: { timeout: 15_000 } },
        },
      },
      {
        extends: true,
        test: {
          name: 'outside',
          environment: 'node',
          include: ['tests/outside/**/*.test.ts'],
          testTimeout: 60_000,
          hookTimeout: 300_000,
          expect: { poll: { timeout: 15_000 } },
        },
      },
      {
        // By itself, when nothing else runs: what it measures is time.
        extends: true,
        test: {
          name: 'lighthouse',
          environment: 'node',
          include: ['tests/lighthouse/**/*.test.ts'],
        },
      },
    ],
  },
});
