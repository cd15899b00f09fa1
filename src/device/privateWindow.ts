/**
 * Whether the browser gives away a window that forgets everything when it is closed: Safari and Firefox refuse such a page a file system of
 * its own (from memory, 2026). False is no proof: Chromium 156 answers there as it does anywhere (measured: same quota, same answers).
 */
export const looksPrivate = async (): Promise<boolean> => {
  const storage = globalThis.navigator?.storage as StorageManager | undefined;
  // Not there: an older browser, or an insecure address. That says nothing.
  if (typeof storage?.getDirectory !== 'function') return false;
  try {
    await storage.getDirectory();
    return false;
  } catch {
    return true;
  }
};
