import type { NeedOf } from '../../../src/engine/condition';
import type { Advice, ZoneHolds } from '../../../src/engine/hold';
import type { BodyOf, KindOfThing, Thing } from '../../../src/engine/record';
import type { WorkFacts } from '../../../src/engine/year';

export const work = 'sculpture/w1';

/** A thing as it is read, with the instant it was written. */
export const thing = <K extends KindOfThing>(kind: K, id: string, body: object, at = '2026-05-12T10:00:00.000+00:00') =>
  ({ thing: `${kind}/${id}`, body: body as BodyOf<K>, lead: { at }, heads: [id] }) as unknown as Thing<K>;

export const aZone = (
  letter: string,
  given: Partial<BodyOf<'zone'>> & { readonly m2?: number; readonly of?: string } = {},
) => {
  const { m2 = 1, of = work, ...rest } = given;
  return thing('zone', letter, {
    sculpture: of,
    letter,
    name: `part ${letter}`,
    order: letter.charCodeAt(0),
    exposure: ['vertical', 'open'],
    reach: 'ground',
    significance: 1,
    versions: [
      { n: 1, since: '2020-01-01', substrate: 'bronze', area: { m2, low: m2 * 0.9, high: m2 * 1.1, method: 'typed' } },
    ],
    ...rest,
  });
};

type Seen = WorkFacts['need'];

/** The latest round as classed: levels of the whole, what was not seen, where findings were. */
export const classed = ({
  urgency = 0,
  condition = 0,
  recommendation = 0,
  stopWords = [],
  dangers = 0,
  unseen = [],
  found = [],
  asks = false,
}: {
  readonly urgency?: number;
  readonly condition?: number;
  readonly recommendation?: number;
  readonly stopWords?: readonly string[];
  readonly dangers?: number;
  readonly unseen?: readonly string[];
  readonly found?: readonly string[];
  readonly asks?: boolean;
} = {}): Seen => {
  const reason = { code: 'class: nothing presses', params: {} };
  return {
    score: {
      unscored: unseen.map((zone) => ({ zone })),
      zones: found.map((zone) => ({ zone, findings: [{}] })),
    },
    classes: {
      dangers: Array.from({ length: dangers }, () => ({ reason })),
      zones: [],
      sculpture: {
        stopWords,
        urgency: { level: urgency },
        condition: { level: condition },
        recommendation: { level: recommendation, askConservator: asks ? [reason] : [] },
      },
    },
  } as unknown as Pick<NeedOf, 'score' | 'classes'>;
};

export const said = (zone: string, given: Partial<Advice>) =>
  ({ zone, asksConservator: false, expected: null, waxAgainBy: null, reasons: [], ...given }) as Advice;

export const months = (value: number) => ({ value, low: null, high: null, reasons: [] });

export const onNow = (zone: string, state: 'clear' | 'back' | 'not clean' | 'unknown') =>
  ({ zone, onNow: { state } }) as unknown as ZoneHolds;

export const facts = (given: Partial<WorkFacts> = {}): WorkFacts => ({
  work,
  zones: ['A', 'B'].map((letter) => ({ zone: aZone(letter), m2: 1 })),
  need: classed(),
  rounds: ['2023-05-10', '2024-05-10', '2025-05-10'],
  coatings: ['2023-05-20', '2024-05-20', '2025-05-20'],
  advice: [],
  holds: [],
  away: undefined,
  ...given,
});

export const codes = (reasons: readonly { readonly code: string }[]): string[] => reasons.map(({ code }) => code);
