import { answerTo } from './answers';
import type { PixelsAsked, PixelsWay, ToldOf } from './asked';
import { atHand } from './atHand';
import { LeftOff } from './leftOff';

/** The same on the page, where there are no workers (tests). Nothing is kept at hand. */
export const askedHere = async (
  ask: PixelsAsked,
  { bring, heard, signal }: PixelsWay,
): Promise<ToldOf[keyof ToldOf] | undefined> => {
  const hand = atHand(bring);
  try {
    return await answerTo(ask, hand, async (done) => {
      await new Promise((go) => setTimeout(go));
      if (signal?.aborted) throw new LeftOff();
      heard?.(done);
    });
  } catch (error) {
    if (error instanceof LeftOff) return undefined;
    throw error;
  } finally {
    hand.letGo();
  }
};
