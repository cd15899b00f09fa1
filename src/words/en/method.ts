import { spoken } from '../tongue';

/** Words of the screen How is this worked out? */
export const method = spoken('method', 'method', {
  title: 'How is this worked out?',
  lead: 'No published standard gives an index for outdoor bronze. The scale here is this project’s own, built on published parts. Every row below is the row the sums use.',
  version: (version: string) => `Scale ${version}`,
  ownScale: 'Our thresholds, not a standard’s. A score names the version of the scale that made it.',
  ownVersion: (version: number, n: number) =>
    `This collection has its own numbers: version ${version}, ${n === 1 ? '1 hazard' : `${n} hazards`} set by hand.`,
  noOwnVersion: 'This collection uses the project’s own numbers.',
  result: 'The steps, worked out',
  exampleZone: 'The example zone',
  percent: (label: string) => `${label} %`,
  withRange: (value: string, range: string) => `${value} (${range})`,
  rangeIs: (value: string, range: string) => `Zone index ${value} (${range}): the range comes from the coverage only.`,
  oneStep: (severity: string, value: string) => `One step worse, ${severity}, and it would be ${value}.`,
  coverageWhy: 'The bin of the step and the error of the eye, at 90 %.',
  stainWhy: 'A stain from above takes the hazard of a stain, whatever its kind.',
  product: (parts: readonly string[], extent: string) => `${[...parts, extent].join(' × ')}`,
  indexProduct: (loss: string) => `100 × (1 − ${loss})`,
  print: 'Print this page',
  contents: 'On this page',
  contentsHide: 'Hide the list of headings',

  example: 'Try it: one finding, step by step',
  exampleWhat: 'Change the finding. The same sums that score your rounds work here.',
  kind: 'Kind of finding',
  coverage: 'Coverage',
  count: 'How many',
  origin: 'Where it sits',
  severity: 'Severity',
  activity: 'Activity',
  step: 'Step',
  figure: 'Figure',
  stepWhy: 'Where it comes from',
  steps: {
    coverage: 'Coverage, with the range the ladder and the eye allow',
    extent: 'Extent',
    hazard: 'Hazard of the kind',
    severity: 'Severity',
    activity: 'Activity',
    loss: 'Loss: hazard × severity × activity × extent, held under 0.98',
    index: 'Zone index: 100 × (1 − loss), multiplied over all findings',
  },
  extentWhy: {
    area: 'The square root of the coverage: the first percent says that the protection has gone.',
    count: 'By count: one 0.6, two to five 0.8, more 1.',
    length: 'By length or presence: 1.',
    presence: 'By length or presence: 1.',
  },
  unscored: 'This finding takes nothing off.',
  stopWord: 'This is a stop word. Record, photograph, do not wash or wax this zone yet. Ask the conservator.',

  kinds: 'Kinds of finding and their hazards',
  kindsWhat:
    'Hazard runs from 0.05 (looks only) to 1 (metal at stake). These numbers are this project’s own judgement, each with its why. Danger to people is not in them: it stands above every list.',
  group: {
    green: 'Green',
    dark: 'Dark',
    bare: 'Bare',
    white: 'White',
    coating: 'Coating',
    metal: 'Metal',
    iron: 'Iron',
    water: 'Water',
    deposit: 'Deposit',
    life: 'Life',
    insert: 'Insert',
    base: 'Base',
  } as Readonly<Record<string, string>>,
  measure: { area: 'by area', count: 'by count', length: 'by length', presence: 'by presence' } as Readonly<
    Record<string, string>
  >,
  columns: { kind: 'Kind', measure: 'Measured', hazard: 'Hazard', why: 'Why' },
  own: (project: string) => `project: ${project}`,
  stop: 'stop word',
  stopFirst: 'stop word the first time',
  person: 'person check',

  change: 'Change hazards for this collection',
  changeWhat:
    'Your numbers hold for this collection only. Each change raises the version; earlier papers keep the version they name.',
  stopChange: 'Leave it',
  hazardOf: (kind: string) => `Hazard of ${kind}`,
  lower: (kind: string) => `Lower the hazard of ${kind}`,
  raise: (kind: string) => `Raise the hazard of ${kind}`,
  actionLevel: 'Action level',
  actionLevelWhat: 'The zone index under which action is due. The project starts at 75.',
  keep: (version: number) => `Keep as version ${version}`,
  kept: (version: number) => `Kept as version ${version}. Undo takes it back.`,
  reset: 'Back to the project’s own numbers',
  resetDone: (version: number) => `The project’s own numbers hold again, as version ${version}.`,
  unchangedYet: 'Nothing is changed yet.',
  changedCount: (n: number) => (n === 1 ? '1 number changed' : `${n} numbers changed`),
  levelOutOfRange: 'Write a number from 0 to 100.',
  readingOnly: 'This tab only reads. Change the numbers in the tab that writes.',

  ladder: 'Coverage ladder',
  ladderWhat:
    'Each step stands for a bin, and the bins meet. The step is what you touch; the sums carry the bin as doubt.',
  ladderColumns: { step: 'Step', from: 'From', to: 'To', value: 'Counts as' },
  errors: 'Error of the eye',
  errorsWhat: 'How far a judgement by eye may be off, on the logit scale. Chosen inside the published observer error.',
  errorColumns: { what: 'What', value: 'Value', source: 'Source' },
  weights: 'Severity, activity, count, origin',
  takes: 'Takes',
  takesHazard: (hazard: 'none' | 'stain' | 'kind', stain: string) =>
    ({ none: 'no hazard', stain: `the hazard of a stain, ${stain}`, kind: 'the hazard of its kind' })[hazard],
  judgedHow: 'How a coverage was judged, and its own error',
  asReported: 'as reported',
  constants: 'Other numbers the sums rest on',
  severityTable: 'Severity',
  activityTable: 'Activity',
  factor: 'Factor',
  meaning: 'Meaning',
  name: 'Name',

  zoneRule: 'From findings to a zone',
  zoneRuleText: [
    'Loss of one finding = hazard × severity × activity × extent, held under 0.98.',
    'Zone index = 100 × the product of (1 − loss) over its findings. 100 means: looked, and nothing takes anything off.',
    'Dirt loses nothing and is asked again after washing. A stain from above takes the hazard of a stain and points to the zone it comes from.',
    'The range beside an index (90 %) comes from coverage only.',
    'A zone not looked at, or carried from an earlier round, has no index of its own. It is never filled in.',
  ],
  sculptureRule: 'From zones to a sculpture',
  sculptureRuleText: [
    'The mean of the zone indices, weighted by area and by the weight beside the area, over the zones looked at in that round.',
    'Beside it always stand the share of area seen, what the index would be if the unseen zones were as good as the best or as bad as the worst, and the weakest zone.',
  ],

  classes: 'Classes, proposed by rule',
  classesWhat:
    'The words follow EN 16096; the rules are this project’s own. A named person sets a class and may overrule any of them.',
  classColumns: { class: 'Class', means: 'Means', rule: 'Proposed when' },
  classNames: { condition: 'Condition class', urgency: 'Urgency class', recommendation: 'Recommendation class' },
  classRules: (n: {
    readonly cc1: string;
    readonly cc2: string;
    readonly stake: string;
    readonly active: string;
    readonly level: string;
    readonly share: string;
  }): Readonly<Record<'condition' | 'urgency' | 'recommendation', readonly string[]>> => ({
    condition: [
      'Looked, and nothing found.',
      `Zone index ${n.cc1} or over.`,
      `Zone index from ${n.cc2} to under ${n.cc1}; or a stop word. A whole work is at most one class better than its weakest zone.`,
      `Zone index under ${n.cc2}; or a severe, active finding in the metal with a hazard of ${n.stake} or more.`,
    ],
    urgency: [
      'Nothing presses.',
      `Another active finding in the metal over ${n.active} % of the zone; water that sheets or wets; a stop word; a kind whose row says so.`,
      `Zone index under the action level of ${n.level}; green in the metal clearly worse than at the last comparable round; a kind whose row says so.`,
      'Somebody could be hurt: a person check is open, or should be; a kind whose row says so.',
    ],
    recommendation: [
      'Nothing asks for more than looking.',
      'A kind that asks for washing and waxing; dirt to be washed and looked at again; water that sheets or wets.',
      'A kind that asks for a test or a repair; a severe, active finding in the metal.',
      `Never proposed by rule. Where signs are strong, or over ${n.share} % of the area seen, the app says: ask a conservator whether major treatment is due.`,
    ],
  }),
  beading: 'Water on the surface',
  beadingProposes: (level: number) => (level > 0 ? `UC${level} and RC${level} at least` : 'nothing'),
  areas: 'Areas of zones',
  cautions: 'Cautions',
  scaleItself: 'The scale as a whole',
  source: 'Source',
  howSure: 'How sure',
  order: 'Order of need',
  orderText: [
    'People first: an open person check stands above every list, apart from metal.',
    'Then the urgency class, the higher first.',
    'Then the burden: area × weight × (100 − zone index).',
    'Then the lower zone index.',
  ],

  treatments: 'What was done, and what it breaks',
  treatmentsWhat:
    'After some treatments the surface is another one. A comparison or a series does not run across them.',
  treatmentColumns: { treatment: 'Treatment', coats: 'Lays a coating', breaks: 'Breaks the series' },
  yes: 'yes',
  no: 'no',

  verdicts: 'This round against an earlier one',
  verdictText: [
    'Compared are rounds of one kind and state. Others are compared with a warning.',
    'A difference is called only when it is over 1.96 times its own error; “clearly” when it is over twice that line.',
    'Green, bare metal and scale are compared in square metres; findings on the logit of their coverage; zones on the logarithm of their index.',
    '“Nothing found” has an error too: a new trace may have been missed before.',
    'Many comparisons raise some false ones. What does not hold with all of them weighed together (Benjamini-Hochberg at 10 %) is marked “alone, could be chance”.',
    'Carried answers are no evidence and stay out of every sum.',
  ],

  sources: 'Sources, and how sure they are',
  sourcesWhat: 'What each number rests on. Most are this project’s own choice, and say so.',
  sure: {
    seen: 'page or data seen',
    abstract: 'abstract only',
    'from memory': 'from memory',
    'common practice, no source': 'common practice, no source',
    'own choice': 'this project’s own choice',
  },
  usedFor: 'Used for',
} as const);
