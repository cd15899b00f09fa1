import { spoken } from '../tongue';
import { unitOf } from '../units';

/** The condition report of one work, after the contents of EN 16095. Numbers and dates come in already written by the formatter. */
export const paperCondition = spoken('paperCondition', 'paperCondition', {
  title: 'Condition report',
  reader: 'conservator, file, lender, insurer',

  noRound: 'No round of this work has been made yet. Nothing of its condition is recorded.',
  allLooked: (zones: string, day: string) => `All ${zones} zones were looked at on ${day}.`,
  oneLooked: (day: string) => `The one zone of the work was looked at on ${day}.`,
  noneLooked: (day: string) => `No zone was looked at on ${day}.`,
  someLooked: (seen: string, zones: string, share: string, day: string) =>
    `${seen} of ${zones} zones were looked at on ${day}: ${share} of the area. The others stand here, and nothing is said of them further on.`,
  leftZone: (zone: string, area: string, why: string) => `${zone}, ${area}: ${why}`,
  leftWhy: {
    carried: (day: string) => `taken over from the round of ${day}, not judged again`,
    carriedPlain: 'taken over from an earlier round, not judged again',
    partly: 'partly taken over from an earlier round: no index of its own',
    notVisited: 'not visited in this round',
  },
  open: 'The round is not closed yet: zones may still be added.',
  surfaceOnly:
    'Only the surface that can be seen from outside was looked at. Nothing was opened, sampled or tested: core, armature, fixings and foundation are not part of this survey.',
  noDangers: 'On the day this paper was made the record named no danger to people that was still open.',

  what: 'The work',
  facts: {
    number: 'Number',
    titleOf: 'Title',
    maker: 'Maker',
    date: 'Date',
    materials: 'Materials',
    dimensions: 'Dimensions',
    place: 'Place',
    zones: 'Zones',
    inserts: 'Inserts',
    note: 'Note',
  },
  zonesOf: (zones: string, area: string) => `${zones}, ${area} in all`,
  zoneCount: (n: number, figure: string) => (n === 1 ? '1 zone' : `${figure} zones`),

  survey: 'This survey',
  purpose: 'Purpose',
  purposeHint: (drafted: string) => `Why this survey was made, and for whom. Left empty, the paper says: ${drafted}`,
  purposes: {
    annual: 'The yearly survey of the condition. Care and the next looks are planned from it.',
    autumn: 'The second survey of the year, before winter.',
    'before treatment': 'The state of the work before a treatment begins.',
    'after treatment': 'The state of the work after a treatment: what later surveys are compared with.',
    incident: 'The state of the work after something happened to it.',
  },
  examiner: 'Examined by',
  examinerNot: 'not said',
  kind: 'Round',
  roundOf: (type: string, day: string) => `${type}, ${day}`,
  surface: 'Surface',
  wet: { dry: 'dry', damp: 'damp', wet: 'wet' },
  washed: { 'before wash': 'before washing', 'after wash': 'after washing' },
  surfaceOf: (wet: string, washed: string) => `${wet}, ${washed}`,
  light: 'Light',
  lightHint: 'Open shade, overcast, low sun; artificial light and from where.',
  lights: { 'open shade': 'open shade', overcast: 'overcast', sun: 'sun', artificial: 'artificial light' },
  lightOfPhotos: (lights: string) => `${lights}, as written with the photos`,
  notRecorded: 'not recorded',
  reach: 'Reached',
  reachOf: (how: string, zones: string) => `${how}: ${zones}`,
  looking: 'How it was looked at',
  byEye: 'By eye, zone by zone in walking order; coverage told against drawn patches of known coverage.',
  ownEye: 'Earlier values stayed hidden until each had been made anew.',
  documents: 'Documents used',
  docRounds: (n: number, figure: string, first: string, last: string) =>
    n === 1 ? `one earlier round, ${first}` : `${figure} earlier rounds, ${first} to ${last}`,
  docLog: (n: number, figure: string) => (n === 1 ? '1 entry of the logbook' : `${figure} entries of the logbook`),
  docPhotos: (n: number, figure: string) => (n === 1 ? '1 photo of this round' : `${figure} photos of this round`),
  docNone: 'None: this is the first survey.',
  roundNote: 'Note of the round',

  condition: 'Condition',
  summary: 'In a few words',
  summaryHint: 'What matters most, in your own words. Left empty, the paper goes without.',
  index: 'Condition index',
  indexOf: (value: string, range: string) => `${value} (${range})`,
  indexNone: 'none: no zone was looked at',
  indexHow: (share: string, scale: string) =>
    `0 to 100, 100 is sound; mean of the zones by area and significance, over ${share} of the area. In brackets the 90 % range, from the error of judging coverage by eye and of the light of the day. Scale ${scale}.`,
  active: { green: 'Green, not at rest', bare: 'Bare metal, not at rest', scale: 'Hard scale, not at rest' },
  activeHow: 'Coverage times area, summed over the zones looked at; 90 % range from both errors.',
  weakest: 'Weakest zone',
  weakestOf: (zone: string, value: string, range: string) => `${zone}: ${value} (${range})`,
  weakestHow: 'The zone with the lowest index: a mean can hide it. 90 % range from coverage only.',

  classes: 'Classes of the whole work',
  classColumns: { of: 'Class', proposed: 'Proposed by rule', set: 'Set by a person', why: 'Why the rule proposes it' },
  classNames: { condition: 'Condition', urgency: 'Urgency', recommendation: 'Recommendation' },
  classOf: (id: string, name: string) => `${id}, ${name}`,
  classNone: 'none',
  classNotSet: 'not set',
  classSetBy: (name: string, by: string) => `${name}. Set by ${by}`,
  whyHighest: (zones: string) => `The highest of its zones: ${zones}.`,
  whyWeakest: (zones: string) => `The whole is at most one class better than its weakest part: ${zones}.`,
  classesHow:
    'Classes after EN 16096:2012, in our own words. A rule proposes them from the findings; what a named person sets counts before it. They say how strong signs are and how soon and what sort of care is asked for. They name no cause and prescribe no treatment.',

  zones: 'Zone by zone',
  zoneColumns: { zone: 'Zone', area: 'Area', index: 'Index', classes: 'CC UC RC', seen: 'What was seen' },
  zoneLies: (lie: string, reach: string) => [lie, reach].filter(Boolean).join('; '),
  nothing: 'Looked at, nothing found.',
  notJudged: 'Not judged in this round: see the beginning of the paper.',
  beading: (how: string) => `Water on the surface: ${how}.`,
  finding: (parts: readonly string[]) => `${parts.join(', ')}.`,
  origins: { dirt: 'taken for dirt', stain: 'a stain from above', metal: 'in the metal' },
  cover: (share: string, low: string, high: string) => `${share} of the zone (${low} to ${high})`,
  count: { one: 'one', 'two to five': 'two to five', more: 'six or more' },
  cleared: 'looked for, no longer there',
  carried: 'taken over, not judged again',
  zoneHow: (areas: string) =>
    `Area in ${unitOf('area')} with its 90 % range: ${areas}. Index 0 to 100, 100 is sound, with its 90 % range from coverage only. Coverage is the share of the zone with its 90 % range. CC condition, UC urgency, RC recommendation class; * as set by a person, else as proposed by rule.`,
  areaMethods: {
    typed: 'as entered',
    solids: 'from simple shapes laid over the form',
    strips: 'from girth and height, strip by strip',
    outline: 'from the outline on a photo',
  },

  views: 'Marked views',
  noViews: 'No zone is drawn on a picture of the work yet.',
  hatchKey: 'Hatch',
  hatch: {
    0: 'looked at, no finding told by area',
    1: 'under 5 %',
    2: '5 to 25 %',
    3: '25 to 50 %',
    4: 'over 50 %',
    open: 'not judged in this round',
  },
  hatchHow:
    'The hatch tells the largest coverage of one finding in the zone in this round, dirt left out. Drawn is the outline of a zone, not the place of a finding in it.',
  notDrawn: (zones: string) => `Not on any view: ${zones}.`,

  photos: 'Photos of this round',
  noPhotos: 'No photo belongs to this round.',
  photoMore: (n: number, figure: string) =>
    n === 1
      ? '1 more photo of this round is in the archive.'
      : `${figure} more photos of this round are in the archive.`,
  photoRoles: {
    finding: 'Finding',
    zone: 'Zone',
    elevation: 'Side',
    look: 'Look',
    station: 'Station',
    sentinel: 'Square',
    other: 'Photo',
  },
  photoSquare: { best: '10 by 10 cm, the best spot', worst: '10 by 10 cm, the worst spot' },
  photoFrame: (metres: string) => `the frame is about ${metres} wide`,
  photoNoScale: 'no scale recorded',
  photosHow:
    'Scale: squares are 10 by 10 cm; the width of a frame is worked out from a measured length on the same view, and holds for that depth only.',

  comparison: 'Compared with the last round like it',
  comparisonNone: 'There is no earlier round to compare with.',
  comparisonUnlike: (day: string) =>
    `The last round, of ${day}, was of another kind or state of the surface. Its figures are not compared here:`,
  comparedWith: (type: string, day: string, surface: string) =>
    `Compared with the round of ${day} (${type}, ${surface}), the last of the same kind and state.`,
  comparedColumns: {
    zone: 'Zone',
    before: 'Index then',
    now: 'Index now',
    least: 'Least that counts',
    verdict: 'Verdict',
  },
  wholeWork: 'The whole work',
  comparedHow:
    'Index with its 90 % range. “Least that counts” is the smallest difference in points that would be called a change, given the error of both rounds.',
  changed: 'Changed by more than both errors',
  changedNone: 'Nothing changed for sure.',
  unsure: 'Perhaps changed, not sure',
  indexChange: (name: string, verdict: string, before: string, now: string) =>
    `${name}: ${verdict}, index ${before} then, ${now} now.`,
  changeOf: (zone: string, kind: string, verdict: string, more: string) =>
    `${zone}: ${kind}. ${verdict}${more ? `: ${more}` : ''}.`,
  now: (share: string) => `now ${share} of the zone`,
  namedFrom: (what: 'severity' | 'activity' | 'count', before: string, now: string) =>
    `${what} ${before} then, ${now} now`,
  fromTo: (before: string, now: string) => `from ${before} to ${now} of the zone`,
  carriedOrNot: (carried: number, not: number) =>
    [
      carried > 0 && (carried === 1 ? '1 finding was taken over' : `${carried} findings were taken over`),
      not > 0 && (not === 1 ? '1 could not be compared' : `${not} could not be compared`),
    ]
      .filter(Boolean)
      .join('; '),
  noSureChange: (n: number) =>
    n === 1 ? '1 finding shows no change one can be sure of.' : `${n} findings show no change one can be sure of.`,
  byChance: (comparisons: number, expected: string) =>
    comparisons === 1
      ? `One comparison was made. By chance alone about ${expected} of such would look changed.`
      : `${comparisons} comparisons were made. By chance alone about ${expected} of them would look changed though nothing did.`,
  done: 'Done between the two rounds',
  doneNone: 'The logbook holds nothing between the two rounds.',
  doneWhat: 'It stands beside the change. It does not say what caused it.',

  earlier: 'Rounds before',
  earlierColumns: { date: 'Date', type: 'Round', index: 'Index', seen: 'Looked at' },
  earlierHow:
    'Index with its 90 % range, over the zones looked at in each round. “Looked at” is the share of the area.',

  seenIn: (kind: string, zones: string) => `${kind}: ${zones}.`,
  seenZone: (letter: string, share: string) => `${letter} ${share}`,
  seenNothing: 'Nothing was found in any zone looked at.',
  thoughts: 'Seen and thought',
  thoughtBy: (by: string, day: string, source: string) => [by, day, source].filter(Boolean).join(', '),
  thoughtOf: (zone: string, statement: string) => `${zone}: ${statement}`,
  noThoughts: 'Nobody has written down a thought about this work.',
  thoughtsMore: (n: number, figure: string) =>
    n === 1 ? '1 older thought is in the archive.' : `${figure} older thoughts are in the archive.`,

  signs: 'Signatures',
  signExaminer: 'examined',
  signReceiver: 'read and taken to file',
  lacks: {
    light: 'The light on the day is not recorded: say it below, or with the photos.',
    surveyor: 'It is not said who made the round.',
    photos: 'No photo belongs to this round.',
    set: 'No class of the whole work is set by a person: the report gives what the rule proposes.',
    open: 'The round is not closed yet.',
  },
});
