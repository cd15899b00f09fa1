import {
  type BodyOf,
  type Entry,
  type KindOfThing,
  nameOf,
  type SculptureRecord,
  type Thing,
} from '../../../src/engine/record';
import { type CoverageMethod, ladderStepOf } from '../../../src/engine/trade';

/** A record of one invented work, written as a table: what each round saw in each zone. */
export interface InventedFinding {
  readonly kind?: string;
  readonly origin?: 'dirt' | 'stain' | 'metal';
  /** Share of the zone; takes the bin of the ladder. */
  readonly cover?: number;
  readonly method?: CoverageMethod['id'];
  readonly range?: readonly [number, number];
  readonly count?: 'one' | 'two to five' | 'more';
  readonly severity?: 'slight' | 'moderate' | 'severe';
  readonly activity?: 'active' | 'unclear' | 'stable';
  readonly cleared?: true;
  readonly carried?: true;
  readonly against?: 'same' | 'changed' | 'earlier was wrong';
  readonly photos?: readonly string[];
}

export type InventedVisit = 'nothing' | 'carried' | 'not looked' | readonly InventedFinding[];

export interface InventedRound {
  readonly date: string;
  readonly type?: BodyOf<'round'>['type'];
  readonly wet?: BodyOf<'round'>['wet'];
  readonly washed?: BodyOf<'round'>['washed'];
  readonly surveyor?: string;
  /** Zone letter to what was seen; zones left out were not visited. */
  readonly saw: Readonly<Record<string, InventedVisit>>;
  /** Photos of zones, by letter. */
  readonly photos?: Readonly<Record<string, readonly string[]>>;
}

export interface InventedZone {
  readonly m2?: number;
  readonly significance?: number;
  readonly versions?: BodyOf<'zone'>['versions'];
  readonly since?: string;
  readonly split?: BodyOf<'zone'>['split'];
  readonly joined?: BodyOf<'zone'>['joined'];
}

export interface InventedWork {
  readonly zones: Readonly<Record<string, InventedZone>>;
  readonly rounds: readonly InventedRound[];
  readonly treatments?: readonly { readonly type: string; readonly date: string; readonly zones?: readonly string[] }[];
  readonly unsettled?: readonly string[];
}

export const zoneName = (letter: string): string => nameOf.zone(letter);
export const roundName = (n: number): string => nameOf.round(`r${n}`);
const sculpture = nameOf.sculpture('w');

const thingOf = <K extends KindOfThing>(thing: string, kind: K, body: BodyOf<K>): Thing<K> => {
  const lead: Entry = {
    id: '00000000-0000-7000-8000-000000000000',
    thing,
    kind,
    within: sculpture,
    v: 1,
    at: '2026-10-15T10:00:00.000+00:00',
    by: '',
    device: 'invented',
    n: 0,
    deed: '00000000-0000-7000-8000-000000000001',
    replaces: [],
    body: body as Record<string, unknown>,
  };
  return { thing, body, lead, heads: [lead.id] };
};

export const areaVersion = (n: number, since: string, m2: number, substrate = 'bronze') => ({
  n,
  since,
  substrate,
  area: { m2, low: m2 * 0.9, high: m2 * 1.1, method: 'typed' as const },
});

const coverageOf = (f: InventedFinding): BodyOf<'finding'>['coverage'] => {
  if (f.cover === undefined) return undefined;
  const bin = ladderStepOf(f.cover);
  const [low, high] = f.range ?? [bin.low, bin.high];
  return { value: f.cover, low, high, method: f.method ?? 'ladder' };
};

