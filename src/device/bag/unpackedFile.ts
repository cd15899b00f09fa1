import { bagReason } from '../../engine/bag';
import { StoreProblem } from '../storeProblem';
import type { ZipFile } from './zipDirectory';

const fault = (file: ZipFile, cause?: unknown) =>
  new StoreProblem(bagReason('bag: not unpacked', { path: file.name }), cause);

/**
 * The bytes of one file of a zip, as many as the directory says and not one more: what would swell beyond that is left off. Throws a
 * StoreProblem where they cannot be had.
 */
export const unpackedFile = async (zip: Blob, file: ZipFile): Promise<Uint8Array<ArrayBuffer>> => {
  const packed = zip.slice(file.start, file.start + file.packed);
  try {
    return file.deflated ? await inflated(packed, file) : new Uint8Array(await packed.arrayBuffer());
  } catch (error) {
    // A file that was taken away or changed on the disk is no longer read; nor is what does not inflate.
    throw error instanceof StoreProblem ? error : fault(file, error);
  }
};

const inflated = async (packed: Blob, file: ZipFile): Promise<Uint8Array<ArrayBuffer>> => {
  const reader = packed.stream().pipeThrough(new DecompressionStream('deflate-raw')).getReader();
  const bytes = new Uint8Array(file.bytes);
  let at = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    if (at + value.length > bytes.length) {
      await reader.cancel().catch(() => undefined);
      throw fault(file);
    }
    bytes.set(value, at);
    at += value.length;
  }
  if (at < bytes.length) throw fault(file);
  return bytes;
};
