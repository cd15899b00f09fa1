import type { SculptureRecord } from '../record';
import type { Source } from '../trade';

interface HoldNumber {
  readonly value: number;
  /** What it is, with its unit. */
  readonly what: string;
  readonly source: Source;
}

const own = (value: number, what: string, why = 'Chosen for this project'): HoldNumber => ({
  value,
  what,
  source: { text: why, sure: 'own choice' },
});

/** Every number the holds rest on. What a collection sets for itself (return level, chance) takes the place of the row here. */
export const holdNumbers = {
  daysInMonth: {
    value: 30.4375,
    what: 'Days in a month of a hold: a Julian year in twelve',
    source: { text: '365.25 / 12', sure: 'common practice, no source' },
  },
  cleanWithin: {
    value: 14,
    what: 'A dry look within this many days of the coating shows whether the start was clean, days',
    source: {
      text: 'A look and a photo one to two weeks after the work: common practice, no source',
      sure: 'common practice, no source',
    },
  },
  returnLevel: own(0.03, 'Coverage of green in the metal from which it counts as back where nobody makes looks, share'),
  spot: own(1, 'Smallest bright green spot that counts as back in a look, cm2'),
  chance: own(0.25, 'Chance that the green is back at which the next coating is due, share'),
  cap: own(
    12,
    'A coating is renewed after this long at the latest, months',
    'Yearly care is the usual least: common practice, no source; the cap is our own choice',
  ),
  severeCap: own(
    6,
    'The same where it faces up, lies open to rain, or in salt or fountain spray, months',
    'A second visit half a year after the first: common practice, no source; the cap is our own choice',
  ),
  leastHold: own(3, 'Under this a next coating is no advice; the conservator is asked, months'),
  lastHolds: own(3, 'Holds of the zone itself the next date rests on; with fewer its group speaks'),
  endsForShape: own(5, 'Ends a group needs before it gets a shape of its own'),
  zonesForCurve: own(3, 'Zones a group needs before it gets a curve'),
  mostAlike: own(
    5,
    'Steepest shape a zone or a group borrows: years differ in rain and salt, so holds are never taken to be more alike',
  ),
  draws: own(400, 'Draws of zones behind a range'),
  rangeLevel: own(0.9, 'Share of the draws inside a range'),
  grain: own(0.25, 'In the draws of large groups ends are rounded to this, months'),
  grainFrom: own(300, 'Holds from which a group is large in that sense'),
  tellingFrom: own(
    1 / 3,
    'A look tells nearly as much while the chance that it finds green lies between this and one less this, share',
  ),
  year: own(364, 'The next coating is taken to come this long after the last, on the same weekday, days'),
  holdsForProof: own(5, 'Holds before they can be shown to get shorter'),
} as const satisfies Record<string, HoldNumber>;

/** Exposures under which a coating is renewed at half the time. */
export const severeExposures: { readonly codes: readonly string[]; readonly source: Source } = {
  codes: ['up', 'open', 'spray'],
  source: { text: 'Chosen for this project', sure: 'own choice' },
};

export interface HoldRules {
  /** 0: this project's own numbers. */
  readonly version: number;
  readonly returnLevel: number;
  readonly chance: number;
}

/** The rules in force: the collection's own, or this project's. */
export const rulesOf = ({ holdRules }: Pick<SculptureRecord, 'holdRules'>): HoldRules =>
  holdRules ?? { version: 0, returnLevel: holdNumbers.returnLevel.value, chance: holdNumbers.chance.value };
