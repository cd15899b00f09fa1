import type { BodyOf } from './bodies';
import type { Thing } from './current';

/**
 * All living things of one sculpture, as the sums read them: taken-away things left out,
 * rounds in order of date, zones in walking order (ended ones too), rounds said to be one already merged.
 */
export interface SculptureRecord {
  readonly sculpture: Thing<'sculpture'>;
  readonly scale: BodyOf<'scale'> | null;
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
