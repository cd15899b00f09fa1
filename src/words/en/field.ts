import { spoken } from '../tongue';

/** Words of what goes along on the ladder: who holds the tablet, wet glass, battery, space, keys. */
export const field = spoken('field', 'field', {
  who: {
    title: 'Who is at work now?',
    what: 'Nobody touched this tablet for half an hour or longer. Each record is marked with who is at work.',
    still: (role: string) => `Still ${role}`,
    set: (role: string) => `${role} is at work.`,
  },
  glass: {
    setting: 'Wet glass',
    settingWhat:
      'In rain or spray: touches shorter than a finger’s do nothing on the screens of the round, and the glass can be locked.',
    row: 'Wet glass: very short touches do nothing.',
    lock: 'Lock the glass',
    locked: 'The glass is locked',
    lockedWhat: 'No touch does anything. What you entered is kept.',
    unlock: 'Hold down to go on',
  },
  keepHolding: 'Keep holding …',
  holdWhat: 'Hold it down for a moment',
  battery: {
    low: (percent: number) => `Battery at ${percent} %`,
    lowWhat:
      'Every touch is kept already. Finish this zone, come down, and charge it or take the other battery. Cold makes it seem emptier than it is.',
    understood: 'Understood',
  },
  full: {
    title: 'This tablet is full',
    what: 'The last thing you entered may not have been kept, photos above all. Carry a bag out, then let earlier photos go.',
    room: 'Make room',
    understood: 'Understood',
  },
  keys: {
    title: 'Keys at the desk',
    what: 'A whole round can be made without touching the glass.',
    rows: [
      ['Tab, Shift + Tab', 'to the next or the last control; a strong frame shows where you are'],
      ['Enter, Space', 'touch it'],
      ['Arrow keys', 'from answer to answer within one question, or from tile to tile'],
      ['Home, End', 'the first or the last answer of a question'],
      ['Escape', 'close what opened over the page; in a zone, back to the list'],
      ['Ctrl + Z, ⌘ + Z', 'undo the last touch, outside of text you are writing'],
    ] as readonly (readonly [string, string])[],
  },
} as const);
