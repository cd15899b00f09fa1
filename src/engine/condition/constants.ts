import type { Source } from '../trade';

interface Constant {
  readonly value: number;
  /** What it is, with its unit. */
  readonly what: string;
  readonly source: Source;
}

const own = (value: number, what: string, why = 'Our own choice.'): Constant => ({
  value,
  what,
  source: { text: why, sure: 'own choice' },
});

/** Every number the sums of this folder rest on, apart from the weights of trade/. The method page shows these very rows. */
export const constants = {
  z90: {
    value: 1.6448536269514722,
    what: 'Standard deviations to each end of a 90 % range',
    source: { text: '95 % point of the normal distribution', sure: 'common practice, no source' },
  },
  z95: {
    value: 1.959963984540054,
    what: 'Standard deviations to each end of a 95 % range',
    source: { text: '97.5 % point of the normal distribution', sure: 'common practice, no source' },
  },
  coverageHeld: own(0.0005, 'Coverage is held this far from 0 and from 1 before its logit is taken, share'),
  coverageFloor: own(
    0.005,
    'Error in points of cover that no eye gets under, share; where coverage is nearer to 0 or 1 than this, it is turned into the logit as if it stood here, or half a percent would become half the zone',
  ),
  daySd: own(
    0.15,
    'Light and damp of the day, one shift for all zones of a round: standard deviation on the logit',
    'Chosen inside the published error between observers: Sykes, Horrill and Mountford 1983 (abstract).',
  ),
  betweenPersonsSd: own(
    0.35,
    'Two different persons: standard deviation of their difference on the logit, shared over a round',
    'Chosen inside the published error of observers drawn at random, 10 to 20 points at 90 %: Sykes, Horrill and Mountford 1983 (abstract).',
  ),
  lossCap: own(0.98, 'No single finding takes more than this off a zone'),
  fullExtent: own(1, 'Extent of kinds told by length or presence'),
  actionUrgency: own(2, 'Urgency class of a zone whose index is under the action level'),
  condition1From: own(80, 'Zone index from which findings are slight signs, CC1'),
  condition2From: own(55, 'Zone index from which findings are plain signs, CC2; under it strong signs, CC3'),
  stopCondition: own(2, 'Condition class at least, at a stop word'),
  stopUrgency: own(1, 'Urgency class at least, at a stop word: somebody waits for an answer'),
  metalAtStake: own(0.8, 'Hazard from which a severe active finding is CC3 by itself'),
  activeInMetal: own(0.03, 'Coverage from which a finding in the metal said to be active is UC1, share'),
  unclearInMetal: own(
    0.1,
    'Coverage from which a finding in the metal of unclear activity is UC1, share',
    'Our own choice: unclear is what the app assumes, and at 3 % two zones in three of a well-kept garden came out alike.',
  ),
  severeRecommendation: own(2, 'Recommendation class at least, at a severe active finding in the metal'),
  sculptureAsksFrom: own(
    1 / 3,
    'Share of the area seen that is CC3, from which a conservator is asked about the whole',
  ),
} as const satisfies Record<string, Constant>;

/** Groups of kinds that are of the metal and its frame, not of a film, a deposit or life on it. */
export const groupsInMetal: readonly string[] = ['green', 'dark', 'bare', 'metal', 'iron', 'water', 'base'];
