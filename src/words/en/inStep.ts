import { spoken } from '../tongue';

/** Words of the screen Keep in step. */
export const inStep = spoken('inStep', 'inStep', {
  title: 'Keep in step',
  lead: 'One shared folder, and every tablet that reads and writes there holds the same survey. Off until you switch it on; nothing else is ever sent.',
  notInvented: 'The invented collection is kept in step with nothing',
  notInventedWhat: 'Keeping in step is for your own collection.',

  serverTitle: 'The folder on the server',
  serverLead:
    'A folder on the server this app came from. Whoever looks after the server gives you a name and a password.',
  account: 'Name',
  password: 'Password',
  passwordHint: 'Kept only while the app is open, and never written down on this device.',
  accountMissing: 'Type the name the server knows you by.',
  passwordMissing: 'Type the password.',
  switchOn: 'Switch on',

  pickTitle: 'A folder of this device',
  pickLead:
    'On a stick, on a drive, or a folder that another program keeps the same on several devices. The browser then asks whether the app may edit files there: nothing begins until you allow it.',
  pick: 'Choose a folder',
  pickNot: 'This browser does not let an app use a folder. Use the folder on the server, or carry by files.',

  goes: 'Everything goes into the folder, names of persons and photos too, and lies there unencrypted. Whoever can open the folder can read it.',
  begin:
    'Every tablet has to begin from the same collection: set it up on one, switch on there first, and switch on here before anything is entered.',

  where: { server: (host: string) => `The folder on ${host}`, picked: (folder: string) => `The folder “${folder}”` },
  since: (day: string) => `Switched on since ${day}.`,
  lastAt: (day: string, time: string) => `Last in step on ${day}, ${time}.`,
  never: 'Not in step yet.',
  waiting: (entries: string, photos: string) => `Waiting here: ${entries} and ${photos}.`,
  nothingWaits: 'Nothing is waiting here.',
  entries: (n: number, figure: string) => (n === 1 ? '1 entry' : `${figure} entries`),
  photos: (n: number, figure: string) => (n === 1 ? '1 photo' : `${figure} photos`),
  came: (entries: string, photos: string) => `Taken in: ${entries}, ${photos}.`,
  went: (entries: string, photos: string) => `Written: ${entries}, ${photos}.`,
  erased: (n: number) =>
    n === 1
      ? '1 entry here was erased elsewhere, and is gone.'
      : `${n} entries here were erased elsewhere, and are gone.`,
  byItself: 'Done by itself a little after you enter something, when the network is back, and every ten minutes.',
  stepNow: 'Keep in step now',
  switchOff: 'Switch off',
  switchedOff: 'Switched off. What is in the folder stays there.',
  done: 'In step.',
  doing: {
    reading: 'Reading what others wrote',

    writing: 'Writing what the folder lacks',
    photos: 'Photos both ways',
  },
  starting: 'Looking into the folder',
  stoppedTitle: (day: string, time: string) => `The step of ${day}, ${time} did not come to its end`,

  again: 'Type the password again',
  againDo: 'Go on',
  letIn: 'Let the app in again',
  letInWhat: 'The browser asks each time the app was closed.',

  who: 'Who is in it',
  thisTablet: 'This tablet',
  tablet: (n: number) => `Tablet ${n}`,
  wrote: (entries: string, day: string) => `${entries} in the folder, the last made on ${day}`,
  wroteNothing: 'nothing in the folder yet',

  found: 'Left as it is in the folder',
  elsewhere: 'Without a shared folder',
  elsewhereLead:
    'The same comes of it by hand: share the survey file or the bag from one tablet, open it on the other, and the other way round. In any order, as often as you like: nothing counts twice.',
} as const);
