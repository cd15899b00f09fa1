interface Lock {
  release(): Promise<void>;
}

/** The Screen Wake Lock API (W3C Working Draft), as far as it is used here; not every browser has it. */
const wakeLock = (): { request(type: 'screen'): Promise<Lock> } | undefined =>
  (navigator as { wakeLock?: { request(type: 'screen'): Promise<Lock> } }).wakeLock;

/**
 * Keeps the screen from going dark until it is let go: on a ladder nobody has a hand free to wake it. The browser lets go by itself
 * whenever the page is hidden, so it is asked again when the page comes back. Refused (battery low, no such thing here) it goes dark,
 * and nothing is lost by it.
 */
export const keepAwake = (): (() => void) => {
  let wanted = true;
  let held: Lock | undefined;
  const ask = async () => {
    if (document.visibilityState !== 'visible') return;
    try {
      const lock = await wakeLock()?.request('screen');
      if (wanted) held = lock;
      else await lock?.release();
    } catch {
      // Refused: the screen goes dark as it always did.
    }
  };
  const again = () => void ask();
  document.addEventListener('visibilitychange', again);
  void ask();
  return () => {
    wanted = false;
    document.removeEventListener('visibilitychange', again);
    held?.release().catch(() => undefined);
  };
};

/** Whether the screen can be kept from going dark, found out by asking for it and letting go at once. */
export const canKeepAwake = async (): Promise<'yes' | 'refused' | 'none'> => {
  const asking = wakeLock();
  if (!asking) return 'none';
  try {
    await (await asking.request('screen')).release();
    return 'yes';
  } catch {
    return 'refused';
  }
};
