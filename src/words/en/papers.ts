import { spoken } from '../tongue';

/** Words of what lies in a bag to be read without the app: the report and the README. */
export const papers = spoken('papers', 'papers', {
  title: 'Condition survey',
  made: (day: string) => `Written on ${day}. It tells what the survey held on that day.`,
  invented: 'Invented: this collection and its works do not exist.',
  holds: (works: string, rounds: string, photos: string) => `${works}, ${rounds}, ${photos}.`,
  works: (n: number, figure: string) => (n === 1 ? '1 work' : `${figure} works`),
  rounds: (n: number, figure: string) => (n === 1 ? '1 round' : `${figure} rounds`),
  photos: (n: number, figure: string) => (n === 1 ? '1 photo' : `${figure} photos`),
  leftOut: (what: string) => `Left out when it was written: ${what}.`,
  leftOutNames: {
    names: 'names of people',
    places: 'places where the works stand',
    access: 'keys, codes and ladders',
    'insert values': 'values of inserts',
    money: 'prices, bids, funds and decisions',
  },
  missing: (n: number, figure: string) =>
    n === 1
      ? '1 photo is spoken of, and its picture was not there when this was written.'
      : `${figure} photos are spoken of, and their pictures were not there when this was written.`,
  readIt: 'How to read it',
  readItWhat: [
    'A work is surveyed zone by zone, once a year or so. Each finding says what was seen, on how much of the zone, how bad it is and whether it seems to go on.',
    'The index runs from 0 to 100; 100 is sound. The range behind it comes from how roughly coverage is judged by eye: in nine of ten cases the true figure lies inside.',
    'Zones that were not looked at have no index and are never filled in. Answers carried over from an earlier round are marked and not counted as seen.',
    'What people thought about causes stands apart under “Thought, not seen”.',
  ],
  care: 'A survey by eye is no diagnosis. Work on a monument, at height, with heat, solvents or hot wax is for people licensed and insured for it, by the rules of the place.',
  contents: 'Works',
  papers: 'Papers',
  papersWhat:
    'Each of these is a page of its own in the folder papers beside this one, made to be printed. All are drafts: nobody has signed them.',
  facts: {
    number: 'Number',
    maker: 'Maker',
    date: 'Date',
    materials: 'Materials',
    dimensions: 'Dimensions',
    place: 'Place',
    access: 'Access',
    note: 'Note',
  },
  noRound: 'No round has been walked yet.',
  lastRound: (type: string, day: string) => `${type} round, ${day}`,
  surface: (wet: string, washed: string) => `Surface ${wet}, ${washed}.`,
  index: 'Index',
  range: (value: string, range: string) => `${value} (${range})`,
  notScored: 'no index',
  seen: (share: string) => `Looked at: ${share} of the area.`,
  active: 'Not at rest',
  activeNames: { green: 'green', bare: 'bare metal', scale: 'hard scale' },
  zones: 'Zones',
  columns: { zone: 'Zone', area: 'Area', index: 'Index', seen: 'Seen', finding: 'Finding' },
  states: {
    found: 'looked at',
    nothing: 'looked at, nothing found',
    carried: 'carried over, not judged again',
    'not looked': 'not looked at',
  },
  notVisited: 'not in this round',
  cleared: 'looked for, no longer there',
  carried: 'carried over',
  count: { one: 'one', 'two to five': 'two to five', more: 'more than five' },
  of: (share: string, low: string, high: string) => `${share} of the zone (${low} to ${high})`,
  settle: (n: number) =>
    n === 1
      ? '1 thing of this work has two versions that nobody has settled yet. The figures take the worse one.'
      : `${n} things of this work have two versions that nobody has settled yet. The figures take the worse ones.`,
  earlier: 'Earlier rounds',
  roundColumns: { date: 'Date', type: 'Type', index: 'Index', looked: 'Looked at' },
  logbook: 'Logbook',
  logColumns: { date: 'Date', what: 'What', where: 'Where', details: 'Details' },
  whole: 'the whole work',
  look: (result: string) => `Look: ${result}`,
  checks: 'Checks for safety',
  checkOpen: 'open',
  checkClosed: (day: string, by: string) => `closed ${day} by ${by}`,
  inserts: 'Inserts',
  insert: (count: string, material: string) => `${count} × ${material}`,
  thought: 'Thought, not seen',
  pictures: 'Photos',
  picture: (role: string) => role,
  roles: {
    finding: 'Finding',
    zone: 'Zone',
    elevation: 'Side',
    look: 'Look',
    station: 'Station',
    sentinel: 'Square',
    other: 'Photo',
  },
  notHere: 'picture not in this bag',
  unknown: (n: number) =>
    n === 1
      ? '1 thing of a kind this version does not know is in survey.json and not told here.'
      : `${n} things of kinds this version does not know are in survey.json and not told here.`,

  readme: {
    head: 'A condition survey of outdoor bronzes',
    of: (name: string, day: string) => `Collection: ${name}. Written on ${day}.`,
    what: 'This folder is complete in itself. It can be read without the program that wrote it: everything is text, tables and pictures.',
    files: 'What lies here',
    rows: [
      [
        'data/report.html',
        'The survey to be read: works, zones, rounds, findings, photos. Open it in any web browser.',
      ],
      ['data/papers/', 'Papers to be printed or handed over, each a page of its own for any browser.'],
      ['data/findings.csv', 'One row for each finding, for a spreadsheet (RFC 4180, UTF-8).'],
      ['data/survey.json', 'The survey itself, everything that was entered and every correction (JSON, RFC 8785).'],
      ['data/survey.schema.json', 'What may stand in survey.json, field by field (JSON Schema 2020-12).'],
      ['data/survey.jsonld', 'Works, assessments and treatments in terms of CIDOC CRM (JSON-LD 1.1).'],
      ['data/photos/', 'The photos as they came from the camera. Each is named by the SHA-256 of its bytes.'],
      ['manifest-sha256.txt', 'The SHA-256 of every file under data/, to see that nothing was altered or lost.'],
      ['bagit.txt, bag-info.txt', 'What a bag is: BagIt 1.0, RFC 8493.'],
    ],
    check: 'To see that it is whole',
    checkWhat:
      'In a terminal, in this folder: sha256sum -c manifest-sha256.txt. Each line must end in OK. On other systems any program for BagIt or SHA-256 does the same.',
    json: 'How survey.json is read',
    jsonWhat: [
      'It holds a list of entries. An entry is never changed: a correction is a new entry whose “replaces” names the older ones.',
      'The state of a thing is told by its entries that no other replaces. Where there are two, two people spoke without seeing each other and nobody has settled it yet; both count as true until then.',
      '“thing” says what an entry speaks of, “within” which work it belongs to, “body” what was said. Coverage is a share of the zone, 0 to 1. Lengths are metres, areas square metres.',
      'What happened when is told by the date of the round. “at” is only what the clock of the tablet said.',
      'An entry of the kind “erasure” names entries and photos that were taken out for good, and why.',
    ],
    secrets: 'It is not encrypted. Whoever holds it can read it.',
    missing: 'Photos spoken of whose pictures are not here',
  },
} as const);
