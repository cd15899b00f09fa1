import { areaOn, type Reason, type Thing } from '../record';
import { type YearNumber, yearNumbers } from './numbers';
import { because } from './reasonCodes';

/** A time or a rate with how little and how much it mostly was. */
export interface Span {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Minutes a zone takes: with one touch, and with findings to judge. */
export interface Pace {
  readonly oneTouch: Span;
  readonly withFinding: Span;
  readonly reasons: readonly Reason[];
}

const quartile = (sorted: readonly number[], share: number): number => {
  const at = (sorted.length - 1) * share;
  const below = sorted[Math.floor(at)] as number;
  return below + (at - Math.floor(at)) * ((sorted[Math.ceil(at)] as number) - below);
};

/** Median, with the middle half around it. */
const middle = (values: readonly number[]): Span => {
  const sorted = [...values].sort((a, b) => a - b);
  return { value: quartile(sorted, 0.5), low: quartile(sorted, 0.25), high: quartile(sorted, 0.75) };
};

const assumed = ({ value, low = value, high = value }: YearNumber): Span => ({ value, low, high });

const minutes = (from: string, to: string): number => (Date.parse(to) - Date.parse(from)) / 60_000;

/**
 * How long a zone takes in her own rounds: the time from one answer to the next, pauses and what was typed in at a desk left out.
 * Assumed until enough zones of a sort were timed.
 */
export const paceOf = (visits: readonly Thing<'visit'>[]): Pace => {
  const rounds = new Map<string, Thing<'visit'>[]>();
  for (const visit of visits) rounds.set(visit.body.round, [...(rounds.get(visit.body.round) ?? []), visit]);
  const timed: { readonly finding: boolean; readonly took: number }[] = [];
  for (const round of rounds.values()) {
    const inTime = [...round].sort((a, b) => Date.parse(a.lead.at) - Date.parse(b.lead.at));
    for (const [i, visit] of inTime.entries()) {
      const before = inTime[i - 1];
      if (!before || visit.body.state === 'not looked') continue;
      const took = minutes(before.lead.at, visit.lead.at);
      const typed = took < yearNumbers.shortestVisit.value / 60;
      if (!typed && took <= yearNumbers.longestVisit.value) timed.push({ finding: visit.body.state === 'found', took });
    }
  }
  const reasons: Reason[] = [];
  const spanOf = (what: 'oneTouch' | 'withFinding'): Span => {
    const took = timed.filter(({ finding }) => finding === (what === 'withFinding')).map((one) => one.took);
    if (took.length < yearNumbers.visitsForPace.value) {
      reasons.push(because('year: pace assumed', { what }));
      return assumed(yearNumbers[what]);
    }
    reasons.push(because('year: own pace', { what, count: took.length }));
    return middle(took);
  };
  return { oneTouch: spanOf('oneTouch'), withFinding: spanOf('withFinding'), reasons };
};

/** Square metres one person washes and waxes in an hour, from entries of the logbook with hours. */
export const labourOf = (
  treatments: readonly Thing<'treatment'>[],
  zones: readonly Thing<'zone'>[],
): Span & { readonly reasons: readonly Reason[] } => {
  const rates = treatments.flatMap(({ body }) => {
    if (body.type !== 'wax') return [];
    const hours = (body.people ?? []).reduce((sum, one) => sum + (one.hours ?? 0), 0);
    const day = body.date;
    const done = zones.filter(
      ({ thing, body: zone }) =>
        zone.sculpture === body.sculpture && (body.zones.length === 0 || body.zones.includes(thing)),
    );
    const m2 = done.reduce((sum, zone) => sum + areaOn(zone, day).m2, 0);
    return hours > 0 && m2 > 0 ? [m2 / hours] : [];
  });
  return rates.length < yearNumbers.waxingsForPace.value
    ? { ...assumed(yearNumbers.labour), reasons: [because('year: labour estimated')] }
    : { ...middle(rates), reasons: [because('year: labour own', { count: rates.length })] };
};
