import { kindOf } from './kinds';
import type { Source } from './source';

/** Name under which `hazards` of a collection's scale may hold the hazard of a stain from above. */
export const stainKey = 'stain-from-above';

export const defaultScale = {
  version: '2026.1',
  /** Zone index under which action is due, 0 to 100. */
  actionLevel: 75,
  /** Hazard of a stain from above, whatever its kind. */
  stainHazard: 0.15,
  source: {
    text: 'Our thresholds, not a standard’s: no published index for outdoor bronze exists.',
    sure: 'own choice',
  } satisfies Source,
} as const;

/** The weights a score was made with. */
export interface Scale {
  /** Names the project's version and, where the collection changed it, the collection's own: "2026.1 + 3". A score carries it. */
  readonly id: string;
  /** 0 to 100. */
  readonly actionLevel: number;
  /** 0 to 1. */
  readonly stainHazard: number;
  /** Hazard of a kind, 0 to 1, or undefined for a kind this version does not know. */
  readonly hazardOf: (kind: string) => number | undefined;
}

/** What a collection set for itself; null for one that set nothing. An unknown kind stays unknown, whatever is set for it. */
export const scaleOf = (
  own: {
    readonly version: number;
    readonly hazards: Readonly<Record<string, number>>;
    readonly actionLevel: number;
  } | null,
): Scale => {
  const hazards = new Map(Object.entries(own?.hazards ?? {}));
  return {
    id: own ? `${defaultScale.version} + ${own.version}` : defaultScale.version,
    actionLevel: own?.actionLevel ?? defaultScale.actionLevel,
    stainHazard: hazards.get(stainKey) ?? defaultScale.stainHazard,
    hazardOf: (kind) => {
      const row = kindOf(kind);
      return row && (hazards.get(kind) ?? row.hazard);
    },
  };
};
