import { tQuantile } from '../chance';
import { constants, fromLogit, logit } from '../condition';
import {
  type BodyOf,
  daysBetween,
  type Figure,
  findingsOf,
  type Reason,
  type SculptureRecord,
  visitOf,
  zonesAt,
} from '../record';
import { severities } from '../trade';
import { icc } from './icc';
import { cohensKappa, type Kappa, weightedKappa } from './kappa';
import { because } from './reasonCodes';

type Finding = BodyOf<'finding'>;

/** One thing the two told differently, or one of them did not tell. */
export interface Apart {
  readonly zone: string;
  readonly kind: string;
  readonly why: 'found by one only' | 'origin' | 'severity' | 'coverage';
  readonly one: Finding | null;
  readonly other: Finding | null;
  /** How far apart, in the errors two persons may be expected to differ by; null where that has no measure. */
  readonly z: number | null;
}

export interface Agreement {
  /** Thing names of the two rounds. */
  readonly one: string;
  readonly other: string;
  readonly zonesBoth: number;
  readonly zonesAll: number;
  /** Kinds either of them found anywhere, zone by zone: found or not by each. */
  readonly kinds: Kappa & { readonly both: number; readonly onlyOne: number; readonly onlyOther: number };
  /** Of what both found; a step between counts half of what two steps do. */
  readonly severity: Kappa & { readonly alike: number };
  readonly coverage: {
    readonly n: number;
    /** ICC(2,1) of the coverages on the logit, with its 90 % range. */
    readonly icc: Figure | null;
    /** What the other says where the one says 20 %, as a share, with its 90 % range; null with fewer than three. */
    readonly whereOneSays20: Figure | null;
    readonly reasons: readonly Reason[];
  };
  /** Farthest apart first. */
  readonly apart: readonly Apart[];
  readonly reasons: readonly Reason[];
}

const judged = (record: SculptureRecord, round: string, zone: string): boolean => {
  const state = visitOf(record, round, zone)?.body.state;
  return state === 'found' || state === 'nothing';
};

const foundIn = (record: SculptureRecord, round: string, zone: string): ReadonlyMap<string, Finding> =>
  new Map(
    findingsOf(record, round, zone)
      .filter(({ body }) => !body.carriedFrom && !body.cleared && body.coverage?.value !== 0)
      .map(({ body }) => [body.kind, body]),
  );

interface Pair {
  readonly zone: string;
  readonly kind: string;
  readonly one: Finding | null;
  readonly other: Finding | null;
}

const severityRank = (finding: Finding): number => severities.findIndex(({ id }) => id === finding.severity);

/** Two persons may differ by what lies between them and by what each gives again. */
const expectedSd = Math.hypot(constants.betweenPersonsSd.value, Math.SQRT2 * 0.3);

const coveragesOf = (pairs: readonly Pair[]): { pair: Pair; one: number; other: number }[] =>
  pairs.flatMap((pair) => {
    const [a, b] = [pair.one?.coverage, pair.other?.coverage];
    return a && b ? [{ pair, one: logit(a.value), other: logit(b.value) }] : [];
  });

const apartOf = (pair: Pair): Apart | null => {
  const { one, other } = pair;
  if (!one && !other) return null;
  if (!one || !other) return { ...pair, why: 'found by one only', z: null };
  if (one.origin !== other.origin) return { ...pair, why: 'origin', z: null };
  const z =
    one.coverage && other.coverage ? (logit(other.coverage.value) - logit(one.coverage.value)) / expectedSd : null;
  if (one.severity !== other.severity) return { ...pair, why: 'severity', z };
  return z !== null && Math.abs(z) > 1e-9 ? { ...pair, why: 'coverage', z } : null;
};

const order: readonly Apart['why'][] = ['found by one only', 'origin', 'severity', 'coverage'];

