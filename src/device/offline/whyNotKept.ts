import type { Reason } from '../../engine/record';
import { deviceReason } from '../reasonCodes';

/** Why this page cannot be kept on the tablet, with the names of the parameters. The sentences live in src/words/. */
export const notKeptCodes = {
  'not kept: browser cannot': [],
  /** Storage is closed to the page: a private window, or site data blocked. */
  'not kept: private window': [],
  /** Anything else, in the browser's own words. */
  'not kept: refused': ['said'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** What can be known before trying. `undefined`: nothing stands against it. */
export function whyNotKept(page: { isSecureContext: boolean; hasServiceWorker: boolean }): Reason | undefined {
  // At an insecure address browsers hide the service worker too, so this is asked first.
  if (!page.isSecureContext) return deviceReason('address not secure', {});
  if (!page.hasServiceWorker) return { code: 'not kept: browser cannot', params: {} };
  return undefined;
}

/** What a refused registration means. The two error names are what private windows give when asked. */
export function whyRefused(error: unknown): Reason {
  const { name, message } = error instanceof Error ? error : new Error(String(error));
  if (name === 'SecurityError' || name === 'NotSupportedError') return { code: 'not kept: private window', params: {} };
  return { code: 'not kept: refused', params: { said: message } };
}
