import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join, resolve } from 'node:path';

/**
 * Runs suites one after the other, prints a table of minutes and counts, then `N passed, N failed` alone on a line.
 * A suite is a command, which counts as one test, or a Vitest project, which counts its own. Sets the exit code.
 */
export async function runSuites(suites) {
  const rows = suites.map((suite) => {
    console.log(`\n== ${suite.name}`);
    const started = performance.now();
    const counts = suite.project ? runProject(suite.project) : runCommand(suite.command);
    return { name: suite.name, ...counts, minutes: (performance.now() - started) / 60_000 };
  });
  const passed = rows.reduce((n, row) => n + row.passed, 0);
  const failed = rows.reduce((n, row) => n + row.failed, 0);
  printTable(rows);
  console.log(`\n${passed} passed, ${failed} failed`);
  process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
}

function runCommand(command) {
  return run(command) ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

function runProject(project) {
  const folder = mkdtempSync(join(tmpdir(), 'patina-round-counts-'));
  const file = join(folder, 'counts.json');
  const ok = run([
    'vitest',
    'run',
    '--project',
    project,
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ]);
  const counts = existsSync(file)
    ? countsOf(JSON.parse(readFileSync(file, 'utf8')))
    : { passed: 0, failed: 1, notes: [] };
  for (const note of counts.notes) console.error(note);
  rmSync(folder, { recursive: true });
  // A run can go wrong with every test green: an error outside any test.
  return ok || counts.failed > 0 ? counts : { ...counts, failed: 1 };
}

/** A test file that could not be read has no tests to count, and a skipped test proves nothing: both are failures. */
export function countsOf(report) {
  const unread = report.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0);
  const skipped = report.numPendingTests + report.numTodoTests;
  const notes = unread.map((file) => `could not be run: ${file.name}`);
  if (skipped > 0) notes.push(`${skipped} tests were skipped`);
  return { passed: report.numPassedTests, failed: report.numFailedTests + unread.length + skipped, notes };
}

function run([name, ...args]) {
  const path = [resolve('node_modules/.bin'), process.env.PATH].join(delimiter);
  const env = { ...process.env, PATH: path };
  return spawnSync(name, args, { stdio: ['ignore', 'inherit', 'inherit'], env }).status === 0;
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
