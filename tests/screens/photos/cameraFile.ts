import { vi } from 'vitest';
import type { Desk } from '../../../src/actions';

export const cameraFile = (bytes: Uint8Array, name: string, type = 'image/jpeg'): File =>
  new File([new Uint8Array(bytes)], name, { type });

const { digest } = crypto.subtle;

/**
 * The hash and the database are Node's own and take no bytes of jsdom's world: the hash is handed a copy, the bytes are not
 * kept. That they are kept and read back is promised in tests/device and tests/browser.
 */
export const withoutBytes = (desk: Desk): Desk => {
  vi.spyOn(crypto.subtle, 'digest').mockImplementation((name, data) =>
    digest.call(crypto.subtle, name, Buffer.from(data as ArrayBuffer)),
  );
  vi.spyOn(desk.store, 'keepPhoto').mockResolvedValue();
  return desk;
};
