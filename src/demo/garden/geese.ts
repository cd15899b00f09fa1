import { washAndWax } from './waxing';
import type { DemoWork } from './work';

export const geese: DemoWork = {
  number: 'SW-04',
  title: 'Geese, Wind Dropping',
  maker: 'invented for this demo',
  date: '1983',
  materials: 'Cast bronze, three birds on one base',
  dimensions: '1.1 m high',
  note: 'Fine. Waxed every second year; leaving it alone is a decision too.',
  place: 'Saltlamp Walk, Vesperhythe: under the stone arcade',
  access: 'From the ground. Swallows nest in the arcade: keep away while they do, and follow the local rules on nests.',
  side: 'the arcade',
  zones: [
    {
      letter: 'A',
      name: 'Backs and upper wings',
      m2: 1.3,
      exposure: ['up', 'sheltered'],
      reach: 'ground',
      series: [{ kind: 'green-spots', cover: [0, 0, 0.5, 0.5, 0.5, 0.5], severity: 'slight', activity: 'stable' }],
    },
    {
      letter: 'B',
      name: 'Bellies',
      m2: 0.9,
      exposure: ['down', 'sheltered'],
      reach: 'ground',
      notLooked: 'nest',
      series: [{ kind: 'green-spots', cover: [0, 0, 0, 0, null, 0], severity: 'slight' }],
    },
    {
      letter: 'C',
      name: 'Necks and heads',
      m2: 0.5,
      exposure: ['vertical', 'sheltered'],
      reach: 'ground',
      series: [{ kind: 'green-spots', cover: [0.5, 0.5, 1, 0.5, 0.5, 1], severity: 'slight', activity: 'stable' }],
    },
    {
      letter: 'D',
      name: 'Legs and base',
      m2: 0.5,
      exposure: ['up', 'sheltered'],
      reach: 'ground',
      series: [{ kind: 'green-spots', cover: [1, 1, 1, 1, 2, 1], severity: 'slight', activity: 'stable' }],
    },
  ],
  treatments: washAndWax([2021, 2023, 2025]),
  looks: [],
};
