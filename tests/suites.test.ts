import { spawnSync } from 'node:child_process';
import { expect, test, vi } from 'vitest';
import { countsOf, run } from './suites.mjs';

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
