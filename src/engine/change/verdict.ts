import type { Coverage } from '../condition';
import type { BodyOf, Figure, Origin, Reason, Thing } from '../record';

/** The five answers to "are you sure it changed?". */
export type Verdict = 'worse' | 'better' | 'no sure change' | 'carried' | 'not comparable';

/** How sure one comparison is. */
export interface Judgement {
  readonly verdict: Verdict;
  /** Difference over its error, positive for worse. Null where nothing has an error to hold it against. */
  readonly z: number | null;
  /** |z| is over twice the line. */
  readonly clearly: boolean;
  /** Over the line, yet not among what survives when all comparisons of the page are weighed together. */
  readonly aloneCouldBeChance: boolean;
  /** Worse, of two rounds that may be compared, and either clearly so or surviving the page: may raise an urgency class. */
  readonly clearlyWorse: boolean;
  readonly reasons: readonly Reason[];
}

/** What happened to a finding beside its coverage. */
export type Naming =
  | { readonly what: 'new' }
  | { readonly what: 'gone' }
  | { readonly what: 'severity' | 'activity' | 'count'; readonly from: string; readonly to: string };

/** The smallest coverages that would be called a change from where it stood, as fractions; null where none would be. */
export interface SmallestReal {
  readonly from: number;
  readonly down: number | null;
  readonly up: number | null;
}

/** A treatment that lies, or may lie, between the two rounds. */
export interface Done {
  readonly treatment: string;
  /** Code of trade/treatments. */
  readonly type: string;
  /** As vague as it was entered. */
  readonly date: string;
  readonly sure: boolean;
  /** After it the series starts anew: before and after do not tell how care goes on. */
  readonly breaksSeries: boolean;
}

/** What one round saw of one finding. Coverage is a fraction; low and high are its bin or interval. */
export interface Seen {
  /** 'nothing': looked for and not there. */
  readonly state: 'seen' | 'nothing' | 'carried' | 'not looked';
  readonly coverage?: Coverage;
  readonly severity?: string;
  readonly activity?: string;
  readonly count?: string;
  readonly photos: readonly string[];
}

/** One series (zone, kind, origin) over the two rounds. */
export interface FindingChange extends Judgement {
  /** Name of the series, see record/names seriesOf. */
  readonly series: string;
  /** The zone it is told under; where a zone was split or joined between, the undivided one. */
  readonly zone: string;
  readonly kind: string;
  readonly origin: Origin;
  readonly earlier: Seen;
  readonly later: Seen;
  readonly named: readonly Naming[];
  readonly smallest: SmallestReal | null;
  readonly between: readonly Done[];
}

/** One zone over the two rounds. `earlier` and `later` are its index over the findings judged both times; null where not compared. */
export interface ZoneChange extends Judgement {
  readonly zone: string;
  /** The zones it was then and is now: more than one where it was split or joined between. */
  readonly zonesThen: readonly string[];
  readonly zonesNow: readonly string[];
  readonly earlier: Figure | null;
  readonly later: Figure | null;
  /** The smallest difference that would be called real here, points of index; null where not compared. */
  readonly smallest: number | null;
  readonly between: readonly Done[];
}

export type ActiveKind = 'green' | 'bare' | 'scale';

/** What one zone adds to a change of active area, m2 (positive: grew). */
export interface Contribution {
  readonly zone: string;
  readonly m2: number;
}

/** Active area of one kind over the zones judged both times, m2. */
export interface AreaChange extends Judgement {
  readonly earlier: Figure;
  readonly later: Figure;
  readonly difference: Figure;
  /** The smallest difference that would be called real here, m2; null where nothing with an error is compared. */
  readonly smallest: number | null;
  /** Largest growth first; zones without any are left out. */
  readonly contributions: readonly Contribution[];
}

export interface IndexChange extends Judgement {
  readonly earlier: Figure | null;
  readonly later: Figure | null;
  /** The smallest difference that would be called real here, points of index; null where not compared. */
  readonly smallest: number | null;
}

/** Two rounds of one kind and state may be compared; others only with a warning, and then nothing is escalated. */
export interface Comparable {
  readonly ok: boolean;
  readonly reasons: readonly Reason[];
}

/** This round against an earlier one. */
export interface ThenAndNow {
  readonly earlier: Thing<'round'>;
  readonly later: Thing<'round'>;
  readonly comparable: Comparable;
  readonly findings: readonly FindingChange[];
  readonly zones: readonly ZoneChange[];
  readonly sculpture: {
    readonly index: IndexChange;
    readonly active: Readonly<Record<ActiveKind, AreaChange>>;
    /** Zones looked at both times, of all zones living at the later round, and their share of the area now. */
    readonly zonesBoth: number;
    readonly zonesAll: number;
    readonly areaShare: number;
  };
  readonly between: readonly Done[];
  /** Comparisons with an error to hold them against, and how many of those would look changed if nothing had. */
  readonly comparisons: number;
  readonly expectedByChance: number;
  readonly reasons: readonly Reason[];
}

export type Round = Thing<'round'>;
export type RoundBody = BodyOf<'round'>;
