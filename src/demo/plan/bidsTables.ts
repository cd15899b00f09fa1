import type { BodyOf } from '../../engine/record';
import type { PaperOf } from '../../engine/trade';

/** Prices are made up, in whole units of no currency; one a zone, in the order of their letters. Null: not priced. */
export interface DemoBid {
  readonly who: string;
  readonly date: string;
  readonly validUntil: string;
  readonly visited?: string;
  readonly prices: readonly (number | null)[];
  /** Areas the bidder measured, by letter. */
  readonly measured?: Readonly<Record<string, number>>;
  readonly named?: BodyOf<'bid'>['named'];
  readonly note?: string;
}

/** The foundry's is the quote of the options: 46 000. The studio's price of the joints is out of line, and the base ring is not in it. */
export const bidsForTheStair: readonly DemoBid[] = [
  {
    who: 'Foundry of the quay (invented)',
    date: '2026-03-16',
    validUntil: '2026-11-11',
    visited: '2026-03-09',
    prices: [4300, 3500, 5700, 5200, 6500, 5700, 2600, 8600, 3900],
    measured: { A: 1.7, H: 3.3 },
    named: [{ role: 'Patineur, on site throughout' }, { role: 'Foreman' }],
  },
  {
    who: 'Workshop inland (invented)',
    date: '2026-03-23',
    validUntil: '2026-09-30',
    visited: '2026-03-10',
    prices: [4600, 3700, 6100, 5500, 6900, 6100, 2900, 9200, 4300],
    measured: { E: 3.1 },
    named: [{ role: 'Conservator of metals' }],
  },
  {
    who: 'Studio of the headland (invented)',
    date: '2026-03-30',
    validUntil: '2026-12-31',
    prices: [4200, 3400, 5600, 5100, 6300, 5500, 6400, 8400, null],
    note: 'Priced from the photographs.',
  },
];

/** Whole marks of each scorer: a row a bid in the order above; method, people, documentation, programme. */
export const scorersOfTheStair = [
  { id: 's1', role: 'Steward', marks: ['8867', '7895', '5456'] },
  { id: 's2', role: 'Conservator', marks: ['7966', '8896', '5367'] },
  { id: 's3', role: 'Member of the board', marks: ['9878', '8787', '6556'] },
] as const;

/** What a mark is given on, in that order. */
export const markedByHand = ['method', 'people', 'documentation', 'programme'] as const;

/** One line a zone, in the order of their letters; then the lenses, and the report. */
export const pricesOfTheTable = {
  zones: [3300, 900, 2700, 2500, 2600, 2400, 1700],
  out: 350,
  shield: 600,
  report: 1400,
};

/** What the round of May 2025 saw, zone by zone. */
export const seenOnTheStair: Readonly<Record<string, string>> = {
  A: 'Even green film, about 65 %; wax worn through in places',
  B: 'Green spots, about 8 %',
  C: 'Even green film, about 50 %; a thin dark area',
  D: 'Green spots, about 15 %',
  E: 'Even green film, about 45 %; black crust, a little',
  F: 'Green spots, about 12 %',
  G: 'Green streaks from the welds, about 30 %; an open joint',
  H: 'Even green film, about 65 %; new pits, many',
  I: 'Green line at the water, about 70 %; new pits; salts to be drawn out first',
};

/** What the surface of the table showed in May 2023. */
export const seenOnTheTable: Readonly<Record<string, string>> = {
  A: 'Colour gone, even green film, about 40 %; stain of leaves',
  B: 'Green spots round the lenses, about 20 %',
  C: 'Even green film, about 22 %',
  D: 'Even green film, about 10 %',
  E: 'Even green film, about 25 %',
  F: 'Even green film, about 10 %',
  G: 'Green line at the water, about 25 %',
};

export interface DemoCause {
  readonly letters: string;
  readonly sort: string;
  readonly found: string;
  readonly seen: string;
  readonly state: BodyOf<'cause'>['state'];
  readonly changed?: string;
  readonly why?: string;
}

