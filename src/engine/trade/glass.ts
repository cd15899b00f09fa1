import { named } from './named';
import type { Source } from './source';

/** A glass as its data sheet tells it: E in GPa, alpha in 1/K, sigma the strength in bending or taken for it, MPa. */
export interface GlassData {
  readonly id: string;
  readonly name: string;
  readonly E: number;
  readonly nu: number;
  readonly alpha: number;
  readonly sigma: number;
  readonly source: Source;
}

export const glassData: readonly GlassData[] = named('glassData', [
  {
    ...{ id: 'float', name: 'Float glass, whole, as EN 572-1 has it', E: 70, nu: 0.2, alpha: 9.0e-6, sigma: 45 },
    source: { text: 'Data after EN 572 on the page of a glass maker.', sure: 'seen' },
  },
  {
    ...{ id: 'data sheet', name: 'Annealed soda-lime glass, data sheet', E: 71, nu: 0.23, alpha: 8.8e-6, sigma: 41 },
    source: { text: 'A data sheet, read.', sure: 'seen' },
  },
  {
    ...{ id: 'weathered', name: 'Weathered edge', E: 70, nu: 0.2, alpha: 9.0e-6, sigma: 20 },
    source: { text: 'The strength of a weathered edge is an assumption of ours.', sure: 'own choice' },
  },
]);

/** Glass set into a work: what the trade allows between two of its sides, kelvin; none where nobody can say. */
export interface GlassKind {
  readonly id: string;
  readonly name: string;
  readonly limit: number | undefined;
  readonly source: Source;
}

const industry: Source = { text: 'Pages of the glass industry; three agree.', sure: 'seen' };
const nobody: Source = {
  text: 'Stresses left from casting are not known. Common practice, no source.',
  sure: 'common practice, no source',
};

export const glassKinds: readonly GlassKind[] = named('glassKinds', [
  { id: 'unknown', name: 'Not known', limit: undefined, source: nobody },
  { id: 'cast', name: 'Cast, fused or blown', limit: undefined, source: nobody },
  { id: 'damaged', name: 'Cracked, chipped or weathered', limit: undefined, source: nobody },
  { id: 'annealed', name: 'Flat, annealed, whole', limit: 40, source: industry },
  { id: 'toughened', name: 'Flat, toughened, whole', limit: 200, source: industry },
]);

export const glassKindOf = (id: string): GlassKind | undefined => glassKinds.find((kind) => kind.id === id);
