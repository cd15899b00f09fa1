import { washAndWax } from './waxing';
import type { DemoWork } from './work';

export const fluke: DemoWork = {
  number: 'SW-06',
  title: 'Sleeping Fluke',
  maker: 'invented for this demo',
  date: '1987',
  materials: 'Cast bronze',
  dimensions: 'Reclining form 6.2 x 0.9 m on grass',
  note: 'Sprinkler moved in July 2023; the scale fades without treatment.',
  place: 'Saltlamp Walk, Vesperhythe: on grass, sprinkler on the west half until 2023',
  access: 'From the ground.',
  side: 'the south lawn',
  zones: [
    {
      letter: 'A',
      name: 'Upper face, west half',
      m2: 1.9,
      exposure: ['up', 'spray'],
      reach: 'ground',
      series: [
        { kind: 'hard-water-scale', cover: [30, 40, 35, 10, 5, 3], severity: 'moderate' },
        { kind: 'even-green-film', cover: [8, 10, 12, 10, 8, 6], severity: 'slight' },
      ],
    },
    {
      letter: 'B',
      name: 'Upper face, east half',
      m2: 1.9,
      exposure: ['up', 'open'],
      reach: 'ground',
      series: [
        { kind: 'hard-water-scale', cover: [2, 2, 2, 2, 1, 1], severity: 'slight', activity: 'stable' },
        { kind: 'even-green-film', cover: [5, 5, 6, 6, 6, 6], severity: 'slight' },
      ],
    },
    {
      letter: 'C',
      name: 'North flank',
      m2: 2.0,
      exposure: ['vertical', 'sheltered'],
      reach: 'ground',
      series: [{ kind: 'green-spots', cover: [2, 2, 2, 2, 2, 2], severity: 'slight', activity: 'stable' }],
    },
    {
      letter: 'D',
      name: 'South flank',
      m2: 2.0,
      exposure: ['vertical', 'spray'],
      reach: 'ground',
      series: [
        { kind: 'hard-water-scale', cover: [25, 30, 30, 8, 3, 3], severity: 'moderate' },
        { kind: 'even-green-film', cover: [6, 8, 8, 6, 5, 5], severity: 'slight' },
      ],
    },
    {
      letter: 'E',
      name: 'Fluke tips',
      m2: 0.6,
      exposure: ['up', 'open'],
      reach: 'ground',
      significance: 1.2,
      series: [{ kind: 'green-spots', cover: [4, 4, 5, 5, 4, 4], severity: 'slight' }],
    },
    {
      letter: 'F',
      name: 'Ground line',
      m2: 1.2,
      exposure: ['vertical', 'splash'],
      reach: 'ground',
      series: [
        { kind: 'hard-water-scale', cover: [40, 45, 45, 20, 12, 10], severity: 'moderate' },
        { kind: 'green-line-at-water', cover: [12, 14, 15, 12, 10, 9], severity: 'slight' },
      ],
    },
  ],
  treatments: [
    ...washAndWax([2021, 2022, 2023, 2025, 2026]),
    { type: 'cause removed', date: '2023-07-11', zones: 'ADF', by: 'Grounds staff', note: 'Sprinkler head moved.' },
  ],
  looks: [],
};
