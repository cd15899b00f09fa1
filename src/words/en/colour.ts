import { list, number } from '../format';
import { spoken } from '../tongue';

const tenths = (value: number): string => {
  const rounded = Math.round(value * 10) / 10;
  return Number.isInteger(rounded) ? `${number(rounded, 0)}.0` : number(rounded, 1);
};
const signed = (value: number): string => tenths(value).replace('-', '−');

/** The larger step first; what rounds to nothing is not said. */
const direction = (parts: { readonly L: number; readonly a: number; readonly b: number }): string => {
  const steps = [
    { by: parts.L, up: 'lighter', down: 'darker' },
    { by: parts.a, up: 'redder', down: 'greener' },
    { by: parts.b, up: 'yellower', down: 'bluer' },
  ]
    .filter(({ by }) => Math.abs(by) >= 0.05)
    .sort((one, other) => Math.abs(other.by) - Math.abs(one.by))
    .map(({ by, up, down }) => `${by > 0 ? up : down} by ${tenths(Math.abs(by))}`);
  return steps.length === 0 ? 'the same in all three figures' : list(steps);
};

/** Words of the screens of colour. */
export const colour = spoken('colour', 'colour', {
  title: 'Colour',
  lead: 'What an instrument read, held against the colour that was agreed and against the reading before.',
  noPhotos: 'No figure on this page comes from a photo.',
  noPhotosWhat:
    'A photo holds the light and the weather as much as the colour. Photos are looked at side by side; a difference is told only between readings of an instrument, made in the same way.',
  toCompare: 'Lay photos side by side',
  none: 'No colour was read yet',
  noneWhat:
    'When a conservator comes with a colorimeter or a spectrophotometer, ask for three placings or more on each spot, for L*, a* and b* of each, and for how they were read. Write down where it was placed, so that it can be placed there again.',
  addReading: 'Write down a reading',
  addAgreed: 'Write down an agreed colour',

  agreed: 'Agreed colours',
  agreedLead: 'What the surface is to keep, as it was agreed.',
  agreedNone:
    'None is written down. Where a colour was approved after a treatment, write it here: readings are then held against it.',
  agreedBy: (day: string, by: string) => `Agreed ${day}, by ${by}`,
  keptAt: (where: string) => `Panel: ${where}`,
  editAgreed: (name: string) => `Change “${name}”`,

  spots: 'Spots that were read',
  spotsLead: 'A spot is one place the instrument was put down at. The one read last comes first.',
  wholeWork: 'The whole work',
  place: (letter: string, name: string) => `${letter}, ${name}`,
  square: (which: 'best' | 'worst', letter: string) => `${which === 'best' ? 'Best' : 'Worst'} square, zone ${letter}`,
  placeGone: 'A place that is not here any more',
  unnamed: 'Spot not described',
  lastRead: (day: string) => `Read ${day}`,
  agreedShort: 'Agreed',
  fromAgreed: 'From the agreed colour',
  fromAgreedNamed: (name: string) => `From the agreed colour “${name}”`,
  noAgreed: 'No colour was agreed for it by then.',
  since: (day: string) => `Since ${day}`,
  sinceBefore: 'Since the reading before',
  firstReading: 'This is the first reading of this spot.',
  units: (value: number, low: number, high: number) => `${tenths(value)} units (${tenths(low)} to ${tenths(high)})`,
  direction,
  within: 'Nothing that stands out: putting the instrument down again may do as much.',
  notTold: 'No difference is told.',
  why: 'What this rests on',
  whyHide: 'Hide what this rests on',
  readAgain: 'Read this spot again',
  agreeOn: 'Take the last reading as agreed colour',
  chart: 'Distance from the agreed colour',
  chartLabel: (n: number, from: string, to: string) =>
    `Distance from the agreed colour in ${number(n, 0)} readings: ${from} units in the first, ${to} in the last.`,
  table: 'All readings of this spot',
  tableHide: 'Hide the readings',
  columns: {
    day: 'Day',
    figures: 'L*, a*, b*',
    agreed: 'From agreed',
    before: 'From the one before',
    how: 'How it was read',
  },
  figure: (value: number) => number(value, 2).replace('-', '−'),
  figures: ({ L, a, b }: { readonly L: number; readonly a: number; readonly b: number }) =>
    `${signed(L)}, ${signed(a)}, ${signed(b)}`,
  placings: (n: number, spread: number | null) =>
    `${n === 1 ? '1 placing' : `${number(n, 0)} placings`}${spread === null ? '' : `, spread ${tenths(spread)}`}`,
  inBrief: (value: number, low: number, high: number) => `${tenths(value)} (${tenths(low)} to ${tenths(high)})`,
  notToldShort: (why: readonly string[]) => `not told: other ${list(why)}`,
  notToldAnew: 'not told: another surface since',
  differs: {
    'colour: other illuminant': 'illuminant',
    'colour: other observer': 'observer',
    'colour: other geometry': 'geometry',
    'colour: other aperture': 'opening',
    'colour: other wetness': 'wetness',
  } as Readonly<Record<string, string>>,
  dash: '–',
  change: 'Change',
  editReading: (day: string) => `Change the reading of ${day}`,
  swatch: (what: string) => `Colour of ${what}, as near as this screen can show it`,
  pair: (left: string, right: string) => `${left} and ${right}, edge to edge, as near as this screen can show them`,
  notExact: 'Beyond what a screen can show: the nearest is drawn.',

  key: 'What the figures mean',
  keyText: (n: { readonly seen: string; readonly large: string; readonly placings: string }): readonly string[] => [
    'L* is lightness, from 0 (black) to 100 (white); a* runs from green (under 0) to red, b* from blue (under 0) to yellow.',
    `A difference is told in units of CIEDE2000. As a rule of thumb a practised eye just sees ${n.seen} unit where two even surfaces touch in good light; patinated bronze is uneven, and there it takes more. Over ${n.large} the figure says “far apart”, and no longer how far.`,
    `The range (90 %) comes from how far single placings lie apart. ${n.placings} placings or more on a spot make it narrower.`,
    'No difference is told where illuminant, observer, geometry, opening or wetness differ, or where the surface became another one in between. Nothing can be reckoned over from one to the other.',
    'The colours drawn here are as near as a screen or a printer comes. They are there to be recognised, not to match anything by.',
    'A wax makes a surface darker and shinier. A difference may be that of the coating alone.',
  ],

  sheet: {
    add: 'Write down a reading',
    edit: 'Change the reading',
    save: 'Keep the reading',
    saved: 'The reading is kept.',
    edited: 'The changes are kept.',
    remove: 'Remove it',
    removed: 'The reading is removed. Undo brings it back.',
    spot: 'Spot',
    anotherSpot: 'A spot not read before',
    place: 'Where on the work',
    position: 'Just where',
    positionHint:
      'So that it can be put there again: “third hole of the template”, “a hand left of the seam, level with the lens”.',
    day: 'Day',
    dayMissing: 'Choose the day it was read.',
    placings: 'Placings',
    placingsHint:
      'One line for each time the instrument was put down: L*, a* and b* with a space between, such as 32.1 −4.2 9.8',
    placingsMissing: 'Write at least one line of three figures.',
    lineWrong: (line: number) => `Line ${line} is not three figures with a space between. Look at it again.`,
    lineOut: (line: number) =>
      `Line ${line} holds a figure no surface has: L* lies between 0 and 100. Look at its comma and its sign.`,
    readBack: 'As understood',
    mean: 'Mean',
    stray: (line: number) =>
      `Line ${line} lies far from the others. Was it typed right? If so, the instrument may have stood askew: put it down again.`,
    note: 'Note',
  },
  way: {
    title: 'How it was read',
    titleHint:
      'Illuminant, observer and geometry stand on the print or in the menu of the instrument. Without them no reading can be held against another.',
    same: (day: string) => `The same way as on ${day}`,
    other: 'In another way',
    missing: 'Say how it was read: illuminant, observer and geometry.',
    chooseWay: 'Say whether it was read the same way.',
    illuminant: 'Illuminant',
    illuminants: { D65: 'Daylight, the usual one', D50: 'Print and photography', C: 'Older daylight', A: 'Lamp light' },
    observer: 'Observer',
    observers: { '2': 'Small field, 1931', '10': 'Large field, 1964' },
    observerName: (degrees: string) => `${degrees}°`,
    geometry: 'Geometry',
    geometries: {
      'd/8 included': { name: 'd/8, shine included', what: 'Sphere; also SCI, di:8' },
      'd/8 excluded': { name: 'd/8, shine excluded', what: 'Sphere; also SCE, de:8' },
      '45/0': { name: '45/0', what: 'Also 0/45, 45°a:0°' },
    },
    aperture: 'Opening (measured spot, across)',
    apertureWrong: 'Write the opening in millimetres, such as 8.',
    surface: 'Surface',
    surfaces: { dry: 'Dry', damp: 'Damp', wet: 'Wet' },
    instrument: 'Instrument',
    instrumentHint: 'Type and number, so that the same one can be asked for.',
    calibration: 'Set to its white',
    calibrationHint: 'When, and on which tile.',
    summary: (parts: readonly string[]) => parts.join(' · '),
    mm: (aperture: string) => `${aperture} mm`,
    noMatch: (agreed: boolean, earlier: boolean) =>
      `Read like this, it cannot be held against ${agreed && earlier ? 'the agreed colour, nor against the readings before' : agreed ? 'the agreed colour' : 'the readings before'}`,
    askNow: 'While the instrument is here, it can be set otherwise.',
  },
  agreedSheet: {
    add: 'Write down an agreed colour',
    edit: 'Change the agreed colour',
    save: 'Keep the agreed colour',
    saved: 'The agreed colour is kept.',
    edited: 'The changes are kept.',
    remove: 'Remove it',
    removed: 'The agreed colour is removed. Undo brings it back.',
    name: 'What it is called',
    nameHint: '“Brown of panel 3, waxed”.',
    nameMissing: 'Give it a name.',
    by: 'Agreed by',
    byHint: 'Roles, such as owner and estate. Leave names of people out if this will travel.',
    byMissing: 'Write who agreed.',
    day: 'Agreed on',
    zone: 'Holds for',
    value: 'Its figures, L*, a* and b*',
    valueHint: 'As an instrument read them from the panel or the finished surface: 28.4 7.9 9.6',
    valueWrong: 'Write three figures with a space between.',
    kept: 'Where the panel is kept',
    note: 'Note',
  },
});
