import { named } from './named';
import type { Source } from './source';

/** Where a caution is said: once, short, where it matters. */
export type CautionPlace =
  | 'round'
  | 'ladder'
  | 'finding'
  | 'wash'
  | 'wax'
  | 'hot work'
  | 'basin'
  | 'insert'
  | 'photo'
  | 'after storm';

export interface Caution {
  readonly id: string;
  readonly name: string;
  readonly where: readonly CautionPlace[];
  readonly text: string;
  readonly source: Source;
}

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };

export const cautions: readonly Caution[] = named('cautions', [
  {
    id: 'ladder',
    name: 'Ladder',
    where: ['ladder'],
    text: 'Foot out one quarter of its working length, three points of contact, no tablet in hand while climbing. Local rules on heights come first.',
    source: {
      text: 'Quarter of the working length: 29 CFR 1926.1053(b)(5)(i), read as quoted. Three points of contact: from memory.',
      sure: 'seen',
    },
  },
  {
    id: 'lift-scaffold',
    name: 'Lift or scaffold',
    where: ['ladder'],
    text: 'Only with the training and the check your local rules ask; a scaffold is looked over by a competent person before each shift.',
    source: { text: '29 CFR 1926.451(f)(3), read as quoted.', sure: 'seen' },
  },
  {
    id: 'alone',
    name: 'Working alone',
    where: ['round', 'ladder'],
    text: 'Someone knows where you are and when you are due back. Not alone on a ladder or near water.',
    source: practice,
  },
  {
    id: 'loose-parts',
    name: 'Loose parts',
    where: ['round', 'finding', 'after storm'],
    text: 'One finger, no pulling, no ladder against it. Keep people away and tell whoever answers for the work.',
    source: practice,
  },
  {
    id: 'people-below',
    name: 'People below',
    where: ['ladder', 'finding'],
    text: 'Nobody under the ladder or the part you touch: cones or a helper, and tools on a line.',
    source: practice,
  },
  {
    id: 'basin',
    name: 'Basin, tide, pumps',
    where: ['basin'],
    text: 'Know the tide. Have pumps and lights switched off and locked off by a licensed electrician before you step in, even when drained.',
    source: practice,
  },
  {
    id: 'stepping-back',
    name: 'Stepping back',
    where: ['photo'],
    text: 'Never walk backwards with the screen before your eyes. Look behind you first: steps, kerbs, holes, traffic, the edge of the water.',
    source: practice,
  },
  {
    id: 'droppings',
    name: 'Droppings',
    where: ['wash', 'finding'],
    text: 'Wet them first, gloves and mask, wash hands. Large amounts are work for a firm that may do it.',
    source: practice,
  },
  {
    id: 'nests',
    name: 'Nests',
    where: ['round', 'finding', 'wash'],
    text: 'Leave a nest in use alone and come back later: local law may protect it.',
    source: practice,
  },
  {
    id: 'chemicals',
    name: 'Chemicals',
    where: ['wash', 'wax'],
    text: 'Read the safety sheet, wear what it asks, never mix, keep run-off out of soil and drains as your local rules say.',
    source: practice,
  },
  {
    id: 'solvents',
    name: 'Solvents near hot work',
    where: ['wax', 'hot work'],
    text: 'No solvent, wax rag or paste wax near a flame or warm metal. Rags go wet into a closed metal bin.',
    source: practice,
  },
  {
    id: 'hot-work',
    name: 'Hot work',
    where: ['hot work'],
    text: 'Torch work is for people licensed for it, with a permit, a clear zone of 11 m and a fire watch for as long as your fire authority and insurer ask.',
    source: {
      text: '35 ft and a watch of at least 30 minutes: 29 CFR 1910.252(a)(2), read as quoted; 60 minutes in NFPA 51B 2019, from memory.',
      sure: 'seen',
    },
  },
  {
    id: 'hot-metal',
    name: 'Hot metal',
    where: ['hot work', 'wax'],
    text: 'Dark bronze in summer sun burns skin: try with the back of the hand.',
    source: practice,
  },
  {
    id: 'inserts',
    name: 'Fragile inserts',
    where: ['insert', 'wash', 'hot work'],
    text: 'No pressure, no hot water, no flame near glass, enamel or stone. What heat an insert bears is for its conservator to say.',
    source: practice,
  },
]);

export const cautionsAt = (place: CautionPlace): readonly Caution[] =>
  cautions.filter((caution) => caution.where.includes(place));
