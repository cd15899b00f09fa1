import type { Thing } from './current';
import type { SculptureRecord } from './sculptureRecord';

interface Index {
  readonly visits: ReadonlyMap<string, Thing<'visit'>>;
  readonly findings: ReadonlyMap<string, readonly Thing<'finding'>[]>;
}

const at = (round: string, zone: string): string => `${round}\n${zone}`;

/** A record never changes, so what was looked up once in it stays true: kept beside it, forgotten with it. */
const indexes = new WeakMap<SculptureRecord, Index>();

const indexOf = (record: SculptureRecord): Index => {
  const already = indexes.get(record);
  if (already) return already;
  const findings = new Map<string, Thing<'finding'>[]>();
  for (const f of record.findings) {
    const place = at(f.body.round, f.body.zone);
    const list = findings.get(place);
    if (list) list.push(f);
    else findings.set(place, [f]);
  }
  const visits = new Map(record.visits.map((v) => [at(v.body.round, v.body.zone), v]));
  const index = { visits, findings };
  indexes.set(record, index);
  return index;
};

/** What was recorded at a zone in a round, or undefined where the zone was not visited. Thing names. */
export const visitOf = (record: SculptureRecord, round: string, zone: string): Thing<'visit'> | undefined =>
  indexOf(record).visits.get(at(round, zone));

/** Findings of a zone in a round: seen, cleared and carried ones, in the order of their names. */
export const findingsOf = (record: SculptureRecord, round: string, zone: string): readonly Thing<'finding'>[] =>
  indexOf(record).findings.get(at(round, zone)) ?? [];

/** The nearest round of an earlier date, of whatever kind or state; which rounds may be compared is said in engine/change. */
export const earlierRound = (record: SculptureRecord, round: string): Thing<'round'> | undefined => {
  const here = record.rounds.find((r) => r.thing === round);
  return here && record.rounds.filter((r) => r.body.date < here.body.date).at(-1);
};
