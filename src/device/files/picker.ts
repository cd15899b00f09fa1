import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import { refusedBy } from './refused';

/** The save picker, which TypeScript's DOM types do not know yet. */
type SavePicker = (options: { suggestedName: string }) => Promise<FileSystemFileHandle>;

const picker = (): SavePicker | undefined => (globalThis as { showSaveFilePicker?: SavePicker }).showSaveFilePicker;

export const canPick = (): boolean => picker() !== undefined;

/** Asks where to, from a tap; nothing is written yet. */
export const pickForSaving = async (name: string): Promise<FileSystemFileHandle> => {
  const ask = picker();
  if (!ask) throw new StoreProblem(deviceReason('way not here', { way: 'picker' }));
  try {
    return await ask.call(globalThis, { suggestedName: name });
  } catch (error) {
    throw refusedBy(error);
  }
};

/** Asks where to, and resolves when the file is written there. */
export const saveByPicker = async (file: File): Promise<void> => {
  const handle = await pickForSaving(file.name);
  try {
    const writable = await handle.createWritable();
    await writable.write(file);
    await writable.close();
  } catch (error) {
    throw refusedBy(error);
  }
};
