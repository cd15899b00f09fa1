import { saveByDownload, saveByPicker, saveByShare, saveWays } from '../../device/files';
import type { Outcome } from '../desk';
import { attempt } from '../outcome';
import type { Prepared } from './prepareSurvey';

export type Way = 'picker' | 'share' | 'download' | 'text';

/** The ways this browser offers for this file, the surest first. 'text' is there for small files, last. */
export const waysToSave = (prepared: Prepared): readonly Way[] => saveWays(asFile(prepared));

const asFile = ({ bytes, name, mime }: Prepared): File => new File([bytes], name, { type: mime });

/** Hands the file over, from a tap. 'text' gives the text to show and copy. Closing the sheet is refused with 'save cancelled'. */
export const saveFile = (
  prepared: Prepared,
  way: Way,
): Promise<Outcome<{ readonly way: Way; readonly text?: string }>> =>
  attempt(async () => {
    if (way === 'text') return { way, text: new TextDecoder().decode(prepared.bytes) };
    await { picker: saveByPicker, share: saveByShare, download: saveByDownload }[way](asFile(prepared));
    return { way };
  });
