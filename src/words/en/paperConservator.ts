import { spoken } from '../tongue';

/** The conservator's page: what we ask, with room to answer, on paper and as a form. What she answers is a thought with her name. */
export const paperConservator = spoken('paperConservator', 'paperConservator', {
  title: 'Conservator’s page',
  reader: 'the conservator, who fills it in',
  lead: 'Please write by hand, or have it typed in. What you write is kept under your name as a thought, apart from what was seen, and nothing of ours is changed by it.',
  question: 'What we ask you',
  questionHint: 'Your own question to the conservator. It stands first on the page.',

  ask: 'Why we ask',
  askColumns: { zone: 'Zone', seen: 'Seen there', why: 'Why we ask' },
  askCaption: 'Zones we would rather not touch before you have seen them',
  askNone: 'No zone of the last round asks for a conservator by our rules. Look where you like.',
  askHow: 'From the last round, by eye. Coverage is the share of the zone.',
  stopWord: (kinds: string) => `${kinds}: not washed, not waxed before you say so.`,
  noHold: 'Waxing does not hold here.',

  views: 'To draw on',
  viewsHow: 'Mark what you see. Letters are ours; draw new outlines where ours are wrong.',

  viewNotes: 'Notes to the drawing',

  before: 'Thought so far',

  viewing: 'How you saw it',
  surface: 'Surface',
  surfaces: ['dry', 'damp', 'wet', 'before washing', 'after washing'],
  light: 'Light',
  lights: ['open shade', 'overcast', 'sun', 'artificial light'],
  reach: 'Reached from',
  reaches: ['the ground', 'a ladder', 'a lift or scaffold', 'photos only'],
  samples: 'Samples or photos taken, and where they are kept',

  answers: 'What you answer',
  questions: {
    missing: { ask: 'What do you see that our record does not hold?', short: 'Not in the record' },
    going: { ask: 'What do you think goes on here, and how sure are you?', short: 'Thought to go on' },
    settle: { ask: 'What would settle it: a test, a sample, another look? Where and when?', short: 'Would settle it' },
    leave: { ask: 'What should nobody touch, wash or wax until then?', short: 'To be left alone' },
    never: { ask: 'What must never be done to this work?', short: 'Never to be done' },
    next: { ask: 'What should we look at on the next rounds, and in which zones?', short: 'To look at next' },
    other: { ask: 'What else should stand in the record?', short: 'Also said' },
  },
  statement: (short: string, answer: string) => `${short}: ${answer}`,
  nameAndOffice: 'Name, office, address',
  signs: 'conservator',
  /** Where an answer came from, kept with it. */
  source: 'conservator’s page',

  form: {
    title: 'Conservator’s page',
    lead: 'Type in what the conservator wrote or says. Each answer is kept under that name as a thought: no finding and no figure changes.',
    back: 'Back to the sculpture',
    by: 'Whose words these are',
    byHint: 'Name or office, as it shall stand beside them.',
    byMissing: 'Say whose words these are.',
    date: 'Day on which it was written or said',
    about: 'Of the whole work, or of one zone',
    whole: 'The whole work',
    nothing: 'Write at least one answer.',
    keep: 'Keep the answers',
    kept: (n: number) =>
      n === 1 ? '1 answer is kept among the thoughts.' : `${n} answers are kept among the thoughts.`,
    paper: 'The page on paper',
    link: 'Type in a conservator’s page',
    before: 'Thought so far',
  },
  lacks: {
    noRound: 'No round of this work has been made yet: the page asks without showing what was seen.',
    question: 'You have not written what you ask her.',
  },
});
