import type { Desk } from './desk';

/**
 * Thing name of the surveyor set on this device, or ''. The setting belongs to the device, not to a collection: someone of
 * another collection (the demo's, say) is nobody here.
 */
export const whoIsAtWork = async (desk: Desk): Promise<string> => {
  const surveyor = desk.surveyor();
  const current = surveyor === '' ? undefined : await desk.store.current(surveyor);
  return current && !current.gone ? surveyor : '';
};
