import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, test, vi } from 'vitest';
import { againIn, countsOf, run, slowestOf } from './suites.mjs';

const report = {
  numPassedTests: 3,
  numFailedTests: 0,
  numPendingTests: 0,
  numTodoTests: 0,
  testResults: [{ name: 'a.test.ts', status: 'passed', assertionResults: [{}, {}, {}] }],
};

test('passed and failed tests are counted as they are', () => {
  expect(countsOf({ ...report, numFailedTests: 2 })).toMatchObject({ passed: 3, failed: 2 });
});

test('a skipped test or one left for later counts as failed', () => {
  expect(countsOf({ ...report, numPendingTests: 1, numTodoTests: 1 })).toMatchObject({ passed: 3, failed: 2 });
});

test('a test file that cannot be read counts as failed, though no test in it ever ran', () => {
  const unread = { name: 'b.test.ts', status: 'failed', assertionResults: [] };
  const counts = countsOf({ ...report, testResults: [...report.testResults, unread] });
  expect(counts).toEqual({ passed: 3, failed: 1, notes: ['could not be run: b.test.ts'] });
});

test('the files that took longest are told, the longest first', () => {
  const took = (name: string, seconds: number) => ({
    name: resolve(name),
    startTime: 5_000,
    endTime: 5_000 + seconds * 1000,
  });
  const testResults = [took('tests/a.test.ts', 2), took('tests/b.test.ts', 9.5), took('tests/c.test.ts', 4)];
  expect(slowestOf({ testResults }, 2)).toEqual([
    { seconds: 9.5, file: 'tests/b.test.ts' },
    { seconds: 4, file: 'tests/c.test.ts' },
  ]);
});

test('a test that passed only at its second try is told by name, and one that passed at once is not', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'patina-round-again-'));
  const file = join(folder, 'weak.test.ts');
  writeFileSync(
    file,
    "import { expect, test } from 'vitest'; let n = 0;\n" +
      "test('strong', () => {}); test('weak', { retry: 1 }, () => { n += 1; expect(n).toBe(2); });",
  );
  const underWay = join(folder, 'under-way.txt');
  const own = resolve('tests/underWay.mjs');
  const none = join(folder, 'none.config.mjs');
  writeFileSync(none, 'export default {};');
  const args = ['run', '--root', folder, '--config', none, `--reporter=${own}`, file];
  expect(await run(['vitest', ...args], 1, underWay)).toBe(true);
  expect(againIn(underWay)).toHaveLength(1);
  expect(againIn(underWay)[0]).toMatch(/weak\.test\.ts > weak$/);
  rmSync(folder, { recursive: true, force: true });
});

test('a suite that stands still is ended with all it started, and has failed', async () => {
  const said = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  // The child holds the output open for a minute, as a browser left behind would.
  const begun = performance.now();
  expect(await run(['sh', '-c', 'sleep 60 & sleep 60'], 0.02)).toBe(false);
  expect(performance.now() - begun).toBeLessThan(30_000);
  expect(said.mock.calls.flat().join('')).toContain('it stood still');
  // So is what a suite leaves behind that ended well.
  expect(await run(['sh', '-c', 'sleep 61 & true'])).toBe(true);
  await expect.poll(() => spawnSync('pgrep', ['-f', '^sleep 61$']).status).toBe(1);
  expect(await run(['true'])).toBe(true);
  expect(await run(['false'])).toBe(false);
});
