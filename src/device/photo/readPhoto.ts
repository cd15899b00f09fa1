import type { PhotoOptions, PhotoRead } from './photoRead';

/**
 * Reads a picture beside the page, one after the other: what it says of itself, its hash, a small copy. On the page itself
 * where no worker can be had. Rejects with a StoreProblem. Light: what does the reading comes when the first photo does.
 */
export const readPhoto = async (
  file: Blob & { readonly name?: string },
  options: Omit<PhotoOptions, 'name'> = {},
): Promise<PhotoRead> => {
  const asked = { ...options, name: file.name ?? '' };
  if (typeof Worker === 'function') return (await import('./readBeside')).readBeside(file, asked);
  return (await import('./takenIn')).takenIn(file, asked);
};
