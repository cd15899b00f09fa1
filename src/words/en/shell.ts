import { spoken } from '../tongue';

/** Words of what surrounds every screen. */
export const shell = spoken('shell', 'shell', {
  nav: {
    label: 'Main',
    sculptures: 'Sculptures',
    nextSteps: 'Next steps',
    plan: 'Plan',
    carry: 'Carry',
    method: 'Method',
    settings: 'Settings',
  },
  skip: 'Skip to the content',
  undo: 'Undo',
  undoOf: (deed: string) => `Undo: ${deed}`,
  undone: (deed: string) => `Taken back: ${deed}`,
  surveyor: (role: string) => `At work: ${role}`,
  nobody: 'Who is here?',
  invented: 'Invented collection',
  inventedWhat: 'Nothing here is real.',
  leaveDemo: 'Leave the demo',
  tour: 'Take the tour',
  help: 'Help on this screen',
  readingOnly: 'This tab only reads',
  readingOnlyWhat: 'Patina Round is open in another tab, and only one may write.',
  takeOver: 'Take over here',
  takenOver: 'This tab writes now.',
  update: 'A new version is ready',
  updateWhat: 'It starts with the next opening, or now. Nothing you entered is lost.',
  updateNow: 'Start it now',
  broken: 'This screen could not be shown',
  brokenWhat:
    'What you entered is kept on this device. Load it again; if it stays broken, carry the survey out as a file first.',
  brokenAgain: 'Load it again',
  brokenCarry: 'Carry the survey out',
  brokenBack: 'Back to the sculptures',
  brokenDetail: 'What the device says',
  lost: 'There is no such screen',
  lostWhat: 'The address may be old, or the thing it spoke of was taken away.',
  opening: 'Opening the survey …',
  cannotOpen: 'The survey could not be opened',
  removed: 'The survey was removed from this device',
  lastFiles: 'Carried out last from this device:',
  lastFile: {
    bag: (day: string, entries: string, photos: string) => `a bag, ${day}: ${entries} entries, ${photos} photos`,
    survey: (day: string, entries: string, _photos: string) =>
      `a survey file, ${day}: ${entries} entries, without the photos`,
    step: (day: string, entries: string, photos: string) =>
      `kept in step with this folder until ${day}: ${entries} entries, ${photos} photos. Begin with nothing, then switch Keep in step on again.`,
  },
  lastFilesNone:
    'No file with everything was carried out from this device. If another device has the survey, carry it out there and open that file here.',
  lostSince: (entries: string) =>
    `Up to ${entries} entries were made after it. They are in no file of this device; look on other devices that had the survey.`,
  openLast: 'Open the last file',
  startAfresh: 'Begin with nothing',
  startAfreshWhat:
    'Opening the file brings back everything that was in it. Nothing is lost by beginning: the file can be opened later.',
  loadAgain: 'Load again',
} as const);
