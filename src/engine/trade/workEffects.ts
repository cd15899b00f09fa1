import type { Group, KindOfFinding } from './kindOfFinding';
import type { Source } from './source';

/** What a kind of work takes away for the time being, so far as a plan of money may count on it. */
export interface WorkEffect {
  /** Code of treatments. */
  readonly type: string;
  readonly groups: readonly Group[];
  /** Kinds of other groups. */
  readonly kinds: readonly string[];
  /** Not counted on for a finding that covers more than this share of the zone. */
  readonly upTo?: number;
  /** Only together with this, where it has a price of its own. */
  readonly with?: string;
  readonly source: Source;
}

const ours: Source = {
  text: 'This project’s own reading of common practice: what each work is done for. How well it does it is not in it.',
  sure: 'own choice',
};

/** In the order they are offered. A work not here can be recorded, but no money is shared out by it. */
export const workEffects: readonly WorkEffect[] = [
  { type: 'wash', groups: ['deposit', 'life'], kinds: ['sooty-deposit'], source: ours },
  { type: 'wax', groups: [], kinds: ['wax-worn', 'finish-thinned', 'tarnish'], with: 'wash', source: ours },
  { type: 'local treatment', groups: ['green', 'dark', 'bare', 'white'], kinds: [], upTo: 0.3, source: ours },
  {
    type: 'cleaning by media',
    groups: ['green', 'dark', 'white', 'deposit', 'life'],
    kinds: [],
    with: 'wax',
    source: ours,
  },
  { type: 'coating removed', groups: ['coating'], kinds: [], with: 'wax', source: ours },
  {
    type: 'repatination',
    groups: ['green', 'dark', 'bare', 'white', 'coating', 'deposit', 'life'],
    kinds: [],
    source: ours,
  },
  { type: 'repair', groups: ['metal', 'iron', 'water', 'insert', 'base'], kinds: [], source: ours },
];

const byType = new Map(workEffects.map((effect) => [effect.type, effect]));

export const workEffectOf = (type: string): WorkEffect | undefined => byType.get(type);

/** Whether a work is done for a kind of finding that covers so much (undefined: not told by area). */
export const settles = (effect: WorkEffect, { id, group }: KindOfFinding, cover: number | undefined): boolean =>
  (effect.groups.includes(group) || effect.kinds.includes(id)) && (cover ?? 0) <= (effect.upTo ?? 1);
