import { spoken } from '../tongue';

/** Words of measuring coverage on a photo. */
export const measure = spoken('measure', 'measure', {
  title: 'Measure on a photo',
  /** The link to it, from a photo, a map or a zone. */
  link: 'Measure',
  lead: 'How much of a zone a finding covers, measured on a photo. The figure stands beside what the eye said in the round and never takes its place.',
  zone: (letter: string, name: string) => `Zone ${letter}, ${name}`,
  zoneShort: (letter: string) => `Zone ${letter}`,
  sentinel: (which: 'best' | 'worst', zone: string) =>
    `${which === 'best' ? 'Best square' : 'Worst square'}, ${zone.charAt(0).toLowerCase()}${zone.slice(1)}`,
  notHere: 'This photo, or what was to be measured on it, is not here',
  photoOf: (zone: string, day: string) =>
    `Photo of ${zone.charAt(0).toLowerCase()}${zone.slice(1)}${day && `, ${day}`}`,
  photoElsewhere: 'The picture itself is not on this device',
  photoElsewhereWhat:
    'What was measured on it is told below. Measuring needs the picture: carry it in with its photos.',
  noSize: 'The size of this picture is not known',
  noSizeWhat: 'Nothing can be measured on it. Add the photo again from its file.',
  readingOnly: 'This page only reads, so nothing can be measured here.',

  part: 'Which part of the photo',
  partFrom: {
    drawn: 'The part as it was drawn here.',
    measured: 'The part an earlier figure of this photo was measured in.',
    outline: 'The outline of this zone on the map.',
    'laid on':
      'The outline of this zone from another photo, laid on this one by the places tapped on both. Draw the part here where it does not fit.',
  },
  partNone: (what: string) => `It is not known yet which part of this photo is ${what}. Draw it first.`,
  partDraw: 'Draw the part',
  partDrawAnew: 'Draw another part',
  partFromMap: 'Forget the part drawn here',
  partTitle: 'Draw the part',
  partLead: 'Tap along its edge, corner by corner, then close it. A part in several pieces is drawn piece by piece.',
  partWhole: 'The whole picture',
  partDone: 'This is the part',
  partIs: (pixels: string) => `${pixels} pixels lie in it.`,

  kind: 'What is measured',
  kindOther: 'Another kind',
  kindChoose: 'Choose a kind',
  kindFirst: 'Choose first what is measured.',
  kindEye: (share: string) => `by eye ${share}`,
  kindNoEye: 'not told by eye in this round',

  ways: 'Three ways',
  way: { traced: 'Trace the patches', dots: 'Judge dots', photo: 'Let the pixels tell, and check them' },
  wayShort: { traced: 'traced', dots: 'dots', photo: 'pixels, checked', eye: 'by eye' },
  wayWhat: {
    traced: 'For a few patches with a clear edge. Tap the corners of each.',
    dots: 'For many small spots. One touch for each dot: on it, not on it, or glare.',
    photo:
      'A second witness for the desk. Tap three spots of each sort; 30 check dots then say how far the pixels are right.',
  },
  open: { traced: 'Trace', dots: 'Judge dots', photo: 'Use the pixels' },
  goOn: { traced: 'Go on tracing', dots: 'Go on with the dots', photo: 'Go on with the pixels' },
  lookAgain: { traced: 'Change the patches', dots: 'Judge again', photo: 'Look again' },
  underWay: 'Not finished: it makes no figure yet.',
  changed: 'Changed since the figure was kept.',
  dotsDone: (done: number, all: number) => `${done} of ${all} dots are judged.`,
  stop: 'Stop for now',
  back: 'Back to the figures',

  corner: 'Place a corner',
  cornerUndo: 'Undo the last corner',
  cornerBefore: 'Corner before',
  cornerAfter: 'Corner after',
  corners: (n: number) =>
    n === 0 ? 'No corner yet.' : n === 1 ? '1 corner, not closed.' : `${n} corners, not closed.`,
  cornerChosen: (n: number, all: number) => `Corner ${n} of ${all} is chosen; the arrows move it.`,
  movedCorner: 'the corner',
  close: 'Close',
  closeNeeds: 'Three corners or more can be closed.',
  crosses: 'The line crosses itself. Take back or move a corner, then close it.',
  ringUndo: { patch: 'Open the last patch again', piece: 'Open the last piece again' },
  ringAway: { patch: 'Take the last patch away', piece: 'Take the last piece away' },
  rings: {
    patch: (n: number) =>
      n === 0 ? 'No patch is closed yet.' : n === 1 ? '1 patch is closed.' : `${n} patches are closed.`,
    piece: (n: number) =>
      n === 0 ? 'No piece is closed yet.' : n === 1 ? '1 piece is closed.' : `${n} pieces are closed.`,
  },

  traceLead: (what: string) => `Tap along the edge of each patch of ${what}, corner by corner, then close it.`,
  traceAll: 'That is all of it',
  traceNone: (what: string) => `There is no ${what} here`,
  traceOpen: 'A patch is open. Close it, or take its corners back, before you say that is all.',
  soFar: 'So far',
  kept: 'The figure is kept beside the others.',
  keep: 'Keep this figure',

  dotsLead: 'Dots are spread over the part by chance. Judge what lies under the middle of each, not what is near it.',
  howMany: 'How many dots',
  dotsCount: { 49: '49 dots', 100: '100 dots' },
  dotsFor: { 49: 'in the field, about a minute', 100: 'at the desk, for a narrower range' },
  dotsLay: 'Lay the dots',
  dotsAnew: 'Lay new dots',
  dotsAnewWhat: 'The dots judged so far are forgotten; a figure that was kept stands until the new one is whole.',
  dot: (n: number, all: number) => `Dot ${n} of ${all}`,
  checkDot: (n: number, all: number) => `Check dot ${n} of ${all}`,
  dotCloseUp: (n: number) => `The photo around dot ${n}`,
  dotWhole: 'The whole photo with the dots',
  ask: (what: string) => `Is there ${what} under the middle?`,
  answer: {
    green: { y: 'Green', n: 'Not green', g: 'Glare' },
    other: { y: 'Yes', n: 'No', g: 'Glare' },
  },
  dotBack: 'The dot before',
  closer: 'Closer',
  wider: 'Wider',
  progress: (done: number, all: number) => `${done} of ${all} judged`,
  allJudged: 'All dots are judged',
  noFigure: 'No figure can be told from this',
  partChanged: 'The part was drawn anew since',
  partChangedWhat: 'What was touched here was touched in the part as it was.',
  partTake: 'Go over to the new part',
  green: 'green',

  maskLead: (green: string, sound: string) =>
    `Tap three spots or more of each, ${green.toLowerCase()} and ${sound.toLowerCase()}, in even light: some pale, some dark. Their colours alone tell the pixels apart.`,
  sorts: {
    green: { green: 'Green', sound: 'Sound surface' },
    other: { green: 'The finding', sound: 'Surface without it' },
  },
  spots: (name: string, n: number, of: number) => `${name}: ${n < of ? `${n} of ${of} spots` : `${n} spots`}`,
  spotTap: (name: string) => `Tap a spot: ${name.toLowerCase()}`,
  dab: (name: string) => `Brush: ${name.toLowerCase()}`,
  touchDoes: 'A touch on the picture',
  doing: { tap: 'taps one more spot', brush: 'puts the mask right' },
  tapWhat: 'The spot is',
  brushWhat: 'What the brush lays down',
  brushSize: 'Brush',
  brushSizes: { small: 'Small', middle: 'Middle', large: 'Large' },
  spotUndo: (name: string) => `Undo the last spot: ${name.toLowerCase()}`,
  dabUndo: 'Undo the last touch of the brush',
  maskWaits: 'The pixels are being counted …',
  maskSays: (share: string) =>
    `The mask takes in ${share}. This is no figure yet: the check dots say how far it is right.`,
  maskKey: 'hatched: in the mask',
  maskLeftOut: (share: string) => `${share} of the part lies in glare or deep shade and is left out.`,
  maskChange: 'Change the mask',
  maskOther: 'These check dots belong to another mask',
  maskOtherWhat: 'This browser reads the picture a little differently. Change the mask, and lay check dots anew.',
  checkLay: 'Lay the check dots',

  table: 'Beside each other',
  tableCaption: (kind: string) => `${kind}: what each way says, with its 95 % range`,
  tableNone: 'Nothing is told of this kind yet, neither by eye nor on this photo.',
  columns: { how: 'How', share: 'Share', range: 'Range', of: 'Of what', when: 'When' },
  of: { photo: 'of this photo', zone: 'of the zone', square: 'of this photo' },
  otherPart: 'measured in another part of the photo',
  why: 'What it rests on',
  remove: (way: string) => `Remove the figure: ${way}`,
  removeShort: 'Remove',
  removed: 'The figure is removed.',
  apart:
    'Two ways that differ by more than their ranges allow are a reason to look again at the work, not to choose one of them.',

  /** On other screens. */
  onPhotos: 'Measured on photos',
  onPhotosWhat: 'Shares of a photo, beside what the eye said. No score and no verdict uses them.',
  photosNone: 'There is no photo of this zone yet to measure on.',
  photoNamed: (which: 'best' | 'worst' | undefined, day: string) =>
    `${which === undefined ? 'Photo' : which === 'best' ? 'Best square' : 'Worst square'}${day && `, ${day}`}`,
  measureOn: (photo: string) => `Measure on it: ${photo}`,
  beside: (way: string, value: string, low: string, high: string) => `on a photo, ${way}: ${value} (${low} to ${high})`,
} as const);
