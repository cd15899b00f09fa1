/**
 * The worker: a picture is read, hashed and made small here, beside the page. The file comes as a handle, so that its bytes
 * never lie on the page before they are done with; they go back without a copy.
 */
import type { Reason } from '../../engine/record';
import { StoreProblem } from '../storeProblem';
import type { PhotoOptions, PhotoRead } from './photoRead';
import { takenIn } from './takenIn';

export interface PhotoAsked {
  readonly file: Blob;
  readonly options: PhotoOptions;
}

/** `failed`: a fault of the browser or of ours, in its own words. */
export type PhotoSaid = { readonly read: PhotoRead } | { readonly problem: Reason } | { readonly failed: string };

const say = (said: PhotoSaid, given: Transferable[] = []) => postMessage(said, { transfer: given });

addEventListener('message', async ({ data }: MessageEvent<PhotoAsked>) => {
  try {
    const read = await takenIn(data.file, data.options);
    say({ read }, [read.photo.bytes, ...(read.thumb ? [read.thumb.bytes] : [])]);
  } catch (error) {
    say(error instanceof StoreProblem ? { problem: error.reason } : { failed: String(error) });
  }
});
