import type { EarlierFinding, ExtentMeasure, SculptureRecord, Thing, ZoneDraft } from '../../engine/record';
import { kindOf, kinds } from '../../engine/trade';

type Finding = Thing<'finding'>['body'];

/** How the extent of a recorded finding is told; a kind this version does not know is told the way it was recorded. */
export const measureOf = (body: Finding): ExtentMeasure =>
  kindOf(body.kind)?.measure ?? (body.coverage ? 'area' : body.count ? 'count' : 'presence');

const rank = new Map(kinds.map((kind, at) => [kind.id, at]));
const byTradeOrder = (a: EarlierFinding, b: EarlierFinding): number =>
  (rank.get(a.body.kind) ?? kinds.length) - (rank.get(b.body.kind) ?? kinds.length) ||
  a.body.origin.localeCompare(b.body.origin);

/** Rounds whose answers may be held against this one: earlier, of its type, on the same side of washing. Latest first. */
export const earlierRounds = (record: SculptureRecord, round: Thing<'round'>): readonly Thing<'round'>[] =>
  record.rounds
    .filter(
      (r) =>
        r.thing !== round.thing &&
        (r.body.date < round.body.date || (r.body.date === round.body.date && r.thing < round.thing)) &&
        r.body.type === round.body.type &&
        r.body.washed === round.body.washed,
    )
    .sort((a, b) => b.body.date.localeCompare(a.body.date) || (a.thing < b.thing ? 1 : -1));

export interface EarlierAnswers {
  readonly before?: NonNullable<ZoneDraft['before']>;
  readonly earlier: readonly EarlierFinding[];
}

/** What was last answered for a zone. A round that did not look at it is passed over: "not looked" is no answer to carry. */
export const earlierAnswers = (record: SculptureRecord, round: Thing<'round'>, zone: string): EarlierAnswers => {
  for (const was of earlierRounds(record, round)) {
    const visit = record.visits.find((v) => v.body.round === was.thing && v.body.zone === zone);
    if (!visit || visit.body.state === 'not looked') continue;
    const earlier = record.findings
      .filter(
        (f) => f.body.round === was.thing && f.body.zone === zone && !f.body.cleared && f.body.coverage?.value !== 0,
      )
      .map((f) => ({
        body: f.body,
        measure: measureOf(f.body),
        stop: kindOf(f.body.kind)?.stop === 'always',
        judgedIn: f.body.carriedFrom ?? was.thing,
      }))
      .sort(byTradeOrder);
    const judgedIn = visit.body.carriedFrom ?? was.thing;
    const judged = record.rounds.find((r) => r.thing === judgedIn);
    return { before: { round: was.thing, judgedIn, date: judged?.body.date ?? was.body.date }, earlier };
  }
  return { earlier: [] };
};
