import type { BodyOf } from './bodies';
import type { Thing } from './current';

/** How well one surveyor's eye is known. The raw entry is never altered by it. */
export interface KnownEye {
  /**
   * Spread of the same person from one time to the next, standard deviation on the logit of coverage, already widened by the
   * t quantile for how few pairs it rests on: the sums use it as a normal one.
   */
  readonly sd: number;
  /** Pairs it rests on, beside the ten it is assumed to have from the start. */
  readonly pairs: number;
  /** Patches of eye checks it rests on. */
  readonly patches?: number;
}

/** Of the whole collection, and read by the sums of each work. */
export interface CollectionOwn {
  readonly scale: BodyOf<'scale'> | null;
  readonly holdRules: BodyOf<'holdRules'> | null;
  /** By thing name of the surveyor; who is not named is not known yet. */
  readonly eyes: Readonly<Record<string, KnownEye>>;
}

/**
 * All living things of one sculpture, as the sums read them: taken-away things left out,
 * rounds in order of date, zones in walking order (ended ones too), rounds said to be one already merged.
 */
export interface SculptureRecord extends CollectionOwn {
  readonly sculpture: Thing<'sculpture'>;
  readonly zones: readonly Thing<'zone'>[];
  readonly rounds: readonly Thing<'round'>[];
  readonly visits: readonly Thing<'visit'>[];
  readonly findings: readonly Thing<'finding'>[];
  readonly reratings: readonly Thing<'rerating'>[];
  readonly classSets: readonly Thing<'classSet'>[];
  readonly personChecks: readonly Thing<'personCheck'>[];
  readonly looks: readonly Thing<'look'>[];
  readonly treatments: readonly Thing<'treatment'>[];
  readonly inserts: readonly Thing<'insert'>[];
  /** Things this version does not know, by kind or by version of the body: shown, not scored, and said. */
  readonly unknown: readonly { readonly thing: string; readonly kind: string }[];
  /** Things on which two people spoke without seeing each other. */
  readonly unsettled: readonly string[];
  /** Living visits, findings and the like whose round or zone was taken away: in no sum, and said. */
  readonly adrift?: readonly string[];
}
