import { assemble, type BodyOf, type Entry, gather, nameOf, type SculptureRecord } from '../../engine/record';

type FindingBody = BodyOf<'finding'>;

const sculpture = nameOf.sculpture('example');
const zone = nameOf.zone('example');
const round = nameOf.round('example');
const day = '2026-05-12';

/** What the reader can change. */
export type ExampleFinding = Pick<FindingBody, 'kind' | 'origin' | 'coverage' | 'count' | 'severity' | 'activity'>;

const entry = (n: number, thing: string, kind: string, body: Record<string, unknown>): Entry => ({
  id: `00000000-0000-7000-8000-${String(n).padStart(12, '0')}`,
  thing,
  kind,
  within: sculpture,
  v: 1,
  at: `${day}T10:00:00.000+00:00`,
  by: '',
  device: 'example',
  n,
  deed: '00000000-0000-7000-8000-000000000000',
  replaces: [],
  body,
});

/** A made-up sculpture of one zone with one finding, put together the way every record is, so that the engine works on it as on any. */
export const exampleRecord = (finding: ExampleFinding, m2: number, scale: BodyOf<'scale'> | null): SculptureRecord => {
  const where = { sculpture, round, zone };
  const entries = [
    entry(1, sculpture, 'sculpture', { number: '0', title: 'Example' }),
    entry(2, zone, 'zone', {
      sculpture,
      letter: 'A',
      name: 'Example',
      order: 1,
      exposure: ['open'],
      reach: 'ground',
      significance: 1,
      versions: [{ n: 1, since: day, substrate: 'bronze', area: { m2, low: m2, high: m2, method: 'typed' } }],
    }),
    entry(3, round, 'round', {
      sculpture,
      type: 'annual',
      date: day,
      wet: 'dry',
      washed: 'before wash',
      ownEye: true,
      surveyor: '',
      ended: day,
    }),
    entry(4, nameOf.visit(round, zone), 'visit', { ...where, zoneVersion: 1, state: 'found' }),
    entry(5, nameOf.finding(round, zone, finding.kind, finding.origin), 'finding', { ...where, ...finding }),
  ];
  const record = gather(assemble(entries).values(), { scale });
  if (!record) throw new Error('The example has a sculpture, so it has a record.');
  return record;
};

export const exampleRound = round;
