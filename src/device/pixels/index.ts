/** What is told of a photo pixel by pixel, beside the page: colours at taps, masks, what changed between two photos. */
import type { PixelsAsked, PixelsWay, ToldOf } from './asked';

export type { Bring, ChangeAsked, ChangeShare, ChangeTold, KeptPhoto, MaskAsked, MaskTold, Taps } from './asked';

/**
 * Asks for the pixels of a photo, one question after the other in the order asked; undefined where it was left off. Rejects with a
 * StoreProblem where the photo gives no answer. Light: what does the work comes with the first question.
 */
export const workPixels = async <A extends PixelsAsked>(
  ask: A,
  way: PixelsWay,
): Promise<ToldOf[A['do']] | undefined> => {
  const { askedBeside } = await import('./askedBeside');
  return (await askedBeside(ask, way)) as ToldOf[A['do']] | undefined;
};
