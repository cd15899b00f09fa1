import sharp from 'sharp';
import { drawnFrom } from '../../src/engine/chance';
import type { Outline, Rgb, Size } from '../../src/engine/photo';
import { drawnPhoto } from './drawnPhotos';

export interface LargePhoto {
  readonly size: Size;
  readonly jpeg: Buffer;
  readonly zone: Outline;
  readonly green: readonly Rgb[];
  readonly sound: readonly Rgb[];
}

/** A photo of 12.6 megapixels with a camera's grain in it, a zone that takes up a quarter of it, and where to tap. */
export const largePhoto = async (): Promise<LargePhoto> => {
  const drawn = drawnPhoto({ seed: 11, coverage: 0.2, width: 1024, light: 0.4, noise: 2 });
  const size = { width: 4096, height: 3072 };
  const smooth = await sharp(drawn.pixels, { raw: { ...drawn.size, channels: 3 } })
    .resize(size.width, size.height)
    .raw()
    .toBuffer();
  const grain = drawnFrom(3);
  for (let at = 0; at < smooth.length; at++)
    smooth[at] = Math.max(0, Math.min(255, Math.round((smooth[at] as number) + 20 * (grain.uniform() - 0.5))));
  const jpeg = await sharp(smooth, { raw: { ...size, channels: 3 } })
    .jpeg({ quality: 92 })
    .toBuffer();
  const taps = (sort: 0 | 1): Rgb[] => {
    const places = [...drawn.inZone.keys()].filter((at) => drawn.inZone[at] === 1 && drawn.isGreen[at] === sort);
    return [0.2, 0.5, 0.8].map((share) => {
      const at = places[Math.floor(share * places.length)] as number;
      return [...drawn.pixels.subarray(3 * at, 3 * at + 3)] as unknown as Rgb;
    });
  };
  return { size, jpeg, zone: drawn.zone, green: taps(1), sound: taps(0) };
};
