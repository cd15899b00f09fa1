import type { Source } from './source';

/** How the extent of a kind is told: share of the zone's area, a count, a length, or that it is there at all. */
export type Measure = 'area' | 'count' | 'length' | 'presence';

/** Groups the kinds are offered in. Green, bare metal and scale are summed apart, each held to the zone's area. */
export type Group =
  | 'green'
  | 'dark'
  | 'bare'
  | 'white'
  | 'coating'
  | 'metal'
  | 'iron'
  | 'water'
  | 'deposit'
  | 'life'
  | 'insert'
  | 'base';

/** Areas summed apart in m2, each held to the zone's area. */
export type ActiveArea = 'green' | 'bare' | 'scale';

export type ExclusiveLayer = 'surface' | 'wax' | 'lacquer';

/** All that is true of one kind of deterioration a person can see on an outdoor bronze. */
export interface KindOfFinding {
  /** Stable code, kebab-case; goes into the names of things and so is never renamed. */
  readonly id: string;
  readonly name: string;
  readonly group: Group;
  readonly measure: Measure;
  /** 0.05 (looks) to 1 (metal at stake): this project's own judgement, shown and editable. */
  readonly hazard: number;
  /** One sentence: why this hazard. */
  readonly why: string;
  /** One line a curator can hold against the surface. */
  readonly looksLike: string;
  /** What to ask or check on the spot, where something should be. */
  readonly asks?: string;
  /** At a stop word the app says "ask the conservator" and never a diagnosis. 'first time': only when it was not there before. */
  readonly stop?: 'always' | 'first time';
  /** Could hurt someone: opens a person check. */
  readonly personCheck?: true;
  /** A plain caution, where work near it can hurt a person or the work. */
  readonly caution?: string;
  /** Which active area in m2 it counts towards. */
  readonly countsAs?: ActiveArea;
  /** "Dirt, stain from above, or in the metal?" is worth asking: the three are often taken for each other here. */
  readonly asksOrigin?: true;
  /** Two kinds with the same word cannot cover the same spot, so together they cannot pass 100 % of the zone. */
  readonly onlyOneOf?: ExclusiveLayer;
  /** Urgency class proposed at least wherever it is seen and not stable. */
  readonly urgency?: 1 | 2 | 3;
  /** Recommendation class proposed: 0 nothing, 1 wash, wax, keep, 2 a test, a local treatment or a repair. Never 3. */
  readonly recommends: 0 | 1 | 2;
  readonly source: Source;
}
