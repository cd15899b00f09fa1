import { named } from './named';
import type { Source } from './source';

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };

/** Sorts of survey round; only rounds of one type are compared without a warning. */
export const roundTypes: readonly {
  readonly id: 'annual' | 'autumn' | 'before treatment' | 'after treatment' | 'incident';
  readonly name: string;
  readonly means: string;
  readonly source: Source;
}[] = named('roundTypes', [
  { id: 'annual', name: 'Annual', means: 'the yearly round, dry and before washing', source: practice },
  { id: 'autumn', name: 'Autumn', means: 'the second look of the year, before winter', source: practice },
  { id: 'before treatment', name: 'Before treatment', means: 'the state work starts from', source: practice },
  {
    id: 'after treatment',
    name: 'After treatment',
    means: 'the state work ended in: the new baseline',
    source: practice,
  },
  { id: 'incident', name: 'Incident', means: 'after a storm, a blow, a theft, paint', source: practice },
]);
