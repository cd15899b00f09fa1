import { Workbox } from 'workbox-window';
import type { Reason } from '../../engine/record';
import { whyNotKept, whyRefused } from './whyNotKept';
import { workerAddress } from './workerAddress';

export interface Watching {
  /** The app is now kept on this tablet: it opens without a network from here on. Called once, at the first visit. */
  onKept?(): void;
  /** A newer version lies ready. Nothing changes until `applyUpdate`. */
  onReady(): void;
  /** Awaited before this tab reloads into the new version, whichever tab asked for it: save what is open. */
  beforeReload?(): Promise<void> | void;
}

let worker: Workbox | undefined;

/**
 * Keeps the app on the tablet and watches for newer versions. Gives the reason when that is not possible here;
 * the app then works as long as the page stays open.
 */
export async function watchUpdates(watching: Watching): Promise<Reason | undefined> {
  const reason = whyNotKept({ isSecureContext, hasServiceWorker: 'serviceWorker' in navigator });
  if (reason) return reason;

  // The worker file is always asked for anew: a host that lets it be cached could hold back a correction for a day.
  const kept = new Workbox(workerAddress('./sw.js'), { updateViaCache: 'none' });
  kept.addEventListener('activated', (event) => {
    if (!event.isUpdate && !event.isExternal) watching.onKept?.();
  });
  kept.addEventListener('waiting', () => watching.onReady());
  reloadOnChange(watching);
  try {
    await kept.register({ immediate: true });
  } catch (error) {
    return whyRefused(error);
  }
  worker = kept;
  document.addEventListener('visibilitychange', askForNewer);
  return undefined;
}

/** Lets the waiting version take over; every open tab saves what it has open and reloads once. */
export function applyUpdate(): void {
  worker?.messageSkipWaiting();
}

/** An installed app is seldom loaded anew, so it asks whenever it comes back into view. Offline that fails, silently. */
function askForNewer(): void {
  if (document.visibilityState === 'visible') worker?.update().catch(() => undefined);
}

/** At a first visit the page is taken under the worker's care, which is no new version. Every later change is. */
function reloadOnChange(watching: Watching): void {
  let cared = navigator.serviceWorker.controller !== null;
  let reloading = false;
  navigator.serviceWorker.addEventListener('controllerchange', async () => {
    const newer = cared && !reloading;
    cared = true;
    if (!newer) return;
    reloading = true;
    await watching.beforeReload?.();
    location.reload();
  });
}
