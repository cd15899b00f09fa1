import { expect, test } from 'vitest';
import { asProblem, isFull, isLost } from '../../../src/device/store/faults';

const named = (name: string, message = '') => Object.assign(new Error(message), { name });

test.each([
  ['its own class', named('QuotaExceededError')],
  ['inside an AbortError', Object.assign(named('AbortError'), { inner: named('QuotaExceededError') })],
  ['the old code 22', Object.assign(named('Error'), { code: 22 })],
  ['the name one engine gives', named('NS_ERROR_DOM_QUOTA_REACHED')],
  ['one row of a bulk write', Object.assign(named('BulkError'), { failures: [named('QuotaExceededError')] })],
  ['only its message', named('UnknownError', 'Encountered full disk while opening backing store')],
])('a full tablet is told whatever shape the error has: %s', (_, error) => {
  expect(isFull(error)).toBe(true);
  expect(asProblem(error, 'deed: zone added').reason).toEqual({
    code: 'device full',
    params: { deed: 'deed: zone added' },
  });
});

test.each([
  ['closed under us', named('DatabaseClosedError')],
  ['an invalid state', named('InvalidStateError')],
  [
    'the message after sleep',
    named('UnknownError', 'Connection to Indexed Database server lost. Refresh the page to try again'),
  ],
])('a lost connection is told from a full tablet: %s', (_, error) => {
  expect(isLost(error)).toBe(true);
  expect(isFull(error)).toBe(false);
});

test('any other fault says what the browser said', () => {
  const { reason } = asProblem(named('ConstraintError', 'key already there'), 'deed: zone added');
  expect(reason.code).toBe('store failed');
  expect(String(reason.params.said)).toContain('key already there');
});
