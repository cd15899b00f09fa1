import { type SculptureRecord, seriesOf, type Thing, zonesAt } from '../record';

/**
 * A record as far as the second pass and the screens read it: all that is not of a round, what was seen in this one, and of earlier
 * rounds one finding of each series, which tells that it was there before. Small enough to be kept beside the record.
 */
export const latestOnly = (record: SculptureRecord, round: Thing<'round'>): SculptureRecord => {
  const inRound = (t: { readonly body: { readonly round: string } }) => t.body.round === round.thing;
  return {
    ...record,
    visits: record.visits.filter(inRound),
    findings: [...firstOfSeries(record, round), ...record.findings.filter(inRound)],
    reratings: [],
    classSets: record.classSets.filter(inRound),
  };
};

/** As little as the list of needs reads of it: one round, the zones of its day, and what was seen in it. */
export const onlyRound = (record: SculptureRecord, round: string): SculptureRecord => {
  const rounds = record.rounds.filter(({ thing }) => thing === round);
  const inRound = (t: { readonly body: { readonly round: string } }) => t.body.round === round;
  return {
    ...record,
    zones: zonesAt(record, rounds[0]?.body.date ?? ''),
    rounds,
    visits: record.visits.filter(inRound),
    findings: record.findings.filter(inRound),
    reratings: [],
    classSets: record.classSets.filter(inRound),
    looks: [],
    treatments: [],
  };
};

/** The first finding, not looked for and gone, of each series in the rounds of an earlier date. */
const firstOfSeries = (record: SculptureRecord, round: Thing<'round'>): readonly Thing<'finding'>[] => {
  const earlier = new Set(record.rounds.filter(({ body }) => body.date < round.body.date).map(({ thing }) => thing));
  const first = new Map<string, Thing<'finding'>>();
  for (const finding of record.findings) {
    const { body } = finding;
    if (!earlier.has(body.round) || body.cleared) continue;
    const series = seriesOf(body.zone, body.kind, body.origin);
    if (!first.has(series)) first.set(series, finding);
  }
  return [...first.values()];
};
