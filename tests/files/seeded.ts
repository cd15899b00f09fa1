/** A small seeded generator (mulberry32) and ids made from it, so that a test's data is the same on every machine. */
export interface Seeded {
  /** Uniform in [0, 1). */
  next(): number;
  /** Whole number from 0 up to, not including, n. */
  below(n: number): number;
  pick<T>(from: readonly T[]): T;
  /** UUIDv7 whose time part is the millisecond given. */
  id(ms: number): string;
}

export const seeded = (seed: number): Seeded => {
  let a = seed >>> 0;
  const next = () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = a;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const below = (n: number) => Math.floor(next() * n);
  const hex = (digits: number) => Array.from({ length: digits }, () => below(16).toString(16)).join('');
  return {
    next,
    below,
    pick: (from) => from[below(from.length)] as never,
    id: (ms) => {
      const time = Math.trunc(ms).toString(16).padStart(12, '0');
      return `${time.slice(0, 8)}-${time.slice(8)}-7${hex(3)}-${(8 + below(4)).toString(16)}${hex(3)}-${hex(12)}`;
    },
  };
};
