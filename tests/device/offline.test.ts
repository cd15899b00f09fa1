import { expect, test } from 'vitest';
import { whyNotKept, whyRefused } from '../../src/device/offline/whyNotKept';

test('an insecure address is named as the reason even though the browser hides its service worker there', () => {
  expect(whyNotKept({ isSecureContext: false, hasServiceWorker: false })?.code).toBe('address not secure');
});

test('a browser without service workers is named as the reason at a secure address', () => {
  expect(whyNotKept({ isSecureContext: true, hasServiceWorker: false })?.code).toBe('not kept: browser cannot');
});

test('nothing stands against keeping the app where both are there', () => {
  expect(whyNotKept({ isSecureContext: true, hasServiceWorker: true })).toBeUndefined();
});

test.each(['SecurityError', 'NotSupportedError'])(
  '%s, which private windows give, is told as a private window',
  (name) => {
    expect(whyRefused(new DOMException('no', name)).code).toBe('not kept: private window');
  },
);

test('any other refusal is passed on in the words of the browser', () => {
  expect(whyRefused(new TypeError('the script was not found'))).toEqual({
    code: 'not kept: refused',
    params: { said: 'the script was not found' },
  });
});
