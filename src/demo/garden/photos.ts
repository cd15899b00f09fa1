import { type Camera, sameSpot } from '../drawing/camera';

/** How the invented works are photographed. Every number here is made up. */
export interface DemoStation {
  readonly letter: string;
  readonly aim: string;
  readonly bearing: number;
  readonly distance: number;
  readonly height: number;
  readonly mark: string;
}

export interface DemoSentinel {
  readonly zone: string;
  readonly which: 'best' | 'worst';
  readonly find: string;
  /** Per cent of the square that is green, each May from 2021 to 2026. */
  readonly green: readonly [number, number, number, number, number, number];
}

export interface DemoPhotos {
  readonly stations: readonly DemoStation[];
  /** Years, counted from 2021, of which a photo from the first station is kept, and how it was taken. The last is the elevation. */
  readonly years: Readonly<Record<number, Camera>>;
  /** Height of the drawn work from the lowest to the highest of two places on the elevation, and those places in hundredths of its width. */
  readonly scale: {
    readonly top: readonly [number, number];
    readonly foot: readonly [number, number];
    readonly metres: number;
  };
  /** Letters, water running from each to the next. */
  readonly runOff: readonly string[];
  readonly sentinels?: readonly DemoSentinel[];
}

const taken = (camera: Partial<Camera>): Camera => ({ ...sameSpot, ...camera });

const round = (
  aims: readonly [string, string, string, string],
  distance: number,
  marks: readonly [string, string, string, string],
  first = 270,
): DemoStation[] =>
  (['A', 'B', 'C', 'D'] as const).map((letter, i) => ({
    letter,
    aim: aims[i] as string,
    bearing: (first + i * 90) % 360,
    distance,
    height: 1.5,
    mark: marks[i] as string,
  }));

export const photosOfGarden: Readonly<Record<string, DemoPhotos>> = {
  'SW-01': {
    stations: round(['Belt buckle', 'Left elbow', 'Middle of the back', 'Oar, at the grip'], 5, [
      'Brass stud in the third slab from the quay steps',
      'Corner of the flower bed',
      'Second lamp post, leg towards the work',
      'Drain cover, middle',
    ]),
    years: { 3: taken({ turn: 0.8, aside: -1.2, light: 0.92 }), 4: taken({ scale: 0.97, up: 0.6 }), 5: sameSpot },
    scale: { top: [50, 6], foot: [50, 100], metres: 2.6 },
    runOff: ['A', 'B', 'D', 'G'],
    sentinels: [
      {
        zone: 'E',
        which: 'best',
        find: 'Lee side, a hand under the belt, left edge along the seam of the coat',
        green: [0, 0, 0, 0.4, 0.5, 0.5],
      },
      {
        zone: 'D',
        which: 'worst',
        find: 'Weather side, second fold from the left, lower edge level with the knee',
        green: [18, 22, 27, 33, 34, 41],
      },
    ],
  },
  'SW-02': {
    stations: [
      ...round(['Third arc, middle', 'Second arc, edge', 'Base ring', 'Top arc, underside'], 9, [
        'Steel pin in the basin rim, at the pump',
        'Bench, left foot',
        'Steel pin in the basin rim, at the inlet',
        'Corner stone of the quay wall',
      ]),
      {
        letter: 'E',
        aim: 'Clamps on the spray side',
        bearing: 250,
        distance: 6,
        height: 3.4,
        mark: 'Lift, second stop',
      },
      { letter: 'F', aim: 'Top arc, upper face', bearing: 90, distance: 5, height: 5.2, mark: 'Lift, highest stop' },
    ],
    years: {
      0: taken({ turn: 1.1, scale: 0.96, aside: 1.4, light: 0.95 }),
      1: taken({ turn: -0.6, aside: -0.9, up: 0.8, light: 0.9 }),
      2: taken({ scale: 1.03, up: -1.1 }),
      // From a step further to the side: the one year in which no difference may be drawn.
      3: taken({ lean: 0.09, aside: 1, light: 0.86 }),
      4: taken({ turn: 0.4, scale: 0.98, aside: 0.7 }),
      5: sameSpot,
    },
    scale: { top: [48, 11], foot: [50, 104], metres: 4.9 },
    runOff: ['A', 'C', 'E', 'H', 'I'],
    sentinels: [
      {
        zone: 'D',
        which: 'best',
        find: 'Inner face of the second arc, a hand from its landward edge, at the weld',
        green: [4, 6, 9, 9, 13, 14],
      },
      {
        zone: 'A',
        which: 'worst',
        find: 'Crown of the top arc, between the two cast marks',
        green: [32, 41, 47, 58, 66, 73],
      },
    ],
  },
  'SW-03': {
    stations: round(['Middle lens', 'Left figure, shoulder', 'Table, from behind', 'Right figure, hands'], 3.5, [
      'Brass stud in the path',
      'Tree 14, root towards the table',
      'Hedge, gap',
      'Brass stud in the path, second',
    ]),
    years: { 4: taken({ turn: -0.5, aside: 0.8 }), 5: sameSpot },
    scale: { top: [25, 28], foot: [25, 108], metres: 1.5 },
    runOff: ['A', 'B'],
  },
  'SW-04': {
    stations: round(['Middle goose, breast', 'Left goose, wing', 'Backs', 'Right goose, neck'], 3, [
      'Arcade, second pillar',
      'Arcade, first pillar',
      'Wall niche',
      'Arcade, third pillar',
    ]),
    years: { 3: taken({ aside: 0.6, light: 0.88 }), 5: sameSpot },
    scale: { top: [52, 40], foot: [52, 104], metres: 1.1 },
    runOff: ['A', 'B', 'D'],
  },
  'SW-05': {
    stations: round(['Rope between the hands', 'Left figure', 'Back of the bench', 'Right figure'], 3.5, [
      'Brass stud before the bench',
      'Bin, left side',
      'Lawn edge, painted stone',
      'Lamp post',
    ]),
    years: { 4: taken({ scale: 1.02 }), 5: sameSpot },
    scale: { top: [33, 25], foot: [33, 112], metres: 1.4 },
    runOff: ['B', 'C', 'E'],
  },
  'SW-06': {
    stations: round(['Middle of the flank', 'Fluke', 'Back, from the lawn', 'Head'], 7, [
      'Sunk stone in the south lawn',
      'Lime tree 3',
      'Sunk stone in the north lawn',
      'Gravel edge',
    ]),
    years: { 2: taken({ turn: 0.7, light: 0.93 }), 5: sameSpot },
    scale: { top: [5, 90], foot: [97, 90], metres: 6.2 },
    runOff: ['B', 'D', 'F'],
  },
};
