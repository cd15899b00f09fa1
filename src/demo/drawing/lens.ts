import type { Picture } from './paint';

const BROWNS = [5, 6] as const;
const GLASS = 4;
const PALE = 10;
const DARK = 11;

/** A glass lens in its bezel, from the front; with a chip at its lower left edge, and a spot of light that tells two photos apart. */
export const paintLens = (
  { chip, light }: { readonly chip: boolean; readonly light: number },
  width = 240,
): Picture => {
  const pixels = new Uint8Array(width * width);
  const middle = width / 2;
  for (let y = 0; y < width; y++) {
    for (let x = 0; x < width; x++) {
      const out = Math.hypot(x - middle, y - middle) / middle;
      const onChip = chip && Math.hypot(x - width * 0.28, y - width * 0.72) < width * 0.035;
      const onLight = Math.hypot(x - width * (0.4 + light / 50), y - width * 0.36) < width * 0.06;
      pixels[y * width + x] = onChip ? DARK : colourAt(out, onLight, Math.floor(y / 40) % 2);
    }
  }
  return { width, height: width, pixels };
};

const colourAt = (out: number, onLight: boolean, row: number): number => {
  if (out > 0.82) return BROWNS[row] ?? BROWNS[0];
  if (out > 0.72) return DARK;
  return onLight ? PALE : GLASS;
};
