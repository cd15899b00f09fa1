import type { BodyOf } from '../record';
import { named, type Source } from '../trade';

type Area = BodyOf<'zone'>['versions'][number]['area'];
type Part = NonNullable<Area['parts']>[number];
export type Solid = Part['solid'];

/** A simple shape laid over a part of the work: what to measure, in metres, and the surface it makes, in m2. */
export interface SolidRow {
  readonly id: Solid;
  readonly name: string;
  /** Sizes in the order they are stored. */
  readonly asks: readonly string[];
  readonly surface: (sizes: readonly number[]) => number;
  readonly source: Source;
}

const geometry: Source = { text: 'Closed forms of elementary geometry.', sure: 'common practice, no source' };
const at = (sizes: readonly number[], index: number): number => sizes[index] ?? 0;

export const solids: readonly SolidRow[] = named('solids', [
  {
    id: 'cylinder',
    name: 'cylinder, its side',
    asks: ['width across', 'height'],
    surface: (s) => Math.PI * at(s, 0) * at(s, 1),
    source: geometry,
  },
  {
    id: 'cap',
    name: 'dome or cap, without its base',
    asks: ['width across the base', 'height'],
    surface: (s) => Math.PI * ((at(s, 0) / 2) ** 2 + at(s, 1) ** 2),
    source: geometry,
  },
  {
    id: 'cone',
    name: 'cone, its side',
    asks: ['width across the base', 'height'],
    surface: (s) => Math.PI * (at(s, 0) / 2) * Math.hypot(at(s, 0) / 2, at(s, 1)),
    source: geometry,
  },
  {
    id: 'box',
    name: 'box, all six faces',
    asks: ['length', 'width', 'height'],
    surface: (s) => 2 * (at(s, 0) * at(s, 1) + at(s, 0) * at(s, 2) + at(s, 1) * at(s, 2)),
    source: geometry,
  },
  {
    id: 'disc',
    name: 'disc, one face',
    asks: ['width across'],
    surface: (s) => Math.PI * (at(s, 0) / 2) ** 2,
    source: geometry,
  },
  {
    id: 'strip',
    name: 'strip: tape round it, times its height',
    asks: ['girth', 'height along the surface'],
    surface: (s) => at(s, 0) * at(s, 1),
    source: geometry,
  },
]);

const chosen: Source = { text: 'Chosen; shapes and tape follow a form only so far.', sure: 'own choice' };

/** How an area was found and how far off it may be, as a share to each side, read as a 90 % range. */
export const areaMethods: readonly {
  readonly id: Area['method'];
  readonly name: string;
  /** Null: the person who types it says how sure it is. */
  readonly error: number | null;
  readonly source: Source;
}[] = named('areaMethods', [
  { id: 'typed', name: 'typed', error: null, source: chosen },
  { id: 'solids', name: 'from simple shapes', error: 0.15, source: chosen },
  { id: 'strips', name: 'from strips of girth and height', error: 0.1, source: chosen },
  { id: 'outline', name: 'from an outline on a photo', error: 0.25, source: chosen },
]);

/** What a person may say of a typed area, as a share to each side. */
export const typedErrors: readonly {
  readonly id: string;
  readonly name: string;
  readonly error: number;
  readonly source: Source;
}[] = named('typedErrors', [
  { id: 'measured', name: 'measured or from drawings', error: 0.05, source: chosen },
  { id: 'estimated', name: 'estimated with care', error: 0.2, source: chosen },
  { id: 'guessed', name: 'a guess', error: 0.5, source: chosen },
]);

const withError = (m2: number, error: number, method: Area['method']): Area => ({
  m2,
  low: m2 * (1 - error),
  high: m2 * (1 + error),
  method,
});

const bySolid = new Map(solids.map((row) => [row.id, row]));

/** Surface of one part in m2: the solid's, times the share of it that belongs to the zone. */
export const partArea = (part: Part): number => (bySolid.get(part.solid)?.surface(part.sizes) ?? 0) * part.share;

/**
 * Area of a zone from its parts, m2, with its 90 % range. Parts err alike (a form is rounder or more folded than its shapes), so the
 * default share is taken of the sum, and more parts do not make it surer.
 */
export const areaOf = (parts: readonly Part[], method: 'solids' | 'strips'): Area => {
  const error = areaMethods.find(({ id }) => id === method)?.error ?? 0;
  return {
    ...withError(
      parts.reduce((sum, part) => sum + partArea(part), 0),
      error,
      method,
    ),
    parts: [...parts],
  };
};

/** A typed area, m2, and how far off it may be, as a share 0 to 1 to each side. */
export const typedArea = (m2: number, error: number): Area => withError(m2, error, 'typed');
