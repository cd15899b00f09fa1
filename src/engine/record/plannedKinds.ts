import type { BodyOf, KindOfThing } from './bodies';

/**
 * Kinds of what is planned, paid, prepared and watched: each is said, changed and taken away in the same way, and no figure of the
 * condition rests on one.
 */
export const plannedKinds = [
  'methodSheet',
  'weather',
  'product',
  'incident',
  'move',
  'groundsAgreement',
  'yearPlan',
  'sitePlan',
  'yearVerdict',
  'listTicks',
  'task',
  'dueAnswered',
  'moneyRules',
  'option',
  'quote',
  'fund',
  'gift',
  'decision',
  'tripwireAnswer',
  'campaign',
  'cause',
  'quantities',
  'bid',
  'bidCriteria',
  'bidScore',
  'completeness',
  'approval',
  'colourCard',
  'layer',
  'hotDay',
  'insertCare',
  'insertReading',
  'insertAfter',
  'accessSheet',
  'paperText',
  'paperIssued',
  'keptWhere',
] as const satisfies readonly KindOfThing[];

export type PlannedKind = (typeof plannedKinds)[number];
export type PlannedBody<K extends PlannedKind> = BodyOf<K>;

const planned: ReadonlySet<string> = new Set(plannedKinds);

export const isPlanned = (kind: string): kind is PlannedKind => planned.has(kind);
