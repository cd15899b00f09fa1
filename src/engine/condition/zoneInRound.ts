import { findingsOf, type Reason, type SculptureRecord, type Thing, visitOf } from '../record';
import { because } from './reasonCodes';
import { judgedAfresh, type ZoneSeen } from './zoneIndex';

/** How a zone stands in a round: scored, or why not. The four are kept apart everywhere. */
export type Standing = 'seen' | 'carried' | 'partly carried' | 'not looked' | 'not visited';

export interface ZoneInRound {
  readonly zone: Thing<'zone'>;
  readonly standing: Standing;
  /** Missing where nobody visited. For a carried zone the findings are those of the round they were taken over from. */
  readonly seen?: ZoneSeen;
  /** Empty for zones that were seen. */
  readonly reasons: readonly Reason[];
}

/** Findings a carried visit stands for: its own copies, or those of the round it points back to, however many rounds back. */
const carriedFindings = (record: SculptureRecord, visit: Thing<'visit'>): readonly Thing<'finding'>[] => {
  const passed = new Set<string>();
  let at: Thing<'visit'> | undefined = visit;
  while (at && !passed.has(at.thing)) {
    passed.add(at.thing);
    const here = findingsOf(record, at.body.round, at.body.zone);
    if (here.length > 0 || at.body.state !== 'carried' || at.body.carriedFrom === undefined) return here;
    at = visitOf(record, at.body.carriedFrom, at.body.zone);
  }
  return [];
};

/** True where a chain of carried visits ends in one that was made by looking. */
const endsInLook = (record: SculptureRecord, visit: Thing<'visit'>): boolean => {
  const passed = new Set<string>();
  let at: Thing<'visit'> | undefined = visit;
  while (at && !passed.has(at.thing)) {
    passed.add(at.thing);
    if (at.body.state === 'found' || at.body.state === 'nothing') return true;
    if (at.body.state !== 'carried' || at.body.carriedFrom === undefined) return false;
    at = visitOf(record, at.body.carriedFrom, at.body.zone);
  }
  return false;
};

export const zoneInRound = (record: SculptureRecord, round: Thing<'round'>, zone: Thing<'zone'>): ZoneInRound => {
  const visit = visitOf(record, round.thing, zone.thing);
  if (!visit) return { zone, standing: 'not visited', reasons: [because('score: not visited')] };
  const { state, reason, carriedFrom } = visit.body;
  const day = round.body.date;
  if (state === 'not looked') {
    return { zone, standing: 'not looked', reasons: [because('score: not looked', { why: reason ?? '' })] };
  }
  if (state === 'carried') {
    const reasons = [because('score: carried', { from: carriedFrom ?? '' })];
    if (!endsInLook(record, visit)) return { zone, standing: 'carried', reasons };
    return { zone, standing: 'carried', seen: { visit, findings: carriedFindings(record, visit), zone, day }, reasons };
  }
  const findings = findingsOf(record, round.thing, zone.thing);
  const seen: ZoneSeen = { visit, findings, zone, day };
  // Only of what was judged in this round, for what was carried over may be another eye's.
  const eye = record.eyes[round.body.surveyor];
  if (judgedAfresh(seen)) return { zone, standing: 'seen', seen: { ...seen, ...(eye ? { eye } : {}) }, reasons: [] };
  const carried = findings.filter(({ body }) => body.carriedFrom !== undefined).length;
  const counts = { carried, judged: findings.length - carried };
  return { zone, standing: 'partly carried', seen, reasons: [because('score: partly carried', counts)] };
};
