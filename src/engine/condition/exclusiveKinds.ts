import type { BodyOf, Reason } from '../record';
import { type ExclusiveLayer, kindOf } from '../trade';
import { because } from './reasonCodes';

const layers: readonly ExclusiveLayer[] = ['surface', 'wax', 'lacquer'];
/** Sums of decimal fractions carry dust in their last digits. */
const dust = 1e-9;

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** Kinds of one zone that cannot lie on the same spot and together pass 100 %; "perhaps" where the bins would still leave room. */
export const coverageConflicts = (
  findings: readonly Pick<BodyOf<'finding'>, 'kind' | 'origin' | 'coverage' | 'cleared'>[],
): readonly Reason[] =>
  layers.flatMap((layer) => {
    const here = findings.flatMap(({ kind, origin, coverage, cleared }) =>
      coverage && !cleared && origin !== 'dirt' && kindOf(kind)?.onlyOneOf === layer ? [{ kind, coverage }] : [],
    );
    const total = sum(here.map(({ coverage }) => coverage.value));
    if (total <= 1 + dust) return [];
    const sure = sum(here.map(({ coverage }) => coverage.low)) > 1 + dust;
    const params = {
      kinds: [...new Set(here.map(({ kind }) => kind))].sort().join(', '),
      percent: Math.round(total * 100),
    };
    return [
      because(sure ? 'coverage: more than the whole zone' : 'coverage: perhaps more than the whole zone', params),
    ];
  });