export const spray: DemoCause = {
  letters: 'HI',
  sort: 'basin spray',
  found: '2024-11-21',
  seen: 'In a westerly the jet reaches the lower arcs; the green line ends where it ends.',
  state: 'open',
};
export const weepHole: DemoCause = {
  letters: 'G',
  sort: 'weep hole',
  found: '2024-11-21',
  seen: 'Brown water from the second weld three days after rain.',
  state: 'removed',
  changed: '2025-04-10',
  why: 'Cleared with a wooden rod; dry since.',
};
export const limes: DemoCause = {
  letters: 'A',
  sort: 'tree',
  found: '2023-05-09',
  seen: 'Sticky film under the limes every June.',
  state: 'removed',
  changed: '2023-06-20',
  why: 'Two branches cut back.',
};

type Marks = Readonly<Record<string, BodyOf<'completeness'>['items'][number]['state']>>;

/** A paper of the garden: everything is there but what is named. */
export interface DemoPaper {
  readonly of: PaperOf;
  readonly date: string;
  readonly from?: string;
  readonly but: Marks;
  readonly letterSent?: string;
  readonly note?: string;
}

export const papersOfTheStair: readonly DemoPaper[] = [
  {
    of: 'proposal',
    date: '2025-11-18',
    from: 'Conservator',
    but: { alternatives: 'missing', 'after-care': 'missing', inserts: 'not asked' },
    letterSent: '2025-12-02',
    note: 'Chloride found in zone I. The proposal desalts there before any patina.',
  },
  { of: 'request', date: '2026-03-02', but: { ownership: 'missing', inserts: 'not asked' } },
];

export const papersOfTheTable: readonly DemoPaper[] = [
  { of: 'request', date: '2023-06-26', but: {} },
  { of: 'proposal', date: '2023-06-12', from: 'Conservator', but: {} },
  {
    of: 'report',
    date: '2023-10-30',
    from: 'Foundry team',
    but: {},
    letterSent: '2023-11-06',
    note: 'The layer log was missing at first and came on 20 November.',
  },
];

export interface DemoApproval {
  readonly of: BodyOf<'approval'>['of'];
  readonly date: string;
  readonly letter?: string;
  readonly m2?: number;
  readonly answer: BodyOf<'approval'>['answer'];
  readonly words: string;
  readonly signed: BodyOf<'approval'>['signed'];
}

/** What was put to those who must say yes in 2023, by the day it was put to them. */
export const approvalsOfTheTable: readonly DemoApproval[] = [
  {
    of: 'insert protection',
    date: '2023-09-04',
    letter: 'B',
    answer: 'yes',
    words:
      'L1, L3 and L4 are out and packed. L2 and L5 stay, shielded, with a sensor on the rim: 60 degrees and 40 K at most.',
    signed: [{ role: 'Glass conservator', on: '2023-09-04' }],
  },
  {
    of: 'sample area',
    date: '2023-09-06',
    letter: 'A',
    m2: 0.04,
    answer: 'yes',
    words: 'Fine nut shell at low pressure. Tool marks and the foundry stamp stand as before.',
    signed: [
      { role: 'Conservator', on: '2023-09-06' },
      { role: 'Steward', on: '2023-09-06' },
    ],
  },
  {
    of: 'colour',
    date: '2023-09-08',
    letter: 'A',
    answer: 'yes',
    words: 'Panel 3 of the sample board, looked at dry and wet, in shade and in sun.',
    signed: [
      { role: 'Estate of the artist', on: '2023-09-08' },
      { role: 'Conservator', on: '2023-09-08' },
    ],
  },
  {
    of: 'handover',
    date: '2023-11-22',
    answer: 'yes',
    words: 'Report whole, work walked round dry. Call-back for 36 months from today.',
    signed: [
      { role: 'Conservator', on: '2023-11-22' },
      { role: 'Steward', on: '2023-11-22' },
    ],
  },
];

/** The four photos of the card, and one of May 2026 that can be held against it. */
export const panelPhotos = [
  { field: 'dryShade', file: 'SW-03-panel-dry-shade', wet: false, sun: false, light: 0.9, time: '09:40' },
  { field: 'drySun', file: 'SW-03-panel-dry-sun', wet: false, sun: true, light: 1.15, time: '11:20' },
  { field: 'wetShade', file: 'SW-03-panel-wet-shade', wet: true, sun: false, light: 0.8, time: '09:50' },
  { field: 'wetSun', file: 'SW-03-panel-wet-sun', wet: true, sun: true, light: 1.05, time: '11:30' },
] as const;
