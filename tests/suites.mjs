import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { againBeside } from './underWay.mjs';

/** Minutes after which a suite stands still and is ended; each says its own where it needs more. */
const usualLimit = 15;

/**
 * Runs suites one after the other, prints the slowest files of each, the tests that passed only at their second try, a table of
 * minutes and counts, then `N passed, N failed` alone on a line.
 * A suite is a command, which counts as one test, or a Vitest project, which counts its own and takes `workers` files at once
 * (else as many as the project says); `env` is given to it. One that takes longer than its `limit` (minutes) is ended, with all it
 * started, has failed, and says in which tests it stood. Sets the exit code.
 */
export async function runSuites(suites) {
  const rows = [];
  for (const suite of suites) {
    console.log(`\n== ${suite.name}`);
    const started = performance.now();
    const counts = suite.project ? await runProject(suite) : await runCommand(suite);
    rows.push({ name: suite.name, ...counts, minutes: (performance.now() - started) / 60_000 });
  }
  printLists(rows);
  const passed = rows.reduce((n, row) => n + row.passed, 0);
  const failed = rows.reduce((n, row) => n + row.failed, 0);
  printTable(rows);
  console.log(`\n${passed} passed, ${failed} failed`);
  process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
}

async function runCommand({ command, limit }) {
  return (await run(command, limit)) ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

async function runProject({ project, limit, workers, env }) {
  const folder = mkdtempSync(join(tmpdir(), 'patina-round-counts-'));
  const file = join(folder, 'counts.json');
  const underWay = join(folder, 'under-way.txt');
  const reporters = ['--reporter=default', '--reporter=json', `--reporter=${ownReporter}`, `--outputFile.json=${file}`];
  const atOnce = workers ? [`--maxWorkers=${workers}`] : [];
  const ok = await run(['vitest', 'run', '--project', project, ...atOnce, ...reporters], limit, underWay, env);
  const report = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
  const counts = report
    ? { ...countsOf(report), slowest: slowestOf(report) }
    : { passed: 0, failed: 1, notes: [], slowest: [] };
  for (const note of counts.notes) console.error(note);
  counts.again = againIn(underWay);
  rmSync(folder, { recursive: true });
  // A run can go wrong with every test green: an error outside any test.
  return ok || counts.failed > 0 ? counts : { ...counts, failed: 1 };
}

const ownReporter = fileURLToPath(new URL('./underWay.mjs', import.meta.url));

/** A test file that could not be read has no tests to count, and a skipped test proves nothing: both are failures. */
export function countsOf(report) {
  const unread = report.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0);
  const skipped = report.numPendingTests + report.numTodoTests;
  const notes = unread.map((file) => `could not be run: ${file.name}`);
  if (skipped > 0) notes.push(`${skipped} tests were skipped`);
  return { passed: report.numPassedTests, failed: report.numFailedTests + unread.length + skipped, notes };
}

/** The files that took longest, the longest first: seconds and path. Most of a run's time is in a few of them. */
export function slowestOf(report, many = 5) {
  return report.testResults
    .map(({ name, startTime, endTime }) => ({ seconds: (endTime - startTime) / 1000, file: relative('', name) }))
    .sort((a, b) => b.seconds - a.seconds)
    .slice(0, many);
}

/** Names of the tests that were tried again, from the file beside the one that keeps what is under way: they are the weak ones. */
export function againIn(underWay) {
  const file = againBeside(underWay);
  return existsSync(file) ? readFileSync(file, 'utf8').split('\n').filter(Boolean) : [];
}

/** True where it ended well, and in time. `underWay`: the file in which it keeps what has begun and not ended; `given`: variables beside ours. */
export function run([name, ...args], limit = usualLimit, underWay = '', given = {}) {
  const path = [resolve('node_modules/.bin'), process.env.PATH].join(delimiter);
  const env = { ...process.env, ...given, PATH: path, UNDER_WAY: underWay };
  // A group of its own: ending it ends the workers and browsers it started, which would hold the output open.
  const running = spawn(name, args, { stdio: ['ignore', 'inherit', 'inherit'], env, detached: true });
  const endAll = () => {
    try {
      process.kill(-running.pid, 'SIGKILL');
    } catch {
      // Gone already.
    }
  };
  // Asked to end from outside: the handler of the exit ends the rest.
  const leave = () => process.exit(1);
  process.once('exit', endAll);
  process.once('SIGTERM', leave);
  return new Promise((done) => {
    const late = setTimeout(() => {
      const begun = existsSync(underWay) ? readFileSync(underWay, 'utf8') : '';
      console.error(`Ended after ${limit} minutes: it stood still. Begun and not ended:\n${begun || '(not known)'}`);
      endAll();
    }, limit * 60_000);
    const end = (ok) => {
      clearTimeout(late);
      // Whatever it left behind holds the output open, and whoever reads it would wait for ever.
      endAll();
      process.removeListener('exit', endAll);
      process.removeListener('SIGTERM', leave);
      done(ok);
    };
    running.once('error', () => end(false));
    running.once('exit', (code) => end(code === 0));
  });
}

function printLists(rows) {
  for (const { name, slowest = [] } of rows) {
    if (slowest.length === 0) continue;
    console.log(`\nslowest of ${name}, seconds:`);
    for (const { seconds, file } of slowest) console.log(`  ${seconds.toFixed(1).padStart(6)}  ${file}`);
  }
  const again = rows.flatMap((row) => row.again ?? []);
  console.log(again.length > 0 ? '\nneeded a second try:' : '\nno test needed a second try');
  for (const test of again) console.log(`  ${test}`);
}

function printTable(rows) {
  const wide = Math.max(...rows.map((row) => row.name.length));
  console.log(`\n${'suite'.padEnd(wide)}  minutes  passed  failed`);
  for (const { name, minutes, passed, failed } of rows) {
    const cells = [
      name.padEnd(wide),
      minutes.toFixed(2).padStart(7),
      String(passed).padStart(6),
      String(failed).padStart(6),
    ];
    console.log(cells.join('  '));
  }
}
