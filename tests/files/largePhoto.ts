import sharp from 'sharp';
import { drawnFrom } from '../../src/engine/chance';
import type { Outline, Point, Rgb, Size } from '../../src/engine/photo';
import { drawnPhoto } from './drawnPhotos';

export interface LargePhoto {
  readonly size: Size;
  readonly jpeg: Buffer;
  readonly zone: Outline;
  readonly green: readonly Rgb[];
  readonly sound: readonly Rgb[];
  /** Where green and sound surface can be tapped. */
  readonly at: Readonly<Record<'green' | 'sound', readonly Point[]>>;
  /** Green over all of the zone. */
  readonly share: number;
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
  const { width, height } = drawn.size;
  // Well inside a patch, or well off one: the same for some pixels around.
  const plain = (at: number, sort: 0 | 1): boolean =>
    [-8, 0, 8].every((x) => [-8, 0, 8].every((y) => drawn.isGreen[at + x + y * width] === sort));
  const spots = (sort: 0 | 1): number[] => {
    const places = [...drawn.inZone.keys()].filter((at) => drawn.inZone[at] === 1 && plain(at, sort));
    return [0.2, 0.5, 0.8].map((share) => places[Math.floor(share * places.length)] as number);
  };
  const colour = (at: number): Rgb => [...drawn.pixels.subarray(3 * at, 3 * at + 3)] as unknown as Rgb;
  const place = (at: number): Point => [((at % width) + 0.5) / width, (Math.floor(at / width) + 0.5) / height];
  const [green, sound] = [spots(1), spots(0)];
  return {
    ...{ size, jpeg, zone: drawn.zone, share: drawn.share },
    ...{ green: green.map(colour), sound: sound.map(colour) },
    at: { green: green.map(place), sound: sound.map(place) },
  };
};
