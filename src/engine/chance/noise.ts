/** A number in [0, 1) from a lattice point and a seed: the same on every machine. */
const lattice = (x: number, y: number, seed: number): number => {
  let h = Math.imul(x, 374761393) ^ Math.imul(y, 668265263) ^ Math.imul(seed, 2147483647);
  h = Math.imul(h ^ (h >>> 13), 1274126177);
  return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
};

const ease = (t: number): number => t * t * (3 - 2 * t);

const octave = (x: number, y: number, seed: number): number => {
  const x0 = Math.floor(x);
  const y0 = Math.floor(y);
  const tx = ease(x - x0);
  const ty = ease(y - y0);
  const top = lattice(x0, y0, seed) * (1 - tx) + lattice(x0 + 1, y0, seed) * tx;
  const bottom = lattice(x0, y0 + 1, seed) * (1 - tx) + lattice(x0 + 1, y0 + 1, seed) * tx;
  return top * (1 - ty) + bottom * ty;
};

/** Smooth value noise in [0, 1), three octaves; `scale` is the size of its largest patches. */
export const noiseAt = (x: number, y: number, scale: number, seed: number): number =>
  (octave(x / scale, y / scale, seed) * 4 +
    octave((x * 2) / scale, (y * 2) / scale, seed + 1) * 2 +
    octave((x * 4) / scale, (y * 4) / scale, seed + 2)) /
  7;
