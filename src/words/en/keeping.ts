import { spoken } from '../tongue';

/** Words of the screen Keeping it safe, and of what other screens say of it. */
export const keeping = spoken('keeping', 'keeping', {
  title: 'Keeping it safe',
  lead: 'How safely the record lies on this device, and what to do for it.',

  promise: 'On this device',
  holds: (entries: string, photos: string, bytes: string) => `${entries}, ${photos}, ${bytes}.`,
  entries: (n: number, figure: string) => (n === 1 ? '1 entry' : `${figure} entries`),
  photos: (n: number, figure: string) => (n === 1 ? '1 photo' : `${figure} photos`),
  persisted: {
    yes: 'The browser has promised to keep it',
    no: 'The browser may delete it',
    'not known': 'This browser does not say whether it keeps it',
  },
  persistedWhat: {
    yes: 'It does not clear it on its own when space is short. A lost, broken or reset device loses it all the same.',
    no: 'It may do so when space is short, or when the app was not used for weeks. Install the app, ask the browser to keep it, and carry the survey out often.',
    'not known': 'Install the app, and carry the survey out often.',
  },
  ask: 'Ask the browser to keep it',
  askedYes: 'The browser promises to keep it.',
  askedNo: 'The browser does not promise it. Install the app, and carry the survey out often.',
  unencrypted: 'It lies unencrypted: set a screen lock on this device.',

  askTitle: 'Shall the browser keep what you entered?',
  askWhat: 'Unasked, it may delete it when space is short.',
  askNotNow: 'Not now',

  carried: 'Elsewhere',
  carriedNever: 'Nothing was carried out from this device yet.',
  carriedNeverWhat: 'What is on one device only is lost with it. Carry a bag out after each day of rounds.',
  carriedAll: 'Every round ended here has been carried out.',
  carriedSince: (n: number) => (n === 1 ? '1 round is on this device only.' : `${n} rounds are on this device only.`),
  carriedSinceWhat: (day: string) => `They ended, or were changed, after the last time everything left, on ${day}.`,
  carryDo: 'Carry it out',
  carriedList: 'What left this device',
  carriedRow: {
    bag: (entries: string, photos: string) => `bag, ${entries}, ${photos}`,
    survey: (entries: string) => `survey file, ${entries}, without photos`,
    step: (entries: string) => `kept in step with a folder, ${entries}`,
  },
  carriedSome: (n: number) => (n === 1 ? 'one sculpture only' : `${n} sculptures only`),

  through: 'Looked through',
  throughLead:
    'Every entry is counted, every present state is held against its entries, and every photo is compared with the fingerprint taken when it was kept. It changes nothing, and is done by itself once a month.',
  throughNever: 'Not looked through yet.',
  throughDo: 'Look everything through',
  throughUnderWay: 'Looking everything through',
  throughOn: (day: string) => `Looked through on ${day}`,
  sound: (entries: string, photos: string) => `${entries} and ${photos}: all whole.`,
  missing: (n: number) =>
    n === 1
      ? '1 photo is spoken of and not here. That is no fault: it is on another device or in a bag.'
      : `${n} photos are spoken of and not here. That is no fault: they are on another device or in a bag.`,
  anewTitle: 'What is shown may be wrong; what was entered is there',
  anewWhat: 'Carry the survey out first, to be safe. Then make what is shown anew from the entries.',
  anewDo: 'Make it anew from the entries',
  anewDone: 'Made anew.',
  lostTitle: 'Entries are missing, or are not the ones that were stored',
  lostWhat:
    'Carry the survey out now and keep that file. Then carry in your last bag: what is missing comes back from it. Then count anew.',
  altered: (n: number) =>
    n === 1 ? '1 photo is no longer as it was kept' : `${n} photos are no longer as they were kept`,
  alteredWhat:
    'The device has damaged them. Set them aside, then carry in the last bag that holds them: they come back whole. What is said of them stays.',
  alteredDo: 'Set them aside',
  alteredDone: (n: number) =>
    n === 1
      ? '1 damaged photo is set aside. Carry in the bag that holds it.'
      : `${n} damaged photos are set aside. Carry in the bag that holds them.`,
  stray: (n: number) =>
    n === 1 ? '1 photo lies here that nothing speaks of' : `${n} photos lie here that nothing speaks of`,
  strayWhat: 'Left over from work that was broken off. Nothing shows them, and no bag takes them along.',
  strayDo: 'Clear them away',
  strayDone: (n: number) => (n === 1 ? '1 photo is cleared away.' : `${n} photos are cleared away.`),
  carryIn: 'Carry a bag in',

  room: 'Make room',
  roomLead:
    'Photos take most of the room. They may leave this device once you have opened the bag that holds them and every one in it was found whole. What you said of them, and a small picture, stay.',
  roomNone: 'No photos lie here that could go.',
  roomNoneOlder: 'No photos of earlier rounds lie here.',
  roomWorks: 'Whose photos',
  roomWhich: 'Which of them',
  roomOlder: 'Those of earlier rounds',
  roomOlderWhat: 'What was taken in the last round stays, to compare with.',
  roomAll: 'All of them',
  roomAllWhat: 'Nothing can be compared or measured until they are carried in again. Pictures of sides stay.',
  roomOf: (photos: string, bytes: string) => `${photos}, ${bytes}`,
  roomChosen: (photos: string, bytes: string) => `Chosen: ${photos}, ${bytes}.`,
  roomOpen: 'Open the bag that holds them',
  roomChecking: 'Checking every photo in the bag',
  roomHolds: (n: number, of: number) =>
    n === of
      ? `The bag holds all ${of} of them, and each is whole`
      : `The bag holds ${n} of the ${of}, and each is whole`,
  roomHoldsNone: (bag: string) => `${bag} holds none of them`,
  roomStay: (n: number) => (n === 1 ? '1 is not in it and stays.' : `${n} are not in it and stay.`),
  roomKeep: 'Keep that bag in two places: these photos are then nowhere else.',
  roomDo: (n: number) => (n === 1 ? 'Let 1 photo go from this device' : `Let ${n} photos go from this device`),
  roomGoing: 'Taking them off',
  roomDone: (photos: string, bytes: string) => `${photos} left this device: ${bytes} are free.`,
  roomLeave: 'Leave them here',

  installFirst: {
    title: 'Install it first',
    why: 'In the browser, an iPad deletes what was entered here once the page was not used for a week. The installed app is spared that, and what is entered in the browser does not move over to it.',
    steps: [
      'Touch Share, the square with an arrow.',
      'Touch “Add to Home Screen”, then “Add”.',
      'Close this page and open Patina Round from the Home Screen.',
    ],
    shallInstall: 'I install it first',
    allTheSame: 'Go on in the browser all the same',
    allTheSameWhat: 'Going on here is fine for a look. Carry the survey out the same day.',
  },

  faultsFound: 'Looking through this device found something',
  faultsFoundWhat: 'See what it is, and what to do.',
  toKeeping: 'See it',
} as const);
