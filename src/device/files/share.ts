import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import { refusedBy } from './refused';

const canShare = (file: File): boolean => {
  try {
    return navigator.canShare?.({ files: [file] }) === true;
  } catch {
    return false;
  }
};

/** The file in a form the share sheet takes: as it is, or the same bytes as text, which more browsers let through. */
export const shareable = (file: File): File | undefined => {
  if (canShare(file)) return file;
  const asText = new File([file], `${file.name}.txt`, { type: 'text/plain' });
  return canShare(asText) ? asText : undefined;
};

/** Opens the share sheet. Browsers ask that this follows a tap within a few seconds. */
export const saveByShare = async (file: File): Promise<void> => {
  const taken = shareable(file);
  if (!taken) throw new StoreProblem(deviceReason('way not here', { way: 'share' }));
  try {
    await navigator.share({ files: [taken], title: file.name });
  } catch (error) {
    throw refusedBy(error);
  }
};
