import { named } from './named';
import type { Source } from './source';

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };

/** What is said of a work at the end of a year, the least first. */
export const yearVerdicts: readonly {
  readonly id: 'hold' | 'watch' | 'treat locally' | 'ask a conservator' | 'campaign';
  readonly name: string;
  readonly means: string;
  readonly source: Source;
}[] = named('yearVerdicts', [
  { id: 'hold', name: 'Hold', means: 'go on as this year', source: practice },
  { id: 'watch', name: 'Watch', means: 'more looks, nothing more yet', source: practice },
  { id: 'treat locally', name: 'Treat locally', means: 'a test, a repair or a small treatment', source: practice },
  { id: 'ask a conservator', name: 'Ask a conservator', means: 'before anything else is done', source: practice },
  { id: 'campaign', name: 'Campaign', means: 'prepare, pay for and follow a treatment', source: practice },
]);
