import { named } from './named';
import type { Source } from './source';

/** A way to go on with a work: what it does, who may, and what cannot be taken back. */
export interface OptionSort {
  readonly id: string;
  readonly name: string;
  readonly does: string;
  readonly who: string;
  readonly risks: string;
  /** What of it cannot be taken back; missing where all can. */
  readonly irreversible?: string;
  readonly irreversibleSize?: 'small' | 'large';
  /** Months for which what it leaves is said to hold elsewhere, where somebody says so. */
  readonly holds?: { readonly low: number; readonly high: number; readonly source: Source };
  /** It lays a colour, and may have to be done again once that is gone. */
  readonly laysColour?: true;
  /** Treatments of the logbook that were this option where it was taken before. */
  readonly treatments: readonly string[];
  readonly source: Source;
}

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };
const waxLives: Source = {
  text: 'Wax 6 to 24 months on outdoor metal, from reviews of coatings: from memory.',
  sure: 'from memory',
};

export const optionSorts: readonly OptionSort[] = named('optionSorts', [
  {
    id: 'keep waxing',
    name: 'Keep waxing',
    does: 'Wash and cold wax each year as now. It slows what comes back and hides nothing that is there.',
    who: 'The curator and a helper; hot wax is a contractor’s.',
    risks: 'Where the wax does not last, green and pits go on under it, and each year takes longer.',
    holds: { low: 6, high: 24, source: waxLives },
    treatments: ['wax', 'spot wax', 'hot wax'],
    source: practice,
  },
  {
    id: 'wax and local treatment',
    name: 'Wax and local treatment',
    does: 'Wax as now, and every so often the green is taken off and the colour laid anew in the worst zones alone.',
    who: 'Wax: the curator. The local work: a conservator, or a patineur under one.',
    risks: 'Patches that do not match, and some metal and old colour lost there each time.',
    irreversible: 'Each local strip takes a little of the surface for good.',
    irreversibleSize: 'small',
    laysColour: true,
    treatments: ['local colour'],
    source: practice,
  },
  {
    id: 'strip and repatinate',
    name: 'Strip and repatinate, then wax',
    does: 'All layers come off down to the metal, a new colour is laid with heat, then wax, and wax each year after.',
    who: 'A conservator decides and oversees; licensed hot work; the artist or the estate and the owner agree to the colour.',
    risks:
      'Lost tool marks, open pores, cracked inserts, a colour that is not the work’s; the insurer may not cover it.',
    irreversible: 'The old surface and the last traces of the first colour are gone for good.',
    irreversibleSize: 'large',
    laysColour: true,
    treatments: ['strip', 'repatination', 'cleaning by media'],
    source: practice,
  },
  {
    id: 'cause first',
    name: 'Remove the cause first',
    does: 'Sprinkler, drip, perch, salt or touch is taken away, then a season is watched before anything else is paid for.',
    who: 'The curator with the grounds staff; water and electrics by their trades.',
    risks: 'A season more of green; it may not have been the cause.',
    treatments: ['cause removed'],
    source: practice,
  },
  {
    id: 'investigate',
    name: 'Investigate',
    does: 'A conservator looks, tests and proposes in writing, with the whole record in hand.',
    who: 'A conservator.',
    risks: 'A test takes a small sample; the answer may be that nothing need be done.',
    treatments: [],
    source: practice,
  },
  {
    id: 'wait',
    name: 'Wait',
    does: 'Nothing new is done; rounds and looks go on, and the date of the next decision is set.',
    who: 'The curator.',
    risks: 'What grows goes on growing, and prices rise.',
    treatments: [],
    source: practice,
  },
  {
    id: 'other',
    name: 'Something else',
    does: '',
    who: '',
    risks: '',
    treatments: [],
    source: practice,
  },
]);

const byId = new Map(optionSorts.map((sort) => [sort.id, sort]));

/** The row of a sort, or undefined for a code this version does not know. */
export const optionSortOf = (id: string): OptionSort | undefined => byId.get(id);
