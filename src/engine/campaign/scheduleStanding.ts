import { areaOn, endOf, type Reason, type SculptureRecord, type Thing, zonesAt } from '../record';
import { workItemOf } from '../trade';
import { because } from './reasonCodes';
import { areaWithRange, type QuantityLine } from './scheduleOfQuantities';

/** Where a schedule and the record of today part: what bidders would price wrongly, or not at all. */
export const scheduleStanding = (
  record: SculptureRecord,
  lines: readonly QuantityLine[],
  today: string,
): readonly Reason[] => {
  if (lines.length === 0) return [because('campaign: no schedule')];
  const treated = new Set(lines.flatMap(({ zone }) => zone ?? []));
  const bare = zonesAt(record, today).flatMap(({ thing, body }) => (treated.has(thing) ? [] : [body.letter]));
  return [
    ...(bare.length > 0 ? [because('campaign: zones without a line', { zones: bare.join(', ') })] : []),
    ...record.zones.flatMap((zone) => againstZone(zone, lines, today)),
    ...insertsUnprotected(record, lines).map(({ thing }) =>
      because('campaign: insert without protection', { insert: thing }),
    ),
  ];
};

const againstZone = (zone: Thing<'zone'>, lines: readonly QuantityLine[], today: string): Reason[] => {
  const own = lines.find((line) => line.zone === zone.thing && line.unit === 'm2');
  if (!own) return [];
  const { letter } = zone.body;
  const end = endOf(zone);
  if (end !== undefined && end <= today) return [because('campaign: zone ended', { letter })];
  const now = areaWithRange(areaOn(zone, today)).amount;
  return now === own.amount ? [] : [because('campaign: area changed since', { letter, before: own.amount, now })];
};

/** Inserts in zones that are to be treated, or in no zone, for which no line keeps them from harm. */
export const insertsUnprotected = (
  record: SculptureRecord,
  lines: readonly QuantityLine[],
): readonly Thing<'insert'>[] => {
  const treated = new Set(lines.flatMap(({ zone }) => zone ?? []));
  const kept = new Set(lines.flatMap(({ insert, task }) => (insert && workItemOf(task)?.protects ? [insert] : [])));
  return record.inserts.filter(
    ({ thing, body }) => (body.zone === undefined || treated.has(body.zone)) && !kept.has(thing),
  );
};
