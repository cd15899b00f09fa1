import type { Reason } from '../../engine/record';

/** Codes of the reasons why this page cannot be kept on the tablet; the sentences live in src/words. */
export const notKeptCodes = [
  'insecure address',
  'browser cannot keep pages',
  'private window',
  'keeping failed',
] as const;

export type NotKeptCode = (typeof notKeptCodes)[number];

/** What can be known before trying. `undefined`: nothing stands against it. */
export function whyNotKept(page: { isSecureContext: boolean; hasServiceWorker: boolean }): Reason | undefined {
  // Over plain http (but for localhost) browsers hide the service worker, so this must be asked first.
  if (!page.isSecureContext) return because('insecure address');
  if (!page.hasServiceWorker) return because('browser cannot keep pages');
  return undefined;
}

/**
 * What a refused registration means. Browsers refuse with SecurityError or NotSupportedError where storage is
 * closed to the page, which is what private windows and blocked site data look like from inside.
 */
export function whyRefused(error: unknown): Reason {
  const name = error instanceof Error ? error.name : '';
  if (name === 'SecurityError' || name === 'NotSupportedError') return because('private window');
  return because('keeping failed', { detail: error instanceof Error ? error.message : String(error) });
}

function because(code: NotKeptCode, params: Reason['params'] = {}): Reason {
  return { code, params };
}
