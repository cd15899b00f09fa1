import sharp from 'sharp';
import { type Drawn, drawnFrom, noiseAt } from '../../src/engine/chance';
import { contains, type Outline, type Point, type Rgb, type Size } from '../../src/engine/photo';
import { cornersOf, drawnZone, patchedSurface, raggedSurface, sceneHeight, sceneMiddle } from './drawnSurface';

/** What is to be drawn: a zone of bronze on a photo, part of it green, and how the photo was taken. */
export interface Drawing {
  readonly seed: number;
  /** Share of the zone that is green, 0 to 1; what comes out is told to the pixel. */
  readonly coverage: number;
  /** Rounded patches with edges that can be traced, or a ragged film down to specks. */
  readonly pattern?: 'patches' | 'ragged';
  /** Pixels; it is three quarters as high. */
  readonly width?: number;
  /** The camera held askew, degrees. */
  readonly turn?: number;
  /** Light falling across: natural logarithm of how much brighter one side of the picture is than the other. */
  readonly light?: number;
  /** All of the light, times this. */
  readonly exposure?: number;
  /** Standard deviation of each value of each pixel, of 255. */
  readonly noise?: number;
  /** Share of the zone under highlights, about. */
  readonly glare?: number;
  /** How thin the green gets in places, and how greenish the sound surface: 0 to 1. */
  readonly thin?: number;
  /** How strongly leaves and sky are mirrored in places, green or not: 0 to 1. */
  readonly leaves?: number;
  readonly sound?: Rgb;
  readonly green?: Rgb;
}

export interface DrawnPhoto {
  readonly size: Size;
  /** Red, green, blue of each pixel, row by row. */
  readonly pixels: Uint8Array;
  readonly zone: Outline;
  /** One number a pixel: 1 inside the zone. */
  readonly inZone: Uint8Array;
  /** 1 where the surface is green, under glare or not. */
  readonly isGreen: Uint8Array;
  /** 1 where a highlight hides the surface. */
  readonly inGlare: Uint8Array;
  /** 1 where the surface looks as its sort does: no thin film, nothing mirrored, neither dark nor blown. */
  readonly isPlain: Uint8Array;
  /** Green pixels of the zone over its pixels. */
  readonly share: number;
  /** The edges of the patches as a steady hand would tap them; none for a ragged film. */
  readonly patches: Outline;
  /** Width of the largest patch, share of the photo width; 0 for a ragged film. */
  readonly largestPatch: number;
}

const toLinear = (v: number): number => (v <= 10.31475 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4);
const toByte = (v: number): number => 255 * (v <= 0.0031308 ? v * 12.92 : 1.055 * v ** (1 / 2.4) - 0.055);

/** Light of leaves on a polished skin, linear. */
const foliage = [0.05, 0.14, 0.07];

type Layers = [isGreen: Uint8Array, inGlare: Uint8Array, isPlain: Uint8Array, pixels: Uint8Array];

