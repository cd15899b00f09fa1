import { coverageMethodOf, type Source } from '../trade';

interface EyeNumber {
  readonly value: number;
  /** What it is, with its unit. */
  readonly what: string;
  readonly source: Source;
}

const own = (value: number, what: string, why = 'Our own choice.'): EyeNumber => ({
  value,
  what,
  source: { text: why, sure: 'own choice' },
});

const byEye = coverageMethodOf('ladder');

/** Every number the measure of an eye rests on, beside the errors of engine/condition. */
export const eyeNumbers = {
  assumedSd: {
    value: byEye.ownSd as number,
    what: 'Spread of one person from one time to the next that is assumed until it is known: standard deviation on the logit',
    source: byEye.source,
  },
  assumedPairs: own(10, 'Pairs the assumed spread counts for beside those really made'),
  leastSd: own(0.2, 'No eye is held to be steadier than this: standard deviation on the logit'),
  toHundredths: own(
    0.01,
    'A known spread is told in steps of this, so that one more pair does not make every figure of the collection anew',
  ),
  patches: own(12, 'Patches in one eye check: about two minutes'),
  curveFrom: own(6, 'Patches from which a curve is drawn through what the eye said'),
  biasFrom: own(0.05, 'Chance of a mistake at which a bias is said to be shown'),
} as const satisfies Record<string, EyeNumber>;
