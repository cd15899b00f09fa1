/**
 * 1 where a pixel that is 1 lies within `reach` pixels, to the side and up or down alike. A running count along rows, then along columns:
 * what it takes does not grow with the reach.
 */
export const near = (of: Uint8Array, width: number, height: number, reach: number): Uint8Array => {
  if (reach < 1) return of;
  const across = spread(of, height, width, width, 1, reach);
  return spread(across, width, height, 1, width, reach);
};

/** One way: each of `lines` lines of `length` pixels, lines `line` apart in memory, their pixels `step` apart. */
const spread = (
  of: Uint8Array,
  lines: number,
  length: number,
  line: number,
  step: number,
  reach: number,
): Uint8Array => {
  const out = new Uint8Array(of.length);
  for (let i = 0; i < lines; i++) {
    const start = i * line;
    let held = 0;
    for (let at = 0; at < Math.min(reach, length); at++) held += of[start + at * step] as number;
    for (let at = 0; at < length; at++) {
      if (at + reach < length) held += of[start + (at + reach) * step] as number;
      if (at - reach - 1 >= 0) held -= of[start + (at - reach - 1) * step] as number;
      out[start + at * step] = held > 0 ? 1 : 0;
    }
  }
  return out;
};
