/** Opened from the Home Screen, in a window of its own, and not in a browser tab. */
export const isInstalled = (): boolean =>
  (typeof matchMedia === 'function' && matchMedia('(display-mode: standalone)').matches) ||
  (navigator as { standalone?: boolean }).standalone === true;
