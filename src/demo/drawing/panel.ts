import type { Picture } from './paint';

const SURFACE = 5;
const PANEL = 6;
const GREEN = 7;
const SHINE = 9;
const EDGE = 1;
const LINE = 11;

/** The sample panel held against the surface: how far it is wet, in sun, and how far green has come back beside it (0 to 1). */
export const paintPanel = (
  { wet, sun, green = 0 }: { readonly wet: boolean; readonly sun: boolean; readonly green?: number },
  width = 240,
): Picture => {
  const height = Math.round(width * 0.75);
  const pixels = new Uint8Array(width * height);
  const [left, right, top, foot] = [0.55, 0.92, 0.18, 0.82];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [u, v] = [x / width, y / height];
      const onPanel = u > left && u < right && v > top && v < foot;
      const onEdge = onPanel && (u < left + 0.01 || u > right - 0.01 || v < top + 0.015 || v > foot - 0.015);
      // One patch of light: broad and soft in sun, and a run of water along the seam where it is wet.
      const shines = (sun && Math.abs(u - 0.2 - v * 0.15) < 0.05) || (wet && Math.abs(v - 0.62) < 0.02 && u < left);
      const grown = Math.hypot(u - 0.16, (v - 0.85) * 0.75) < green * 0.3;
      const plain = onPanel ? PANEL : grown ? GREEN : shines ? SHINE : SURFACE;
      pixels[y * width + x] = onEdge ? EDGE : wet && !onPanel && v > 0.93 ? LINE : plain;
    }
  }
  return { width, height, pixels };
};
