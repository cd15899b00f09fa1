/** A patch of known coverage, to hold against a surface: drawn shapes whose share of the frame is what it says. */
export interface CoveragePatch {
  /** SVG path of the pale shapes, holes included (even-odd), in units of the frame. */
  readonly path: string;
  /** Share of the frame inside the path, from its own corners: 0 to 1. */
  readonly share: number;
}

export const patchWidth = 96;
export const patchHeight = 64;

const columns = 48;
const rows = 32;
/** Same pattern on every device and day, so that a person's eye can learn it. */
const seed = 20_261;

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Mulberry32: small, even enough for drawing. */
const chance = (from: number) => {
  let state = from;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};

/** A hilly field: bumps strewn over the frame, of several sizes. Flooding it to a level gives spots, then patches, then all but holes. */
const field = (): Float64Array => {
  const random = chance(seed);
  const bumps = Array.from({ length: 42 }, (_, i) => ({
    x: (((i % 7) + 0.15 + 0.7 * random()) / 7) * columns,
    y: ((Math.floor(i / 7) + 0.15 + 0.7 * random()) / 6) * rows,
    high: 0.55 + 0.45 * random(),
    wide: 1.9 + 2.3 * random(),
    long: 0.75 + 0.9 * random(),
  }));
  const heights = new Float64Array((columns + 1) * (rows + 1));
  for (let r = 0; r <= rows; r += 1) {
    for (let c = 0; c <= columns; c += 1) {
      let sum = 0;
      for (const b of bumps) {
        const d = ((c - b.x) / b.wide) ** 2 + ((r - b.y) / (b.wide * b.long)) ** 2;
        sum += b.high * Math.exp(-d);
      }
      heights[r * (columns + 1) + c] = sum;
    }
  }
  return heights;
};

/** Height at a node; outside the frame everything is dry, so that shapes close along its edge. */
const heightAt = (heights: Float64Array, c: number, r: number): number =>
  c < 0 || r < 0 || c > columns || r > rows ? Number.NEGATIVE_INFINITY : (heights[r * (columns + 1) + c] ?? 0);

const within = (value: number, most: number): number => Math.min(Math.max(value, 0), most);
const place = (c: number, r: number): Point => ({
  x: (within(c, columns) / columns) * patchWidth,
  y: (within(r, rows) / rows) * patchHeight,
});

/** Where the level is crossed between two nodes. */
const crossing = (a: Point, b: Point, ha: number, hb: number, level: number): Point => {
  if (!Number.isFinite(ha)) return a;
  if (!Number.isFinite(hb)) return b;
  const t = (level - ha) / (hb - ha);
  return { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) };
};

/** Sides of a cell in turn: top, right, bottom, left. For each filling of its corners, from which side to which the shore runs, land on the left. */
const shores: Readonly<Record<number, readonly (readonly [number, number])[]>> = {
  1: [[3, 0]],
  2: [[0, 1]],
  3: [[3, 1]],
  4: [[1, 2]],
  5: [
    [3, 0],
    [1, 2],
  ],
  6: [[0, 2]],
  7: [[3, 2]],
  8: [[2, 3]],
  9: [[2, 0]],
  10: [
    [0, 1],
    [2, 3],
  ],
  11: [[2, 1]],
  12: [[1, 3]],
  13: [[1, 0]],
  14: [[0, 3]],
};

/** Marching squares: the closed shorelines of everything higher than the level. */
const shorelines = (heights: Float64Array, level: number): Point[][] => {
  const next = new Map<string, string>();
  const points = new Map<string, Point>();
  for (let r = -1; r <= rows; r += 1) {
    for (let c = -1; c <= columns; c += 1) {
      const corners = [
        [c, r],
        [c + 1, r],
        [c + 1, r + 1],
        [c, r + 1],
      ] as const;
      const h = corners.map(([x, y]) => heightAt(heights, x, y));
      const filled = h.reduce((bits, height, i) => (height > level ? bits | (1 << i) : bits), 0);
      const names = [`h${c},${r}`, `v${c + 1},${r}`, `h${c},${r + 1}`, `v${c},${r}`];
      for (const [from, to] of shores[filled] ?? []) {
        for (const side of [from, to]) {
          const name = names[side] as string;
          if (points.has(name)) continue;
          const [a, b] = [side, (side + 1) % 4];
          const [ca, cb] = [corners[a], corners[b]] as [readonly [number, number], readonly [number, number]];
          points.set(name, crossing(place(...ca), place(...cb), h[a] as number, h[b] as number, level));
        }
        next.set(names[from] as string, names[to] as string);
      }
    }
  }
  const lines: Point[][] = [];
  for (const start of points.keys()) {
    if (!next.has(start)) continue;
    const line: Point[] = [];
    for (let at: string | undefined = start; at !== undefined && next.has(at); ) {
      line.push(points.get(at) as Point);
      const to: string | undefined = next.get(at);
      next.delete(at);
      at = to;
    }
    lines.push(line);
  }
  return lines;
};

/** Corners are drawn to a hundredth of a unit, so the share is worked out from what is drawn. */
const drawn = (line: readonly Point[]): Point[] =>
  line.map(({ x, y }) => ({ x: Math.round(x * 100) / 100, y: Math.round(y * 100) / 100 }));

const signedArea = (line: readonly Point[]): number =>
  line.reduce((sum, a, i) => {
    const b = line[(i + 1) % line.length] as Point;
    return sum + a.x * b.y - b.x * a.y;
  }, 0) / 2;

const shareOf = (lines: readonly Point[][]): number =>
  Math.abs(lines.reduce((sum, line) => sum + signedArea(line), 0)) / (patchWidth * patchHeight);

const pathOf = (lines: readonly Point[][]): string =>
  lines.map((line) => `M${line.map(({ x, y }) => `${x} ${y}`).join('L')}Z`).join('');

const kept = new Map<number, CoveragePatch>();
let heights: Float64Array | undefined;

/** The patch that covers a share of 0 to 1 of its frame: the level is sought until the drawn shapes cover just that. */
export const coveragePatch = (share: number): CoveragePatch => {
  const already = kept.get(share);
  if (already) return already;
  heights ??= field();
  let low = 0;
  let high = Math.max(...heights);
  let lines: Point[][] = [];
  if (share > 0) {
    for (let i = 0; i < 24; i += 1) {
      const level = (low + high) / 2;
      lines = shorelines(heights, level).map(drawn);
      const covered = shareOf(lines);
      if (Math.abs(covered - share) < 0.0002) break;
      if (covered > share) low = level;
      else high = level;
    }
  }
  const patch = { path: pathOf(lines), share: shareOf(lines) };
  kept.set(share, patch);
  return patch;
};
