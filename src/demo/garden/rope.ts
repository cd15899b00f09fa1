import { washAndWax } from './waxing';
import type { DemoWork } from './work';

export const rope: DemoWork = {
  number: 'SW-05',
  title: 'Rope and Patience',
  maker: 'invented for this demo',
  date: '1979',
  materials: 'Cast bronze',
  dimensions: 'Two seated figures on a bench, 1.4 m high',
  note: 'Visitors sit on it. Green low and flat; the question is bare metal by touch.',
  place: 'Saltlamp Walk, Vesperhythe: open, beside the quay steps',
  access: 'From the ground.',
  side: 'the bench front',
  standIn: [2024],
  zones: [
    {
      letter: 'A',
      name: 'Knees and laps',
      m2: 0.8,
      exposure: ['up', 'handled'],
      reach: 'ground',
      significance: 1.5,
      series: [
        { kind: 'bare-by-touch', cover: [20, 25, 35, 40, 5, 12], severity: 'moderate' },
        { kind: 'green-spots', cover: [2, 2, 2, 1, 0.5, 1], severity: 'slight' },
      ],
    },
    {
      letter: 'B',
      name: 'Heads and shoulders',
      m2: 1.1,
      exposure: ['up', 'open'],
      reach: 'ground',
      series: [{ kind: 'green-spots', cover: [5, 6, 5, 8, 6, 8], severity: 'slight' }],
    },
    {
      letter: 'C',
      name: 'Backs',
      m2: 1.2,
      exposure: ['vertical', 'open'],
      reach: 'ground',
      series: [{ kind: 'green-spots', cover: [2, 2, 3, 3, 3, 3], severity: 'slight' }],
    },
    {
      letter: 'D',
      name: 'Hands and rope',
      m2: 0.6,
      exposure: ['handled', 'recess'],
      reach: 'ground',
      significance: 1.5,
      series: [
        { kind: 'bare-by-touch', cover: [10, 10, 15, 20, 3, 8], severity: 'moderate' },
        { kind: 'green-spots', cover: [3, 4, 4, 5, 1, 2], severity: 'slight' },
      ],
    },
    {
      letter: 'E',
      name: 'Bench seat',
      m2: 1.0,
      exposure: ['up', 'handled'],
      reach: 'ground',
      series: [
        { kind: 'bare-by-touch', cover: [10, 10, 12, 15, 15, 15], severity: 'moderate', activity: 'stable' },
        { kind: 'green-spots', cover: [3, 3, 5, 5, 5, 4], severity: 'slight' },
      ],
    },
    {
      letter: 'F',
      name: 'Lower legs and base',
      m2: 0.7,
      exposure: ['vertical', 'splash'],
      reach: 'ground',
      series: [{ kind: 'green-line-at-water', cover: [8, 8, 10, 8, 10, 9], severity: 'slight' }],
    },
  ],
  treatments: [
    ...washAndWax([2021, 2022, 2023, 2024, 2025, 2026]),
    {
      type: 'local colour',
      date: '2024-06-12',
      zones: 'AD',
      by: 'Conservator',
      note: 'Knees, laps, hands and rope; two days.',
    },
  ],
  looks: [],
};
