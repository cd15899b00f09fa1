import { washAndWax } from './waxing';
import type { DemoWork } from './work';

export const supper: DemoWork = {
  number: 'SW-03',
  title: 'Supper by Five Lenses',
  maker: 'invented for this demo',
  date: '1991',
  materials: 'Cast bronze; five cast-glass lenses of 90 to 140 mm in bronze bezels',
  dimensions: 'Two figures at a table, 1.5 x 1.9 x 1.4 m',
  note: 'Stripped and hot-patinated in September 2023; the colour holds except round the bezels. Call-back until 22 November 2026.',
  place: 'Saltlamp Walk, Vesperhythe: half open, beside the lime trees',
  access: 'From the ground and one step; glass beside every working place.',
  side: 'the path',
  zones: [
    {
      letter: 'A',
      name: 'Table top',
      m2: 1.5,
      exposure: ['up', 'open'],
      reach: 'ground',
      significance: 1.5,
      series: [
        { kind: 'even-green-film', cover: [25, 35, 40, 0, 1, 3], severity: 'moderate' },
        { kind: 'organic-stain', origin: 'dirt', cover: [5, 5, 5, 3, 3, 3], severity: 'slight' },
      ],
      beading: ['sheets', 'sheets', 'wets', 'beads', 'beads', 'flattened'],
    },
    {
      letter: 'B',
      name: 'Bezels round the lenses',
      m2: 0.35,
      exposure: ['recess', 'splash'],
      reach: 'ground',
      significance: 1.5,
      series: [{ kind: 'green-spots', cover: [10, 15, 20, 0, 3, 8], severity: 'moderate', activity: 'active' }],
    },
    {
      letter: 'C',
      name: 'Left figure, upper',
      m2: 1.2,
      exposure: ['up', 'vertical', 'open'],
      reach: 'step',
      series: [
        { kind: 'even-green-film', cover: [15, 18, 22, 0, 0, 1], severity: 'slight' },
        { kind: 'droppings', origin: 'dirt', cover: [1, 1, 1, 1, 1, 1], severity: 'slight' },
      ],
    },
    {
      letter: 'D',
      name: 'Left figure, lower',
      m2: 1.1,
      exposure: ['vertical', 'sheltered'],
      reach: 'ground',
      series: [{ kind: 'even-green-film', cover: [8, 8, 10, 0, 0, 0], severity: 'slight' }],
    },
    {
      letter: 'E',
      name: 'Right figure, upper',
      m2: 1.15,
      exposure: ['up', 'vertical', 'open'],
      reach: 'step',
      series: [
        { kind: 'even-green-film', cover: [15, 20, 25, 0, 0, 1], severity: 'slight' },
        { kind: 'droppings', origin: 'dirt', cover: [1, 0, 1, 1, 1, 3], severity: 'slight' },
      ],
    },
    {
      letter: 'F',
      name: 'Right figure, lower',
      m2: 1.05,
      exposure: ['vertical', 'sheltered'],
      reach: 'ground',
      series: [{ kind: 'even-green-film', cover: [8, 10, 10, 0, 0, 0], severity: 'slight' }],
    },
    {
      letter: 'G',
      name: 'Stools and base',
      m2: 0.75,
      exposure: ['up', 'splash'],
      reach: 'ground',
      series: [{ kind: 'green-line-at-water', cover: [20, 20, 25, 0, 1, 3], severity: 'slight' }],
    },
  ],
  treatments: [
    ...washAndWax([2021, 2022, 2023, 2025, 2026]),
    {
      type: 'strip',
      date: '2023-09-04',
      by: 'Foundry team',
      note: 'Fine nut shell; sample area approved 6 September.',
    },
    {
      type: 'repatination',
      date: '2023-09-18',
      by: 'Foundry team',
      note: 'Four layers, hot; test panel approved 8 September with two sign-offs.',
    },
    { type: 'wax', date: '2023-09-21', product: 'hot then cold paste wax', coats: 2, by: 'Foundry team' },
  ],
  looks: [
    { zone: 'B', date: '2024-03-14', result: 'clear' },
    { zone: 'B', date: '2024-05-16', result: 'clear' },
    { zone: 'B', date: '2024-10-10', result: 'clear' },
    { zone: 'B', date: '2024-12-05', result: 'green' },
  ],
  inserts: ['L1', 'L2', 'L3', 'L4', 'L5'].map((lens, i) => {
    const seized = lens === 'L2' || lens === 'L5';
    const said = [
      seized ? 'Seized in its bezel.' : 'Comes out with its gasket.',
      lens === 'L5' ? 'One edge chip, known since before 2023.' : '',
      'Ask the glass conservator before any heat, shock or solvent comes near.',
    ];
    const note = said.filter(Boolean).join(' ');
    return {
      ...{ zone: 'B', material: `Cast glass, lens ${lens}`, removable: seized ? 'no' : 'yes', note },
      ...{ materialBy: 'by its looks', makerKnown: false },
      where: `Table top, ${i + 1} of five from the left`,
    };
  }),
};
