import { canPick, saveByDownload, saveByPicker, saveByShare, saveWays } from '../../device/files';
import type { Desk, Outcome } from '../desk';
import { attempt } from '../outcome';
import { type BagPrepared, leftWith } from './prepareBag';
import type { Prepared } from './prepareSurvey';

export type Way = 'picker' | 'share' | 'download' | 'text';

/** The ways this browser offers for this file, the surest first. 'text' is there for small files of text, last. */
export const waysToSave = (prepared: Prepared | BagPrepared): readonly Way[] =>
  saveWays(asFile(prepared)).filter((way) => way !== 'text' || !('file' in prepared));

/** Whether a bag can be written straight into a file the person picks. */
export const canSaveStraight = canPick;

const asFile = (prepared: Prepared | BagPrepared): File =>
  'file' in prepared ? prepared.file : new File([prepared.bytes], prepared.name, { type: prepared.mime });

/**
 * Hands the file over, from a tap, and notes that it has left. 'text' gives the text to show and copy. Closing the sheet is refused
 * with 'save cancelled'.
 */
export const saveFile = (
  desk: Desk,
  prepared: Prepared | BagPrepared,
  way: Way,
): Promise<Outcome<{ readonly way: Way; readonly text?: string }>> =>
  attempt(async () => {
    if (way === 'text' && 'bytes' in prepared) return { way, text: new TextDecoder().decode(prepared.bytes) };
    if (way !== 'text')
      await { picker: saveByPicker, share: saveByShare, download: saveByDownload }[way](asFile(prepared));
    await leftWith(desk, prepared);
    return { way };
  });
