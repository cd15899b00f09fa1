/** Numbers that look drawn by chance and are the same for the same seed, on every machine. */
export interface Drawn {
  /** Uniform in [0, 1). */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
  /** Whole number from 0 up to, not including, n. */
  below(n: number): number;
}

/** Mulberry32: 32 bits of state, good enough to draw by and quick; not for secrets. `seed` is any whole number. */
export const drawnFrom = (seed: number): Drawn => {
  let state = seed >>> 0;
  let spare: number | undefined;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    // Box and Muller: two at a time. 1 - u keeps the logarithm off zero.
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
  return { uniform, normal, below: (n) => Math.floor(uniform() * n) };
};

/** A seed from a text, so that each work or zone draws its own numbers whatever the order they come in (FNV-1a, 32 bits). */
export const seedOf = (text: string, seed = 0): number => {
  let hash = (0x811c9dc5 ^ seed) >>> 0;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return hash;
};

/** Shuffles in place (Fisher and Yates). */
export const shuffle = <Rows extends unknown[] | Uint16Array>(rows: Rows, drawn: Drawn): Rows => {
  for (let i = rows.length - 1; i > 0; i--) {
    const j = drawn.below(i + 1);
    const row = rows[i];
    rows[i] = rows[j] as never;
    rows[j] = row as never;
  }
  return rows;
};
