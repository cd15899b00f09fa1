// npm test: every suite in turn, each counted and timed, and one line at the end that says it all.
import { availableParallelism } from 'node:os';
import { runSuites } from './suites.mjs';

// Nothing else runs beside these: each core has a file to itself.
const workers = availableParallelism();

await runSuites([
  { name: 'types', command: ['tsc', '-p', 'src'] },
  { name: 'types, engine without a browser', command: ['tsc', '-p', 'src/engine'] },
  { name: 'types, tests', command: ['tsc', '-p', 'tests'] },
  { name: 'lint and format', command: ['biome', 'check', '--error-on-warnings'] },
  { name: 'build and its budgets', command: ['npm', 'run', '--silent', 'build'] },
  { name: 'engine, device, actions, layers', project: 'engine', workers },
  { name: 'screens and words', project: 'screens', workers },
  { name: 'the built app in Chromium', project: 'browser', env: { BROWSER_PART: 'others' }, limit: 40 },
  { name: 'where time and memory are measured', project: 'browser', env: { BROWSER_PART: 'measured' } },
]);
