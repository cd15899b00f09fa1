/** Slips of an invented eye on the logit of coverage: what a second judgement is off the first. A fixed table, used in turn. */
export const slips: readonly number[] = [0.2, -0.3, 0, 0.35, -0.15, 0.1, -0.35, 0.25, -0.1, 0.3, -0.2, 0.05];

export interface DemoEyeCheck {
  readonly day: string;
  readonly who: 'steward' | 'stand-in';
  /** How much this eye sees too much, on the logit. */
  readonly bias: number;
}

/** The Steward sees a little too much, the Stand-in more. */
export const eyeChecks: readonly DemoEyeCheck[] = [
  { day: '2024-05-06', who: 'stand-in', bias: 0.45 },
  { day: '2025-05-05', who: 'steward', bias: 0.2 },
  { day: '2026-05-04', who: 'steward', bias: 0.1 },
];

/** First year, as a place in the six, in which three zones are asked again at the end of each round. */
export const askedAgainFrom = 4;

/** One autumn day two people made the same round of SW-05 beside each other: percent by zone and kind, Steward and Helper. */
export const doneTwice = {
  work: 'SW-05',
  day: '2023-10-12',
  zones: [
    { letter: 'A', kind: 'bare-by-touch', steward: 35, helper: 30, severity: 'moderate' },
    { letter: 'A', kind: 'green-spots', steward: 2, helper: 0 },
    { letter: 'B', kind: 'green-spots', steward: 6, helper: 10 },
    { letter: 'C', kind: 'green-spots', steward: 3, helper: 3 },
    { letter: 'D', kind: 'bare-by-touch', steward: 15, helper: 15, severity: 'moderate', helperSeverity: 'slight' },
    { letter: 'D', kind: 'green-spots', steward: 4, helper: 5 },
    { letter: 'E', kind: 'bare-by-touch', steward: 12, helper: 15 },
    { letter: 'E', kind: 'green-spots', steward: 5, helper: 8 },
    { letter: 'F', kind: 'green-line-at-water', steward: 10, helper: 15 },
  ],
} as const;
