import type { Verdict } from '../../../engine/change';
import type { Reason } from '../../../engine/record';
import type { IndexLevel } from '../../parts';

export const shadeNames = ['index', 'condition', 'urgency', 'change', 'hold', 'outlines'] as const;

/** What the map is coloured and hatched by; 'outlines' leaves the photo to be seen. */
export type ShadeName = (typeof shadeNames)[number];

/** A step of the scale; paper without a hatch; nothing but a dashed edge, where nothing is known; nothing but an edge. */
export type Fill = IndexLevel | 'plain' | 'open' | 'bare';

/** One row of the key. */
export interface KeyRow {
  readonly code: string;
  readonly fill: Fill;
  readonly word: string;
  /** Drawn beside the letters of its zones: what changed is told by a shape as well. */
  readonly mark?: { readonly verdict: Verdict; readonly clearly: boolean };
}

/** What the map says of one zone. */
export interface ZoneShade {
  /** The row of the key it falls under. */
  readonly code: string;
  /** In words, for ears and as the link's name. */
  readonly said: string;
}

export interface Shading {
  readonly key: readonly KeyRow[];
  readonly of: (zone: string) => ZoneShade;
  /** Where it comes from. */
  readonly from: string;
  readonly caution?: readonly Reason[];
}

export const rowOf = ({ key, of }: Shading, zone: string): KeyRow => {
  const { code } = of(zone);
  return key.find((row) => row.code === code) ?? (key.at(-1) as KeyRow);
};
