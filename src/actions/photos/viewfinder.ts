import { type Camera, openCamera } from '../../device/camera';
import { feelLevel, mayFeelLevel } from '../../device/level';
import type { Desk, Outcome } from '../desk';
import { attempt } from '../outcome';

export type { Camera };

/** The camera on the page, or the sentence that says why there is none. Whoever opens it closes it. */
export const openViewfinder = (): Promise<Outcome<{ readonly camera: Camera }>> =>
  attempt(async () => ({ camera: await openCamera() }));

/** What the camera sees, as a file named by when it was taken: such a photo carries no word of its own on that. */
export const takeFrame = (
  desk: Desk,
  camera: Camera,
  seen: HTMLVideoElement,
): Promise<Outcome<{ readonly file: Blob; readonly taken: string }>> =>
  attempt(async () => {
    const taken = desk.now();
    return { file: await camera.take(seen), taken };
  });

export { feelLevel, mayFeelLevel };
