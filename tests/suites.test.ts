import { expect, test } from 'vitest';
import { countsOf } from './suites.mjs';

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
