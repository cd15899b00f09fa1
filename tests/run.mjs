// npm test: every suite in turn, each counted and timed, and one line at the end that says it all.
import { runSuites } from './suites.mjs';

await runSuites([
  { name: 'types', command: ['tsc', '-p', 'src'] },
  { name: 'types, engine without a browser', command: ['tsc', '-p', 'src/engine'] },
  { name: 'types, tests', command: ['tsc', '-p', 'tests'] },
  { name: 'lint and format', command: ['biome', 'check', '--error-on-warnings'] },
  { name: 'build and its budgets', command: ['npm', 'run', '--silent', 'build'] },
  { name: 'engine, device, actions, layers', project: 'engine' },
  { name: 'screens and words', project: 'screens' },
  { name: 'the built app in Chromium', project: 'browser', limit: 40 },
]);
