import {
  areaOn,
  type BodyOf,
  findingsOf,
  latestRound,
  type SculptureRecord,
  type Thing,
  visitOf,
  zonesAt,
} from '../record';
import { areaTolerance, workItemOf } from '../trade';

export type QuantityLine = BodyOf<'quantities'>['items'][number];

/** What was seen in a zone, for the words of its line. */
export interface SeenInZone {
  /** Day of the round. */
  readonly date: string;
  readonly state: BodyOf<'visit'>['state'];
  readonly findings: readonly Pick<BodyOf<'finding'>, 'kind' | 'coverage' | 'count' | 'severity'>[];
}

export interface LineToBe {
  readonly line: QuantityLine;
  /** Undefined where no round is recorded, or the line is of no zone. */
  readonly seen: SeenInZone | undefined;
}

export interface ScheduleAsked {
  /** Names of zones. */
  readonly zones: readonly string[];
  /** Codes of trade/workItems. */
  readonly tasks: readonly string[];
  readonly photos: readonly Thing<'photo'>[];
  readonly today: string;
}

/**
 * The lines that zones and inserts of a work make, beside those that are there: a zone, insert and task is never put down twice.
 * Areas in m2, two places, with the range of the survey, never narrower than what bidders reckon with (trade/areaTolerance).
 */
export const linesOf = (
  record: SculptureRecord,
  there: readonly QuantityLine[],
  { zones, tasks, photos, today }: ScheduleAsked,
): readonly LineToBe[] => {
  const living = zonesAt(record, today).filter(({ thing }) => zones.includes(thing));
  const wanted = tasks.flatMap((task): LineToBe[] => {
    const row = workItemOf(task);
    if (row?.per === 'zone') return living.map((zone) => ofZone(record, zone, task, photos, today));
    if (row?.per === 'insert')
      return record.inserts.map((insert) => ({ line: ofInsert(record, insert, task), seen: undefined }));
    return row ? [{ line: { id: '', name: row.name, task, unit: row.unit, amount: 1 }, seen: undefined }] : [];
  });
  const fresh = wanted.filter(({ line }) => !there.some((other) => isSame(line, other)));
  const first = 1 + Math.max(0, ...there.map(({ id }) => Number(/^i(\d+)$/.exec(id)?.[1] ?? 0)));
  return fresh.map(({ line, seen }, i) => ({ line: { ...line, id: `i${first + i}` }, seen }));
};

const isSame = (a: QuantityLine, b: QuantityLine): boolean =>
  a.task === b.task && a.zone === b.zone && a.insert === b.insert;

const ofZone = (
  record: SculptureRecord,
  zone: Thing<'zone'>,
  task: string,
  photos: readonly Thing<'photo'>[],
  today: string,
): LineToBe => {
  const inserts = record.inserts.filter(({ body }) => body.zone === zone.thing).map(({ thing }) => thing);
  const photo = latestPhotoOf(zone.thing, photos);
  const { letter, name, reach } = zone.body;
  const line: QuantityLine = {
    id: '',
    zone: zone.thing,
    name: `${letter} ${name}`,
    task,
    unit: 'm2',
    ...areaWithRange(areaOn(zone, today)),
    reach,
    ...(photo ? { photo } : {}),
    ...(inserts.length > 0 ? { inserts } : {}),
  };
  return { line, seen: seenIn(record, zone.thing) };
};

const ofInsert = (record: SculptureRecord, { thing, body }: Thing<'insert'>, task: string): QuantityLine => {
  const zone = record.zones.find((one) => one.thing === body.zone);
  const reach = zone ? { reach: zone.body.reach } : {};
  const where = zone ? `${zone.body.letter}: ` : '';
  return { id: '', insert: thing, name: `${where}${body.material}`, task, unit: 'piece', amount: body.count, ...reach };
};

const rounded = (m2: number): number => Math.round(m2 * 100) / 100;

/** The range of the area, at least the narrower one bidders reckon with. */
export const areaWithRange = ({
  m2,
  low,
  high,
}: {
  readonly m2: number;
  readonly low: number;
  readonly high: number;
}) => ({
  amount: rounded(m2),
  low: rounded(Math.min(low, m2 * (1 - areaTolerance.low))),
  high: rounded(Math.max(high, m2 * (1 + areaTolerance.low))),
});

const seenIn = (record: SculptureRecord, zone: string): SeenInZone | undefined => {
  const round = latestRound(record);
  const visit = round && visitOf(record, round.thing, zone);
  if (!round || !visit) return undefined;
  const findings = findingsOf(record, round.thing, zone)
    .filter(({ body }) => body.cleared === undefined)
    .map(({ body: { kind, coverage, count, severity } }) => ({ kind, coverage, count, severity }));
  return { date: round.body.date, state: visit.body.state, findings };
};

/** The photo of a zone taken last; of no day, first. */
const latestPhotoOf = (zone: string, photos: readonly Thing<'photo'>[]): string | undefined =>
  photos
    .filter(({ body }) => body.zone === zone)
    .sort((a, b) => (a.body.taken ?? '').localeCompare(b.body.taken ?? ''))
    .at(-1)?.thing;