export const invented = (work: InventedWork): SculptureRecord => {
  const roundBodies = work.rounds.map((r, i) => {
    const body = {
      sculpture,
      type: r.type ?? 'annual',
      date: r.date,
      wet: r.wet ?? 'dry',
      washed: r.washed ?? 'before wash',
      ownEye: true,
      surveyor: r.surveyor ?? 'surveyor/steward',
      ended: r.date,
    } satisfies BodyOf<'round'>;
    return { r, thing: roundName(i), body };
  });
  const visits: Thing<'visit'>[] = [];
  const findings: Thing<'finding'>[] = [];
  for (const { r, thing: round } of roundBodies) {
    for (const [letter, saw] of Object.entries(r.saw)) {
      const zone = zoneName(letter);
      const at = { sculpture, round, zone };
      const list = typeof saw === 'string' ? [] : saw;
      const state = typeof saw === 'string' ? saw : saw.some((f) => !f.cleared) ? 'found' : 'nothing';
      visits.push(
        thingOf(nameOf.visit(round, zone), 'visit', {
          ...at,
          zoneVersion: work.zones[letter]?.versions?.filter((v) => v.since <= r.date).at(-1)?.n ?? 1,
          state,
          ...(state === 'not looked' ? { reason: 'out of reach' } : {}),
          ...(state === 'carried' ? { carriedFrom: roundName(0) } : {}),
          ...(r.photos?.[letter] ? { photos: [...r.photos[letter]] } : {}),
        }),
      );
      for (const f of list) {
        const kind = f.kind ?? 'even-green-film';
        const origin = f.origin ?? 'metal';
        const coverage = coverageOf(f);
        findings.push(
          thingOf(nameOf.finding(round, zone, kind, origin), 'finding', {
            ...at,
            kind,
            origin,
            severity: f.severity ?? 'moderate',
            activity: f.activity ?? 'unclear',
            ...(coverage ? { coverage } : {}),
            ...(f.count ? { count: f.count } : {}),
            ...(f.cleared ? { cleared: true as const } : {}),
            ...(f.carried ? { carriedFrom: roundName(0) } : {}),
            ...(f.against ? { against: f.against } : {}),
            ...(f.photos ? { photos: [...f.photos] } : {}),
          }),
        );
      }
    }
  }
  const zones = Object.entries(work.zones).map(([letter, z], i) =>
    thingOf(zoneName(letter), 'zone', {
      sculpture,
      letter: letter.slice(0, 4),
      name: `Zone ${letter}`,
      order: i,
      exposure: ['open'],
      reach: 'ground',
      significance: z.significance ?? 1,
      versions: z.versions ?? [areaVersion(1, z.since ?? '2000-01-01', z.m2 ?? 1)],
      ...(z.split ? { split: z.split } : {}),
      ...(z.joined ? { joined: z.joined } : {}),
    }),
  );
  return {
    sculpture: thingOf(sculpture, 'sculpture', { number: 'Q-01', title: 'Invented work' }),
    scale: null,
    holdRules: null,
    eyes: {},
    zones,
    rounds: roundBodies
      .map(({ thing, body }) => thingOf(thing, 'round', body))
      .sort((a, b) => a.body.date.localeCompare(b.body.date)),
    visits,
    findings,
    reratings: [],
    classSets: [],
    personChecks: [],
    looks: [],
    treatments: (work.treatments ?? []).map((t, i) =>
      thingOf(nameOf.treatment(`t${i}`), 'treatment', {
        sculpture,
        type: t.type,
        date: t.date,
        zones: (t.zones ?? []).map(zoneName),
      }),
    ),
    inserts: [],
    unknown: [],
    unsettled: [...(work.unsettled ?? [])],
    adrift: [],
  };
};

/** Two rounds a year apart in one zone A of 1 m2. */
export const pairOf = (then: InventedVisit, now: InventedVisit, more: Partial<InventedRound> = {}): SculptureRecord =>
  invented({
    zones: { A: {} },
    rounds: [
      { date: '2025-05-10', saw: { A: then } },
      { date: '2026-05-12', saw: { A: now }, ...more },
    ],
  });

export const codes = (reasons: readonly { readonly code: string }[]): string[] => reasons.map((r) => r.code);
