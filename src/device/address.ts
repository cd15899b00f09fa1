/** Over https, or on this machine: only there browsers hash, lock, persist and keep the app for offline use. */
export const isSecureAddress = (): boolean =>
  globalThis.isSecureContext !== false && globalThis.crypto?.subtle !== undefined;
