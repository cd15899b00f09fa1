import type { BodyOf, Entry, KindOfThing, SculptureRecord, Thing } from '../../../src/engine/record';
import { type LadderStep, ladder } from '../../../src/engine/trade';

type Finding = BodyOf<'finding'>;

export const sculpture = 'sculpture/heron';
export const zoneName = (letter: string): string => `zone/${letter}`;
export const roundName = (year: number): string => `round/${year}`;

const thingOf = <K extends KindOfThing>(thing: string, body: BodyOf<K>): Thing<K> => ({
  thing,
  body,
  lead: { body } as unknown as Entry,
  heads: ['head'],
});

export const stepOf = (label: string): LadderStep => ladder.find((step) => step.label === label) as LadderStep;

export const onLadder = (label: string): Finding['coverage'] => {
  const { value, low, high } = stepOf(label);
  return { value, low, high, method: 'ladder' };
};

/** A finding of zone A in the round of 2026, slight and unclear unless said. */
export const findingBody = (kind: string, more: Partial<Finding> = {}): Finding => ({
  sculpture,
  round: roundName(2026),
  zone: zoneName('A'),
  kind,
  origin: 'metal',
  severity: 'slight',
  activity: 'unclear',
  ...more,
});

export const zoneThing = (letter: string, m2: number, significance = 1): Thing<'zone'> =>
  thingOf<'zone'>(zoneName(letter), {
    sculpture,
    letter,
    name: `Zone ${letter}`,
    order: letter.charCodeAt(0),
    exposure: ['open'],
    reach: 'ground',
    significance,
    versions: [
      {
        n: 1,
        since: '2020-01-01',
        substrate: 'bronze',
        area: { m2, low: m2 * 0.85, high: m2 * 1.15, method: 'solids' },
      },
    ],
  });

export const roundThing = (year: number, more: Partial<BodyOf<'round'>> = {}): Thing<'round'> =>
  thingOf<'round'>(roundName(year), {
    sculpture,
    type: 'annual',
    date: `${year}-05-12`,
    wet: 'dry',
    washed: 'before wash',
    ownEye: true,
    surveyor: 'surveyor/steward',
    ended: `${year}-05-12`,
    ...more,
  });

/** What one zone got in one round. */
export interface Made {
  readonly zone: string;
  readonly year?: number;
  readonly state?: BodyOf<'visit'>['state'];
  readonly visit?: Partial<BodyOf<'visit'>>;
  readonly findings?: readonly Finding[];
}

export const visitThing = ({ zone, year = 2026, state, visit, findings = [] }: Made): Thing<'visit'> =>
  thingOf<'visit'>(`visit/${year}/${zone}`, {
    sculpture,
    round: roundName(year),
    zone: zoneName(zone),
    zoneVersion: 1,
    state: state ?? (findings.length > 0 ? 'found' : 'nothing'),
    ...visit,
  });

export const findingThings = ({ zone, year = 2026, findings = [] }: Made): readonly Thing<'finding'>[] =>
  findings.map((body) =>
    thingOf<'finding'>(`finding/${year}/${zone}/${body.kind}/${body.origin}`, {
      ...body,
      round: roundName(year),
      zone: zoneName(zone),
    }),
  );

export const checkThing = (id: string, more: Partial<BodyOf<'personCheck'>> = {}): Thing<'personCheck'> =>
  thingOf<'personCheck'>(`personCheck/${id}`, { sculpture, what: 'loose plaque', opened: '2026-05-12', ...more });

export const classSetThing = (about: string, more: Partial<BodyOf<'classSet'>>): Thing<'classSet'> =>
  thingOf<'classSet'>(`classSet/2026/${about}`, {
    sculpture,
    round: roundName(2026),
    about,
    setBy: 'Steward',
    ...more,
  });

/** A record with these zones and visits; rounds are made for every year a visit names, and 2026. */
export const recordOf = (
  zones: readonly Thing<'zone'>[],
  made: readonly Made[],
  more: Partial<SculptureRecord> = {},
): SculptureRecord => ({
  sculpture: thingOf<'sculpture'>(sculpture, { number: 'X-1', title: 'Heron, invented' }),
  scale: null,
  holdRules: null,
  eyes: {},
  zones,
  rounds: [...new Set([2026, ...made.map(({ year = 2026 }) => year)])].sort().map((year) => roundThing(year)),
  visits: made.map(visitThing),
  findings: made.flatMap(findingThings),
  reratings: [],
  classSets: [],
  personChecks: [],
  looks: [],
  treatments: [],
  inserts: [],
  unknown: [],
  unsettled: [],
  ...more,
});
