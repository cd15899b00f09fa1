import type { parts as english } from '../en/parts';
import type { Same } from '../tongue';

/** Words of the controls all screens share. */
export const parts: Same<typeof english> = {
  optional: 'optional',
  currency: 'Currency',
  currencyHint: 'Three letters, such as EUR. Asked once: all money of this collection is in it.',
  closeSheet: 'Close',
  reading: 'Reading …',
  leaveOff: 'Leave off',
  notKnown: 'not known',
  notLooked: 'not looked at',
  photoElsewhere: 'This photo is not on this device.',
  photoAway: (day: string, bag: string) =>
    day === '' ? `This photo is in the bag ${bag}.` : `This photo is in the bag of ${day}: ${bag}`,
  notice: { note: 'Note', caution: 'Take care', stop: 'Stop', problem: 'Something is wrong' },
  photosHere: {
    alt: (what: string, n: number) => `${what}, photo ${n}`,
    off: 'Take off',
    offOf: (what: string, n: number) => `Take photo ${n} off: ${what}`,
  },
  /** The five steps of the index scale, sound to poor. */
  level: { 1: 'sound', 2: 'light wear', 3: 'marked', 4: 'poor', 5: 'very poor' },
  dial: (of: string, value: string, low: string, high: string, word: string) =>
    `${of}: condition index ${value} of 100, between ${low} and ${high}, ${word}`,
  dialNone: (of: string) => `${of}: no condition index, not looked at`,
  notShown: (n: number) => (n === 1 ? 'One more zone is not shown.' : `${n} more zones are not shown.`),
  showMore: (n: number) => (n === 1 ? 'Show 1 more' : `Show ${n} more`),
  stage: {
    larger: 'Larger',
    smaller: 'Smaller',
    keys: 'Arrow keys move a cross, with Shift further. Enter puts it down.',
    arrows: { left: 'left', up: 'up', down: 'down', right: 'right' },
    move: (what: string, where: string) => `Move ${what} ${where}`,
    moveWhat: (what: string) => `Move ${what}`,
  },
  print: 'Diese Seite drucken',
  how: 'Wie wird das berechnet?',
};
