import { deviceBox } from './box';

/** Where what the device is set to is kept. */
export const settingsBox = 'patina-round.settings';

/** What is kept there, unchecked: the language must be known before anything that checks it is loaded. */
export const settingsKept = (): Record<string, unknown> => {
  const kept = deviceBox.read(settingsBox);
  return typeof kept === 'object' && kept !== null ? { ...kept } : {};
};
