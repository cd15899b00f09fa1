import { readPhoto } from '../device/photo';
import type { PhotoBytes } from '../device/store';
import { StoreProblem } from '../device/storeProblem';
import type { Desk } from './desk';

/**
 * Makes the small copy of a photo that came from elsewhere: lists would else open the whole picture. The bytes are left as they are. Where
 * none can be made, there is none, as with a photo taken here.
 */
export const thumbOfArrived = async (desk: Desk, { sha256, mime, bytes }: PhotoBytes): Promise<void> => {
  try {
    if (await desk.store.thumb(sha256)) return;
    const { photo, thumb } = await readPhoto(new Blob([bytes], { type: mime }), { keepPlace: true });
    if (thumb && photo.sha256 === sha256) await desk.store.keepThumb(thumb);
  } catch (error) {
    if (!(error instanceof StoreProblem)) throw error;
  }
};
