import { spoken } from '../tongue';

/** Words of the eye check and of what is known of an eye. */
export const eyeCheck = spoken('eyeCheck', 'eyeCheck', {
  title: 'Eye check',
  lead: 'Twelve drawn patches whose coverage is known, about two minutes: it measures how far an eye errs, so that ranges and changes rest on that and not on a guess.',
  who: 'Whose eye',
  whoHint: 'Choose one to begin. Each person makes a check of their own.',
  nobody: 'Nobody has been named yet',
  nobodyWhat: 'An eye check belongs to a person. Say first who surveys here.',
  toSettings: 'Say who surveys',
  readingOnly: 'This page only reads, so no eye check can be made here.',

  begin: 'Begin',
  beginAgain: 'Make another check',
  beginAnew: 'Begin anew',
  beginWhat:
    'Judge each patch as you would a zone, with one touch and not for long. Half of them are under 10 %, for there the green comes back. You can stop at any time and go on later.',
  goOn: (patch: number, all: number) => `Go on at patch ${patch} of ${all}`,
  stoppedTitle: 'A check is not finished',
  stopped: (done: number, all: number) => `${done} of ${all} patches are judged. Nothing is used of it until all are.`,
  leave: 'Leave it off',
  left: 'The unfinished check is forgotten.',

  patch: (patch: number, all: number) => `Patch ${patch} of ${all}`,
  patchPicture: 'Drawn bronze with green on it',
  ask: 'How much of this patch is green?',
  askWhat: 'The small patches beside the steps are there as in a round: what is measured is your eye as it works.',
  drawing: 'Drawing …',
  back: 'The patch before',
  stop: 'Stop for now',
  made: 'The eye check is kept.',

  known: (who: string) => `What is known of ${who}’s eye`,
  notKnown: 'Not known yet',
  notKnownWhat: (said: string, low: string, high: string) =>
    `Until a check is made or zones are asked again, the usual error is assumed: where it says ${said}, the truth is taken to lie between ${low} and ${high}.`,
  likely: (said: string, low: string, high: string) =>
    `Where this eye says ${said}, the truth is likely between ${low} and ${high}.`,
  likelyBeside: (said: string, value: string, low: string, high: string) =>
    `Where this eye says ${said}, the truth is likely about ${value}, between ${low} and ${high}.`,
  steady: {
    steadier:
      'This eye is steadier than is usually assumed. Its rounds get narrower ranges, and a smaller change counts as real.',
    usual: 'This eye is about as steady as is usually assumed.',
    wider:
      'This eye moves more from one time to the next than is usually assumed. Its rounds get wider ranges, and it takes a larger change to count as real.',
  },
  lean: {
    none: 'No lean to more or to less that chance would not make.',
    noCurve: 'Whether it leans to more or to less is not known: that takes an eye check.',
    shown: (truth: string, said: string) => `It leans: where ${truth} is true, it says about ${said}.`,
  },
  used: 'What is used from now on',
  usedSpread: (sd: string, usual: string) =>
    `The error of this eye, ${sd} (usually assumed: ${usual}; standard deviation on the logit), in the ranges of all rounds made by this person and in every “are you sure it changed?”.`,
  usedLean:
    'Where a lean is shown, the corrected figure stands beside what was entered. What was entered is never altered, and no score or verdict uses the corrected one.',
  restsOn: 'What it rests on',
  rests: {
    checks: 'Eye checks',
    patches: 'Patches judged',
    pairs: 'Coverages judged twice at the end of rounds',
    worth: 'Worth, in pairs no ladder step blurs',
    seen: 'Spread seen in them alone',
    own: 'With the ten assumed pairs',
    used: 'As used, wider for how little it rests on',
  },

  curve: 'What was said and what is true',
  curveWhat: (patches: number) =>
    `All ${patches} patches of this eye. On the thin line the eye says what is true; above it, it says more.`,
  curveTitle: 'What this eye said of patches of known coverage',
  axisTrue: 'true coverage, %',
  axisSaid: 'said, %',
  legend: { true: 'says what is true', curve: 'this eye, with its 90 % range', patch: 'a patch' },
  tableShow: 'Show the patches as a table',
  tableHide: 'Hide the table',
  table: 'Patches of this eye',
  columns: { day: 'Check', true: 'True', said: 'Said' },
  curveTable: 'The curve',
  curveColumns: { true: 'Where this is true', said: 'this eye says', low: 'from', high: 'to' },

  checks: 'Earlier checks',
  checkOf: (day: string) => `Check of ${day}`,
  checkMeans: (patches: number, more: number, less: number) =>
    `${patches} patches: ${more} said higher than the step they lie in, ${less} lower.`,
  remove: (day: string) => `Remove the check of ${day}`,
  removeShort: 'Remove',
  removed: 'The check is removed and counts no more.',
  notASchoolMark: 'This is no mark. Two good eyes differ; what matters is that the error is known.',
  notTheBronze:
    'A drawn patch is no bronze in the sun. Zones asked again at the end of a round tell of the same eye outdoors, and both are counted together.',

  /** Beside a coverage that was entered. */
  corrected: (value: string) => `corrected for the eye check: about ${value}`,

  /** On other screens. */
  assumedHere: 'How steady the eye is that looked is not known yet, so the usual error is assumed.',
  invite: 'Make an eye check',
  inviteTitle: 'How good is the eye?',
  inviteWhat:
    'Two minutes on drawn patches, and the ranges of your rounds rest on your own error instead of an assumed one.',
  pairsSoFar: (pairs: number) =>
    pairs === 1
      ? 'One coverage judged twice is counted already.'
      : `${pairs} coverages judged twice are counted already.`,
  inSettings: 'Known eyes',
  inSettingsWhat: 'How far each person’s eye is known. It is used for the rounds that person makes.',
  toCheck: 'Eye check',
  person: 'Who',
  spread: 'Error',
  pairs: 'Judged twice',
  patches: 'Patches',
  assumedIs: (sd: string) => `${sd}, assumed`,
  eyeOf: (who: string) => `The eye of ${who}`,

  method: 'The error of an eye',
  methodText: [
    'Until it is known, one person looking again is taken to err by 0.30 on the logit of coverage.',
    'It becomes known from two things: coverages asked again at the end of a round (half of the squared difference of a pair is the variance of one judgement), and patches of known coverage in an eye check (the spread about the line through what was said, so that a lean is no unsteadiness).',
    'The width of the ladder’s steps and the half percent nobody gets under are taken off first. Each judgement counts by how much it says beside them: at “under 1 %” next to nothing.',
    'Ten assumed pairs are always counted in: s² = (10 × 0.30² + v × s² seen) / (10 + v), not under 0.20. For how little it rests on it is used wider, by Student’s t with 10 + v degrees over the normal quantile, and told in hundredths.',
    'Dots, tracings and photos are no eyes, nor are answers carried over. Light and damp of a day and the difference between two persons are added as before, once.',
    'A lean is a straight line through what was said and what is true, both on the logit. It is called shown where chance would seldom make it. The corrected figure stands beside the entry and is used in no sum.',
  ],
  methodNumbers: 'Numbers the error of an eye rests on',
  methodEyes: 'Eyes of this collection',
  methodNoEyes: 'No eye of this collection is known yet: the usual error is assumed for all.',
} as const);
