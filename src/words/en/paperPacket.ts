import { spoken } from '../tongue';

/** What lies in the bag for a conservator, and what is asked. Numbers and dates come in already written by the formatter. */
export const paperPacket = spoken('paperPacket', 'paperPacket', {
  title: 'Packet for the conservator',
  reader: 'the conservator, with the bag',
  lead: 'This page goes with a bag of the work: one zip file with everything the record holds of it. Here stands what lies in it, and what we ask. We have looked and written down; what it means is yours to say.',
  own: {
    questions: 'Questions asked',
    questionsHint: 'One to a line. Until you write, the record asks what it cannot answer.',
  },
  questions: 'What we ask',
  questionsNone: 'Nothing in the record asks for you by itself.',
  stop: (zone: string, kind: string, day: string) =>
    `${zone}: on ${day} we wrote down “${kind}”. What is it, and may the zone be washed and waxed until you have seen it?`,
  holds: (zone: string) => `${zone}: waxing does not hold. What may be done instead, and what should be tried first?`,
  cause: (what: string, zones: string) =>
    `${what}${zones ? ` (${zones})` : ''} goes on. Can anything be done on the metal while it does?`,
  room: 'Answers and remarks',
  bag: 'What lies in the bag',
  bagColumns: { what: 'What', where: 'Where', much: 'How much' },
  bagHow:
    'Counts are of this work on the day of this page; the bag itself lists every file with its checksum in manifest-sha256.txt. What was left out when it was made stands on the first lines of README.txt.',
  rows: {
    report: ['The survey to read', 'data/report.html'],
    rounds: ['Rounds with every finding', 'data/survey.json, data/findings.csv'],
    looks: ['Looks between the rounds', 'data/survey.json'],
    photos: ['Photos as they came from the camera', 'data/photos'],
    papers: ['Papers', 'data/papers'],
    treatments: ['Entries of the logbook: products, coats, people', 'data/survey.json'],
    readings: ['Readings of instruments', 'data/survey.json'],
    causes: ['Causes, with how they stand', 'data/survey.json'],
    thoughts: ['What people thought', 'data/survey.json'],
  },
  count: (n: number, figure: string) => (n === 0 ? 'none' : figure),
  span: (n: string, first: string, last: string) => `${n}, ${first} to ${last}`,
  papersListed: 'listed in data/report.html',
  products: 'What was put on',
  productColumns: { what: 'Treatment', product: 'Product', times: 'Times', last: 'Last', coats: 'Coats' },
  productNone: 'not named',
  productsNone: 'The logbook holds no treatment.',
  lasted: 'How long it held',
  lastedColumns: { zone: 'Zone', coated: 'Coated', held: 'Months without green', end: 'Now' },
  lastedHow:
    'From the last look that saw no green to the first that did; where nobody looked in between, the span is wide. The latest coating of each zone that tells anything.',
  lastedNone: 'Nobody has looked between the rounds: nothing can be told of how long a coating held.',
  held: (low: string, high: string) => `${low} to ${high}`,
  heldOpen: (low: string) => `${low} or more`,
  ends: { returned: 'green back', 'coated again': 'coated again', 'still clear': 'clear when last looked at' },
  causes: 'Causes looked for',
  causesNone: 'No cause was written down.',
  causeRow: (what: string, zones: string, state: string, day: string, seen: string) =>
    `${what}${zones ? `, ${zones}` : ''}: ${state} (found ${day}). ${seen}`.trim(),
  thoughtRow: (what: string, by: string, day: string) => `${what} (${by}, ${day})`,
  thoughtNone: 'Nobody wrote down a thought.',
  lacks: {
    photos: 'Photos of the last round.',
    looks: 'Looks between the rounds: without them nothing can be told of how long a coating holds.',
  },
});
