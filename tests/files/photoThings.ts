import { writeSelector } from '../../src/engine/photo';
import { nameOf } from '../../src/engine/record';

interface Named {
  readonly sculpture: string;
  readonly elevation: string;
  readonly photo: string;
  readonly round: string;
  readonly zones: readonly [string, string];
  readonly coverage: object;
  readonly id: (n: number) => string;
}

/** One of each thing that speaks of photos and colours, all fields filled: kind, name and body. */
export const photoThings = ({ sculpture, elevation, photo, round, zones: [zone, other], coverage, id }: Named) => {
  const station = nameOf.station(id(20));
  const sentinel = nameOf.sentinel(id(21));
  const later = nameOf.photo('b'.repeat(64));
  const size = { width: 4000, height: 3000 };
  const selector = {
    type: 'SvgSelector',
    value: writeSelector([
      [
        [0.1, 0.1],
        [0.4, 0.1],
        [0.4, 0.5],
      ],
    ]),
  };
  const conditions = { illuminant: 'D65', observer: '10', geometry: 'd/8 included', aperture: 8 };
  const colour = { L: 38.02, a: 11.79, b: 13.66 };
  return [
    [
      'station',
      station,
      {
        ...{ sculpture, letter: 'A', aim: 'the shoulder', order: 1, bearing: 270, distance: 6, height: 1.5, lens: 35 },
        ...{ format: 'portrait', mark: 'stud', light: 'overcast', wet: 'dry', standHere: photo },
      },
    ],
    ['sentinel', sentinel, { sculpture, zone, which: 'worst', find: 'left of the seam', since: '2026-05-01' }],
    [
      'photo',
      later,
      {
        ...{ sculpture, sha256: 'b'.repeat(64), mime: 'image/jpeg', bytes: 9, ...size, taken: '2026-05-02T10:00:00' },
        ...{ orientation: 6, focal: 4.2, focal35: 26, gpsBlanked: false, placeKept: true, role: 'sentinel', station },
        ...{ sentinel, zone, round, light: 'overcast', wet: 'dry', washed: 'before wash' },
      },
    ],
    [
      'outline',
      nameOf.outline(elevation, zone),
      { sculpture, elevation, zone, target: { source: photo, selector }, obliquity: 1.3 },
    ],
    ['runOff', nameOf.runOff(zone, other), { sculpture, fromZone: zone, toZone: other }],
    [
      'photoFit',
      nameOf.photoFit(later, photo),
      {
        ...{ sculpture, photo: later, onto: photo, kind: 'similarity', size, ontoSize: size },
        pairs: [{ from: [0.1, 0.2], onto: [0.11, 0.21] }],
      },
    ],
    [
      'measure',
      nameOf.measure(later, sentinel, 'green-spots', 'dots'),
      {
        ...{
          sculpture,
          photo: later,
          about: sentinel,
          round,
          kind: 'green-spots',
          date: '2026-05-02',
          selector,
          coverage,
        },
        working: { seed: 7, dots: 4, answers: 'yng-', green: [{ at: [0.2, 0.2], colour: [120, 170, 140] }] },
      },
    ],
    [
      'reading',
      nameOf.reading(id(22)),
      { sculpture, quantity: 'colour', zone, date: '2026-05-02', values: [colour], ...conditions, instrument: 'lent' },
    ],
    [
      'agreedColour',
      nameOf.agreedColour(id(23)),
      { sculpture, zone, name: 'Panel 3', date: '2023-09-20', by: 'Ödön Invented', value: colour, ...conditions },
    ],
  ] as const;
};