/** Where the camera sees a place of the scene, and where a pixel lies in it. */
const cameraOf = (turn: number, size: Size) => {
  const angle = (turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const held = (n: number): number => Math.min(1, Math.max(0, n));
  const onPhoto = ([x, y]: Point): Point => {
    const [dx, dy] = [x - sceneMiddle.x, y - sceneMiddle.y];
    return [held(sceneMiddle.x + cos * dx - sin * dy), held((sceneMiddle.y + sin * dx + cos * dy) / sceneHeight)];
  };
  const pixel = (at: number): Point => [
    ((at % size.width) + 0.5) / size.width,
    (Math.floor(at / size.width) + 0.5) / size.height,
  ];
  const inScene = (at: number): Point => {
    const [x, y] = pixel(at);
    const [dx, dy] = [x - sceneMiddle.x, y * sceneHeight - sceneMiddle.y];
    return [sceneMiddle.x + cos * dx + sin * dy, sceneMiddle.y - sin * dx + cos * dy];
  };
  return { onPhoto, pixel, inScene };
};

/** Highlights at places of the zone: how much white each adds, linear. */
const shineOf = (drawn: Drawn, glare: number, places: readonly Point[]) => {
  const spots = Array.from({ length: Math.round(glare * 250) }, () => {
    const [x, y] = places[drawn.below(places.length)] as Point;
    return { x, y, across: 0.012 + 0.02 * drawn.uniform(), along: 0.006 + 0.02 * drawn.uniform() };
  });
  return (x: number, y: number): number => {
    let shine = 0;
    for (const spot of spots) {
      const off = ((x - spot.x) / spot.across) ** 2 + ((y - spot.y) / spot.along) ** 2;
      if (off < 4) shine += 1.5 * Math.exp(-(off ** 2));
    }
    return shine;
  };
};

export const drawnPhoto = (drawing: Drawing): DrawnPhoto => {
  const { seed, coverage, pattern = 'patches', width = 640, turn = 0 } = drawing;
  const { light = 0, exposure = 1, noise = 0, glare = 0, thin = 0, leaves = 0 } = drawing;
  const { sound = [92, 70, 50], green = [112, 150, 128] } = drawing;
  const size = { width, height: Math.round(width * sceneHeight) };
  const all = size.width * size.height;
  const drawn = drawnFrom(seed);
  const { onPhoto, pixel, inScene } = cameraOf(turn, size);
  const zone: Outline = [drawnZone(drawn).map(onPhoto)];
  const inZone = Uint8Array.from({ length: all }, (_, at) => (contains(zone, pixel(at)) ? 1 : 0));
  const inside = [...inZone.keys()].filter((at) => inZone[at] === 1);
  const places = inside.map(inScene);
  const surface = (pattern === 'patches' ? patchedSurface : raggedSurface)(seed + 1, coverage, places);
  const shineAt = shineOf(drawn, glare, places);
  const from = 2 * Math.PI * drawn.uniform();
  const sorts = [sound, green].map((rgb) => rgb.map(toLinear)) as [number[], number[]];

  const [isGreen, inGlare, isPlain, pixels] = [all, all, all, 3 * all].map((n) => new Uint8Array(n)) as Layers;
  for (let at = 0; at < all; at++) {
    const [x, y] = inScene(at);
    const is = surface.isGreen(x, y) ? 1 : 0;
    isGreen[at] = is;
    const side = ((x - sceneMiddle.x) * Math.cos(from) + (y - sceneMiddle.y) * Math.sin(from)) / 0.5;
    const lit = exposure * (0.8 + 0.4 * noiseAt(x, y, 0.05, seed + 5)) * Math.exp((light / 2) * side);
    const tint = 0.12 * (noiseAt(x, y, 0.12, seed + 9) - 0.5);
    const veil = thin * noiseAt(x, y, 0.03, seed + 13);
    const opaque = is ? 1 - veil : veil / 2;
    const mirrored = leaves * Math.max(0, 3 * noiseAt(x, y, 0.2, seed + 17) - 1.5);
    if (veil <= 0.5 * thin && mirrored < 0.1 && lit > 0.25 && lit < 3) isPlain[at] = 1;
    const shine = shineAt(x, y);
    if (shine > 0.4) inGlare[at] = 1;
    for (let c = 0; c < 3; c++) {
      const base = (sorts[0][c] as number) * (1 - opaque) + (sorts[1][c] as number) * opaque;
      const mirror = mirrored * (foliage[c] as number);
      const value = toByte((base + mirror) * lit * (1 + (c - 1) * tint) + shine) + noise * drawn.normal();
      pixels[3 * at + c] = Math.max(0, Math.min(255, Math.round(value)));
    }
  }
  return {
    size,
    pixels,
    zone,
    inZone,
    isGreen,
    inGlare,
    isPlain,
    share: inside.reduce((sum, at) => sum + (isGreen[at] as number), 0) / inside.length,
    patches: surface.patches.map((patch) => cornersOf(patch).map(onPhoto)),
    largestPatch: surface.patches.reduce((most, { radius }) => Math.max(most, 2 * radius), 0),
  };
};

/** The photo as a camera would keep it. `quality` 1 to 100. */
export const asJpeg = ({ pixels, size }: Pick<DrawnPhoto, 'pixels' | 'size'>, quality: number): Promise<Buffer> =>
  sharp(pixels, { raw: { ...size, channels: 3 } })
    .jpeg({ quality })
    .toBuffer();

/** The pixels of a photo, and the size they came in. */
export const readJpeg = async (bytes: Uint8Array): Promise<Pick<DrawnPhoto, 'pixels' | 'size'>> => {
  const { data, info } = await sharp(bytes).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return { pixels: new Uint8Array(data), size: { width: info.width, height: info.height } };
};
