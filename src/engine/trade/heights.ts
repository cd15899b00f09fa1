import { named } from './named';
import type { Source } from './source';

/** A rule on ladders, falls and scaffolds. Shown, not applied: local law and a competent person decide. */
export interface HeightRule {
  readonly id: string;
  readonly name: string;
  readonly value: number;
  readonly unit: 'share' | 'm' | 'load';
  readonly source: Source;
}

const seen = (text: string): Source => ({ text: `${text}, read as quoted.`, sure: 'seen' });
const memory = (text: string): Source => ({ text: `${text}.`, sure: 'from memory' });

export const heightRules: readonly HeightRule[] = named('heightRules', [
  {
    id: 'ladder foot',
    name: 'Foot of a ladder out from the wall, share of its working length',
    value: 0.25,
    unit: 'share',
    source: seen('29 CFR 1926.1053(b)(5)(i)'),
  },
  { id: 'rails', name: 'Rails above the landing', value: 0.9, unit: 'm', source: seen('29 CFR 1926.1053(b)(1)') },
  {
    id: 'fall building',
    name: 'Kept from falling, building work, from',
    value: 1.8,
    unit: 'm',
    source: memory('29 CFR 1926.501(b)'),
  },
  {
    id: 'fall usual',
    name: 'Kept from falling, other work, from',
    value: 1.2,
    unit: 'm',
    source: memory('29 CFR 1910.28(b)'),
  },
  {
    id: 'fall scaffold',
    name: 'Kept from falling, on a scaffold, above',
    value: 3.1,
    unit: 'm',
    source: seen('29 CFR 1926.451(g)(1)'),
  },
  {
    id: 'scaffold load',
    name: 'A scaffold carries so many times the load it is meant for',
    value: 4,
    unit: 'load',
    source: seen('29 CFR 1926.451(a)(1)'),
  },
]);

/** How high a person on the ground works with both hands, metres. */
export const workingReachStanding = {
  value: 1.6,
  source: { text: 'Common practice, no source.', sure: 'common practice, no source' },
} as const satisfies { value: number; source: Source };

/** Share of days added for weather to days on site. */
export const weatherFloat = { value: 0.3, source: { text: 'Our own choice.', sure: 'own choice' } } as const satisfies {
  value: number;
  source: Source;
};
