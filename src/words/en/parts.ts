/** Words of the controls all screens share. */
export const parts = {
  optional: 'optional',
  closeSheet: 'Close',
  reading: 'Reading …',
  notKnown: 'not known',
  notLooked: 'not looked at',
  photoElsewhere: 'This photo is not on this device.',
  notice: { note: 'Note', caution: 'Take care', stop: 'Stop', problem: 'Something is wrong' },
  /** The five steps of the index scale, sound to poor. */
  level: { 1: 'sound', 2: 'light wear', 3: 'marked', 4: 'poor', 5: 'very poor' },
  dial: (of: string, value: string, low: string, high: string, word: string) =>
    `${of}: condition index ${value} of 100, between ${low} and ${high}, ${word}`,
  dialNone: (of: string) => `${of}: no condition index, not looked at`,
  classes: {
    CC: { 0: 'no change seen', 1: 'minor', 2: 'moderate', 3: 'major' },
    UC: { 0: 'no urgency', 1: 'within the usual care', 2: 'soon', 3: 'at once' },
    RC: { 0: 'nothing to do', 1: 'keep up the care', 2: 'test, local treatment or repair', 3: 'major treatment' },
  },
} as const;
