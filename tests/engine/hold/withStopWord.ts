import type { SculptureRecord } from '../../../src/engine/record';

/** The record with a stop word seen on the zone in the last round that looked at it. */
export const withStopWord = (record: SculptureRecord, zone: string): SculptureRecord => {
  const dayOf = (round: string) => record.rounds.find(({ thing }) => thing === round)?.body.date ?? '';
  const round = record.visits
    .filter(({ body }) => body.zone === zone && body.state !== 'not looked')
    .map(({ body }) => body.round)
    .sort((a, b) => dayOf(a).localeCompare(dayOf(b)))
    .at(-1)!;
  const one = record.findings[0]!;
  const body = { ...one.body, zone, round, kind: 'green-under-film', cleared: undefined, carriedFrom: undefined };
  return { ...record, findings: [...record.findings, { ...one, body }] };
};
