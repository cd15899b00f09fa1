import type { Entry } from '../../engine/record';
import type { Reader } from '../store';
import type { BagWay } from './asked';
import { bagBeside } from './beside';
import { LeftOff } from './leftOff';
import type { NotOpened, OpenAsked, SurveyOpened } from './opened';

/**
 * Reads a file beside the page; where this browser has no workers, here. Undefined where it was left off. Rejects with a StoreProblem
 * where it cannot be done.
 */
export const openedBeside = async (
  asked: OpenAsked,
  source: Pick<Reader, 'allEntries' | 'photosHere'>,
  way: BagWay = {},
): Promise<SurveyOpened | NotOpened | undefined> => {
  if (typeof Worker === 'function') {
    const entries: Entry[] = [];
    const part = (rows: readonly unknown[]) => void entries.push(...(rows as readonly Entry[]));
    const told = await bagBeside('open', asked, { ...way, part });
    return told?.ok ? { ...told, preview: { ...told.preview, entries } } : told;
  }
  const { opened } = await import('./opened');
  try {
    return await opened(asked, source, way);
  } catch (error) {
    if (error instanceof LeftOff) return undefined;
    throw error;
  }
};
