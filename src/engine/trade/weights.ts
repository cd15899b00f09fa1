import { named } from './named';
import type { Source } from './source';

/** One row of a scale of weights: what is chosen on the pad and what it does to the loss. */
export interface Weighted<Id extends string> {
  readonly id: Id;
  readonly name: string;
  /** One line to hold against the surface. */
  readonly means: string;
  /** Factor in the loss of a finding, 0 to 1. */
  readonly weight: number;
  readonly source: Source;
}

const own: Source = { text: 'Our own weights; no published ones exist for outdoor bronze.', sure: 'own choice' };

export const severities: readonly Weighted<'slight' | 'moderate' | 'severe'>[] = named('severities', [
  { id: 'slight', name: 'Slight', means: 'colour or gloss only', weight: 0.4, source: own },
  { id: 'moderate', name: 'Moderate', means: 'texture or detail changed', weight: 0.7, source: own },
  { id: 'severe', name: 'Severe', means: 'depth, form or function visibly affected', weight: 1, source: own },
]);

/** `quiet`: left out of what counts as active. Unclear is not quiet: what is not known to be at rest is counted. */
export const activities: readonly (Weighted<'active' | 'unclear' | 'stable'> & { readonly quiet: boolean })[] = named(
  'activities',
  [
    {
      id: 'active',
      name: 'Active',
      means: 'powder, fresh colour, wet, bright metal, or grown since last time',
      weight: 1,
      quiet: false,
      source: own,
    },
    { id: 'unclear', name: 'Unclear', means: 'assumed unless said', weight: 0.85, quiet: false, source: own },
    {
      id: 'stable',
      name: 'Stable',
      means: 'dry, dull, holds fast, the same as on the earlier photo',
      weight: 0.7,
      quiet: true,
      source: own,
    },
  ],
);

/** Extent of kinds that are counted. */
export const counts: readonly Weighted<'one' | 'two to five' | 'more'>[] = named('counts', [
  { id: 'one', name: 'One', means: 'a single one', weight: 0.6, source: own },
  { id: 'two to five', name: 'Two to five', means: 'a few', weight: 0.8, source: own },
  { id: 'more', name: 'More', means: 'six or more', weight: 1, source: own },
]);

/** `hazard`: which hazard the finding takes: its kind's own, that of a stain, or none. */
export const origins: readonly {
  readonly id: 'dirt' | 'stain' | 'metal';
  readonly name: string;
  readonly means: string;
  readonly hazard: 'none' | 'stain' | 'kind';
  readonly source: Source;
}[] = named('origins', [
  {
    id: 'dirt',
    name: 'Dirt',
    means: 'lies on the surface; looked at again after washing',
    hazard: 'none',
    source: own,
  },
  {
    id: 'stain',
    name: 'Stain from above',
    means: 'brought by water from another place; say from where',
    hazard: 'stain',
    source: own,
  },
  { id: 'metal', name: 'In the metal', means: 'of this surface itself', hazard: 'kind', source: own },
]);

const rowOf = <Row extends { readonly id: string }>(rows: readonly Row[]) => {
  const byId = new Map<string, Row>(rows.map((row) => [row.id, row]));
  return (id: Row['id']): Row => byId.get(id) as Row;
};

export const severityOf = rowOf(severities);
export const activityOf = rowOf(activities);
export const countOf = rowOf(counts);
export const originOf = rowOf(origins);
