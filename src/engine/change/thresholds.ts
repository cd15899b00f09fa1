import type { Source } from '../trade';

interface Threshold {
  readonly value: number;
  readonly what: string;
  readonly source: Source;
}

/** The numbers the verdicts rest on, beside the errors of engine/condition. The line itself is its z95. */
export const thresholds = {
  clearlyTimes: {
    value: 2,
    what: 'Over this many times the line a change is called clear',
    source: { text: 'Chosen for this project', sure: 'own choice' },
  },
  falseDiscovery: {
    value: 0.1,
    what: 'Share of false ones allowed among the changes of one page',
    source: {
      text: 'Procedure: Benjamini & Hochberg 1995, J. R. Statist. Soc. B 57:289-300; the level of 10 % is chosen for this project',
      sure: 'from memory',
    },
  },
  nothingCoverage: {
    value: 0.003,
    what: 'Coverage that "nothing found" stands for against a finding of the other round, fraction',
    source: {
      text: 'Chosen for this project; small occurrences are overlooked: Morrison et al. 2020, J. Plant Ecology 13:641',
      sure: 'own choice',
    },
  },
  nothingSd: {
    value: 0.9,
    what: 'Error of "nothing found" on the logit of coverage, standard deviation',
    source: { text: 'Chosen for this project', sure: 'own choice' },
  },
  smallNew: {
    value: 0.01,
    what: 'A new finding whose bin ends here or below may have been missed before',
    source: { text: 'Chosen for this project: the ladder step "<1"', sure: 'own choice' },
  },
} as const satisfies Record<string, Threshold>;