const coverageAgreement = (pairs: readonly Pair[]): Agreement['coverage'] => {
  const rows = coveragesOf(pairs);
  const found = icc(rows.map(({ one, other }) => [one, other]));
  const shift = rows.map(({ one, other }) => other - one);
  const n = shift.length;
  const mean = shift.reduce((sum, d) => sum + d, 0) / n;
  const sd = Math.sqrt(shift.reduce((sum, d) => sum + (d - mean) ** 2, 0) / (n - 1));
  const reach = n < 3 ? Number.NaN : (tQuantile(0.95, n - 1) * sd) / Math.sqrt(n);
  const at = (d: number): number => fromLogit(logit(0.2) + d);
  const more = Math.abs(mean) > constants.z95.value * expectedSd;
  return {
    n,
    icc: found.forms?.['(2,1)'] ?? null,
    whereOneSays20: n < 3 ? null : { value: at(mean), low: at(mean - reach), high: at(mean + reach), reasons: [] },
    reasons: [
      ...found.reasons,
      ...(n < 3
        ? []
        : [because(more ? 'agreement: eyes differ by more than expected' : 'agreement: eyes differ as expected')]),
    ],
  };
};

/**
 * How far two rounds of one work agree, over the zones both judged afresh; carried answers are left out. Rounds are thing names; an
 * unknown one is an error of the caller.
 */
export const agreementOf = (record: SculptureRecord, one: string, other: string): Agreement => {
  const [first, second] = [one, other].map((name) => {
    const round = record.rounds.find(({ thing }) => thing === name);
    if (!round) throw new RangeError(`There is no round ${name} among this sculpture's rounds.`);
    return round;
  }) as [(typeof record.rounds)[number], (typeof record.rounds)[number]];
  const zones = zonesAt(record, first.body.date).map(({ thing }) => thing);
  const both = zones.filter((zone) => judged(record, one, zone) && judged(record, other, zone));
  const told = both.map((zone) => ({ zone, one: foundIn(record, one, zone), other: foundIn(record, other, zone) }));
  const kindsSeen = [...new Set(told.flatMap((row) => [...row.one.keys(), ...row.other.keys()]))].sort();
  const pairs = told.flatMap((row) =>
    kindsSeen.map(
      (kind): Pair => ({
        zone: row.zone,
        kind,
        one: row.one.get(kind) ?? null,
        other: row.other.get(kind) ?? null,
      }),
    ),
  );
  const count = (of: (pair: Pair) => boolean): number => pairs.filter(of).length;
  const foundByBoth = count((p) => p.one !== null && p.other !== null);
  const onlyOne = count((p) => p.one !== null && p.other === null);
  const onlyOther = count((p) => p.one === null && p.other !== null);
  const table = [
    [foundByBoth, onlyOne],
    [onlyOther, count((p) => p.one === null && p.other === null)],
  ];
  const steps = severities.map((_, i) =>
    severities.map((__, j) =>
      count((p) => !!p.one && !!p.other && severityRank(p.one) === i && severityRank(p.other) === j),
    ),
  );
  const carried = both.reduce(
    (sum, zone) =>
      sum +
      [one, other].flatMap((round) => findingsOf(record, round, zone)).filter(({ body }) => body.carriedFrom).length,
    0,
  );
  const days = Math.abs(daysBetween(first.body.date, second.body.date));
  const alike =
    first.body.type === second.body.type &&
    first.body.washed === second.body.washed &&
    first.body.wet === second.body.wet;
  return {
    one,
    other,
    zonesBoth: both.length,
    zonesAll: zones.length,
    kinds: { ...cohensKappa(table), both: foundByBoth, onlyOne, onlyOther },
    severity: {
      ...weightedKappa(steps, (i, j) => Math.abs(i - j)),
      alike: steps.reduce((sum, row, i) => sum + (row[i] ?? 0), 0),
    },
    coverage: coverageAgreement(pairs.filter((pair) => pair.one && pair.other)),
    apart: pairs
      .flatMap((pair) => apartOf(pair) ?? [])
      .sort((a, b) => order.indexOf(a.why) - order.indexOf(b.why) || Math.abs(b.z ?? 0) - Math.abs(a.z ?? 0)),
    reasons: [
      ...(both.length === 0 ? [because('agreement: no zone judged by both')] : []),
      ...(alike ? [] : [because('agreement: rounds not alike')]),
      ...(days > 0 ? [because('agreement: days apart', { days })] : []),
      ...(carried > 0 ? [because('agreement: carried left out', { count: carried })] : []),
    ],
  };
};
