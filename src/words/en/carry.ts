import { spoken } from '../tongue';

/** Words of the screen Carry. */
export const carry = spoken('carry', 'carry', {
  title: 'Carry',
  lead: 'Take the survey to another device and bring it back. Nothing leaves this device unless you carry it out here.',
  plain: 'The file is not encrypted. Whoever has it can read it.',

  otherWays: 'Other ways',

  out: 'Carry out',
  make: 'What to carry out',
  makes: {
    bag: 'Survey and photos (a bag)',
    survey: 'Survey without photos',
    table: 'Findings as a table (CSV)',
  },
  makesWhat: {
    bag: 'What you keep: all of it, with a report to be read without this app. It can be carried back in.',
    survey: 'Small: to bring another device up to date. It can be carried back in.',
    table: 'For a spreadsheet. It cannot be carried back in.',
  },
  prepares: { bag: 'Prepare the bag', survey: 'Prepare the file', table: 'Prepare the table' },
  bagSize: (n: number, count: string, size: string) =>
    n === 0
      ? 'No photo goes with it: only the survey and its papers.'
      : `${n === 1 ? '1 photo goes' : `${count} photos go`} with it (${size}), beside the survey and its papers.`,
  bagMissing: (n: number, count: string) =>
    n === 1
      ? 'The picture of 1 photo is not on this device, and not in the bag.'
      : `The pictures of ${count} photos are not on this device, and not in the bag.`,
  bagDamaged: (n: number, count: string) =>
    n === 1
      ? '1 picture on this device is damaged and was left out. Look under “Keeping it safe” for what to do.'
      : `${count} pictures on this device are damaged and were left out. Look under “Keeping it safe” for what to do.`,
  photosInIt: (n: number, count: string, size: string) =>
    n === 0 ? 'No photo is in it.' : `${n === 1 ? '1 photo is' : `${count} photos are`} in it (${size}).`,
  preparedBag: 'The bag is ready, and was read back whole. It still holds:',
  bagLeft: 'The bag lies where you chose, and was read back whole. It holds:',
  preparingBag: 'Writing the bag …',
  readingBack: 'Reading it back to be sure …',
  straight: 'Write it straight into a file',
  outLeft: 'Left off. Nothing was kept of it.',
  outWhich: 'What goes into it',
  outAll: 'The whole collection',
  outSome: 'Some sculptures only',
  outSomeNone: 'Choose at least one sculpture.',
  noSculptures: 'There is no sculpture to carry out yet.',
  leaveOut: 'Leave out',
  without: {
    names: 'Names of people',
    places: 'Places where the works stand and things are kept',
    access: 'Access: keys, codes, ladders, where things are kept',
    'insert values': 'Values of inserts',
    money: 'Money: prices, bids, funds, gifts, decisions',
  },
  preparing: 'Preparing the file …',
  prepared: 'The file is ready. It still holds:',
  preparedNothing: 'The file is ready and holds no entry.',
  preparedTable: 'The table is ready.',
  holdKinds: {
    collection: 'Collection',
    scale: 'Weights',
    surveyor: 'Surveyors (roles)',
    name: 'Names of people',
    sculpture: 'Sculptures',
    place: 'Places',
    access: 'Access',
    insert: 'Inserts',
    insertValue: 'Values of inserts',
    elevation: 'Elevations',
    zone: 'Zones',
    round: 'Rounds',
    visit: 'Visits to zones',
    finding: 'Findings',
    rerating: 'Zones asked again',
    classSet: 'Classes set, with names',
    personCheck: 'Person checks',
    look: 'Looks',
    treatment: 'Logbook entries',
    interpretation: 'Thoughts, with names',
    photo: 'Photos',
    outline: 'Outlines of zones',
    runOff: 'Run-off between zones',
    station: 'Stations',
    sentinel: 'Sentinel squares',
    photoFit: 'Photos laid on others',
    measure: 'Coverage measured on photos',
    reading: 'Instrument readings',
    agreedColour: 'Agreed colours, with names',
    methodSheet: 'What may be done to a work',
    weather: 'Readings of air and surface',
    product: 'Products in store',
    incident: 'Incidents',
    move: 'Moves and loans',
    groundsAgreement: 'Agreements with the grounds staff',
    yearPlan: 'Plans of a year, with money',
    sitePlan: 'Plan of the site',
    yearVerdict: 'Verdicts of a year, with names',
    listTicks: 'Ticked lists',
    task: 'Tasks',
    dueAnswered: 'Due things answered',
    moneyRules: 'How money is reckoned',
    option: 'Options, with prices',
    quote: 'Quotes, with names',
    fund: 'Funds',
    gift: 'Gifts, with names',
    decision: 'Decisions, with names',
    tripwireAnswer: 'Answers to tripwires',
    campaign: 'Campaigns',
    cause: 'Causes',
    quantities: 'Schedules of quantities',
    bid: 'Bids, with names and prices',
    bidCriteria: 'How bids are weighed, with names',
    bidScore: 'Score sheets of bids',
    completeness: 'Checks of papers',
    approval: 'Approvals, with names',
    colourCard: 'Agreed-colour cards',
    layer: 'Layers laid',
    hotDay: 'Days of hot work',
    insertCare: 'What inserts bear',
    insertReading: 'Temperatures at inserts',
    insertAfter: 'Inserts after the heat',
    accessSheet: 'Access sheets',
    paperText: 'Own words for papers',
    paperIssued: 'Papers given out, with names',
    keptWhere: 'Where things are kept',
    erasure: 'What was erased, and why',
    holdRules: 'Rules of how long wax holds',
    climate: 'Air around the works',
    eyeCheck: 'Checks of the eye',
    'persons named in entries': 'Entries that name a person',
    notes: 'Notes in free words',
    'sums of money in entries': 'Entries with a sum: what was paid, what a lift costs a day',
  } as Readonly<Record<string, string>>,
  photosStay: (n: number) =>
    n === 0
      ? 'No photo stays behind.'
      : n === 1
        ? '1 photo stays behind on this device: photos do not travel in this file.'
        : `${n} photos stay behind on this device: photos do not travel in this file.`,
  keptAtHome: (n: number) =>
    n === 1 ? '1 reference reads “kept at home” in the file.' : `${n} references read “kept at home” in the file.`,
  freeText:
    'Notes in free words are not searched. Read them before the file leaves if they may name a person or a place.',
  save: 'Save as a file',
  share: 'Share it',
  download: 'Download it',
  asText: 'Show as text',
  textWhat: 'Copy all of this into a message or a plain text file. Name it with .survey.json at the end.',
  copy: 'Copy the text',
  copied: 'Copied.',
  copySelf: 'Selected. Copy it with the keyboard or the menu.',
  saved: 'The file is saved.',
  shared: 'The file is handed over.',
  downloaded: 'The file was handed to the browser. Check that it is in your downloads before you rely on it.',
  csvWhat: 'One row for each finding, for a spreadsheet. It cannot be carried back in.',

  in: 'Carry in',
  inWhat:
    'Open a survey file from another device, or a bag that holds its photos too. You see what would change before anything is stored.',
  open: 'Open a survey file or bag',
  readingFile: 'Reading the file …',
  step: (done: number, all: number) => `${done} of ${all}`,
  cannot: 'This file cannot be carried in',
  cannotWhat: 'Nothing was stored.',
  doThis: (what: string) => `What to do: ${what}`,
  preview: 'What would change',
  previewOf: (file: string) => `In ${file}`,
  nothingNew: 'Everything in this file is already here.',
  unchangedRows: (n: number) =>
    n === 1
      ? 'For 1 other part of the file everything is already here.'
      : `For ${n} other parts of the file everything is already here.`,
  wholeCollection: 'The collection itself',
  newSculpture: 'new here',
  columns: {
    sculpture: 'Sculpture',
    new: 'New',
    replaced: 'Replaced',
    twoVersions: 'Two versions',
    photosComing: 'Photos in it',
    photosMissing: 'Photos missing',
  },
  other: 'This file comes from another collection',
  otherWhat: (theirs: string, here: string) =>
    `The file belongs to “${theirs}”. Here is “${here}”. They are never put together in silence.`,
  otherTick: 'I know they are two collections and want their works in one',
  inventedIn: 'The file holds the invented collection. It cannot be carried into a real one.',
  accept: 'Carry it in',
  acceptWhat: 'All of it is stored at once, or nothing.',
  accepting: 'Storing …',
  acceptingPhotos: 'Keeping the photos …',
  photosComing: (n: number, size: string) =>
    n === 1 ? `1 photo comes with it (${size}).` : `${n} photos come with it (${size}).`,
  litter: (n: number) =>
    n === 1
      ? '1 file that a computer left in the bag was passed over.'
      : `${n} files that a computer left in the bag were passed over.`,
  accepted: (n: number, photos = 0) =>
    `Carried in: ${n === 1 ? '1 entry' : `${n} entries`}${photos === 0 ? '' : photos === 1 ? ' and 1 photo' : ` and ${photos} photos`}.`,
  missingTitle: 'Missing photos',
  missing: (n: number) =>
    n === 1
      ? 'The survey speaks of 1 photo that is not on this device. A bag brings it, or its picture file.'
      : `The survey speaks of ${n} photos that are not on this device. A bag brings them, or their picture files.`,
  lookFor: 'Look for them in picture files',
  lookingFor: 'Looking through the files …',
  found: (placed: number, others: number) =>
    `${placed === 1 ? '1 photo has' : `${placed} photos have`} found ${placed === 1 ? 'its' : 'their'} place.${
      others === 0
        ? ''
        : ` ${others === 1 ? '1 file was' : `${others} files were`} passed over: nothing here waits for ${others === 1 ? 'it' : 'them'}.`
    }`,
  cancel: 'Leave it',
  left: 'Nothing was carried in.',
  undo: 'Take back what came in',
  undone: 'What came in is taken back. Everything is as before.',
  readingOnly: 'This tab only reads. Carry in from the tab that writes.',

  toSettle: 'Two versions to settle',
  toSettleSome: (n: number) => (n === 1 ? '1 thing has two versions.' : `${n} things have two versions.`),
  toSettleRounds: (n: number) =>
    n === 1 ? '1 pair of rounds may be one round.' : `${n} pairs of rounds may be one round.`,
  goSettle: 'Settle them',
} as const);
