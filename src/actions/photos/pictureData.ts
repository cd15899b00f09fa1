import { pictureType } from '../../device/photo';
import type { Desk } from '../desk';

/** Pixels along the longer side: sharp at half a page of print, some 150 kB. */
const longest = 1200;

/**
 * A picture as a data: address, made small enough to lie within a file that is sent; undefined where its bytes are not here or no
 * picture. One at a time: a whole photo is unpacked.
 */
export const pictureData = async (desk: Desk, sha256: string): Promise<string | undefined> => {
  const kept = await desk.store.photo(sha256);
  const type = kept && pictureType(new Uint8Array(kept.bytes, 0, Math.min(kept.bytes.byteLength, 32)));
  if (!kept || !type) return undefined;
  const bitmap = await createImageBitmap(new Blob([kept.bytes], { type })).catch(() => undefined);
  if (!bitmap) return undefined;
  const scale = Math.min(1, longest / Math.max(bitmap.width, bitmap.height));
  const canvas = new OffscreenCanvas(Math.round(bitmap.width * scale), Math.round(bitmap.height * scale));
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  const small = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.82 });
  return `data:image/jpeg;base64,${base64(new Uint8Array(await small.arrayBuffer()))}`;
};

const base64 = (bytes: Uint8Array): string => {
  let text = '';
  for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return btoa(text);
};
