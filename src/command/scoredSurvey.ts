import { clearlyWorseGreen, previousComparable, thenAndNow } from '../engine/change';
import { classesOf, dangersWithoutRound, type NeedOf, orderOfNeed, scoreRound } from '../engine/condition';
import { format, type Survey } from '../engine/exchange';
import { assemble, asThing, type Current, gather, latestRound, nameOf, type SculptureRecord } from '../engine/record';
import { scaleOf } from '../engine/trade';
import { saidWith } from './said';
import { shownSculpture } from './shownSculpture';

/**
 * What a survey comes to: every work by its latest round (index, classes, zones, findings with what they take off), against the last
 * round it may be compared with, and all zones in order of need. Field names are in the README.
 */
export const scoredSurvey = (survey: Survey) => {
  const currents = [...assemble(survey.entries).values()];
  const own = currents.find(({ thing, gone }) => !gone && thing === nameOf.scale(survey.collection));
  const scale = (own && asThing(own, 'scale')?.body) ?? null;
  const records = recordsOf(currents, scale);
  const rounds = records.map((record) => {
    const round = latestRound(record);
    if (!round) return { record };
    const { round: previous, reasons } = previousComparable(record, round.thing);
    const change = previous && thenAndNow(record, previous.thing, round.thing);
    const score = scoreRound(record, round.thing);
    const clearlyWorse = change && clearlyWorseGreen(change);
    const classes = classesOf(record, round.thing, { score, ...(clearlyWorse ? { clearlyWorse } : {}) });
    return { record, round, score, classes, change, noChange: reasons };
  });
  const needs = rounds.flatMap((r): NeedOf[] => (r.score && r.classes ? [r as NeedOf] : []));
  const order = orderOfNeed(needs);
  // A danger is one whether a round was made or not.
  const people = [
    ...order.people,
    ...rounds
      .filter(({ round }) => round === undefined)
      .flatMap(({ record }) =>
        dangersWithoutRound(record).map((danger) => ({ ...danger, sculpture: record.sculpture.thing })),
      ),
  ];
  const named = namesIn(records);
  const said = saidWith(named);
  return {
    format,
    collection: survey.collection,
    scale: scaleOf(scale).id,
    notes: said(survey.notes),
    sculptures: rounds.map((r) => shownSculpture(r, said)),
    needs: {
      people: people.map(({ reason, ...danger }) => ({ ...danger, reasons: said([reason]) })),
      zones: order.zones.map(({ reasons, burden, ...rank }) => ({
        ...rank,
        burden: { ...burden, reasons: said(burden.reasons) },
        reasons: said(reasons),
      })),
      sculptures: order.sculptures.map(({ reasons, burden, ...rank }) => ({
        ...rank,
        burden: { ...burden, reasons: said(burden.reasons) },
        reasons: said(reasons),
      })),
      notRanked: order.notRanked.map(({ reasons, ...row }) => ({ ...row, reasons: said(reasons) })),
    },
  };
};

const recordsOf = (currents: readonly Current[], scale: SculptureRecord['scale']): SculptureRecord[] => {
  const within = new Map<string, Current[]>();
  for (const current of currents) within.set(current.within, [...(within.get(current.within) ?? []), current]);
  const byNumber = new Intl.Collator('en', { numeric: true });
  return [...within.values()]
    .flatMap((own) => gather(own, { scale }) ?? [])
    .sort((a, b) => byNumber.compare(a.sculpture.body.number, b.sculpture.body.number));
};

/** Zones, rounds and works by the names a person gave them. */
const namesIn = (records: readonly SculptureRecord[]): ((thing: string) => string | undefined) => {
  const names = new Map<string, string>();
  for (const { sculpture, zones, rounds } of records) {
    names.set(sculpture.thing, sculpture.body.title);
    for (const { thing, body } of zones) names.set(thing, `zone ${body.letter}, ${body.name}`);
    for (const { thing, body } of rounds) names.set(thing, `the round of ${body.date}`);
  }
  return (thing) => names.get(thing);
};
