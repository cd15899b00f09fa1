import type { BodyOf } from './bodies';
import type { Origin } from './names';

type FindingBody = BodyOf<'finding'>;
type VisitBody = BodyOf<'visit'>;
export type Coverage = NonNullable<FindingBody['coverage']>;
export type Count = NonNullable<FindingBody['count']>;

/** How the extent of a kind is told. Length kinds are told as present or gone: a length is no share of a surface. */
export type ExtentMeasure = 'area' | 'count' | 'length' | 'presence';

/** A finding of the last round this zone was looked at in, as the draft needs it. */
export interface EarlierFinding {
  readonly body: FindingBody;
  readonly measure: ExtentMeasure;
  /** A stop word: it is never carried, somebody has to look. */
  readonly stop: boolean;
  /** The round in which it was really judged: not the one it was last carried into. */
  readonly judgedIn: string;
}

/** One finding while the zone is open. A field not set has not been answered yet. */
export interface DraftFinding {
  /** kind/origin, or kind/? until the origin was chosen. */
  readonly key: string;
  readonly kind: string;
  readonly measure: ExtentMeasure;
  readonly origin?: Origin;
  readonly earlier?: EarlierFinding;
  readonly coverage?: Coverage;
  readonly count?: Count;
  /** For kinds told by presence or length: it is there. */
  readonly there?: true;
  readonly gone?: true;
  readonly against?: NonNullable<FindingBody['against']>;
  readonly severity?: FindingBody['severity'];
  readonly activity?: FindingBody['activity'];
  readonly stainFrom?: string;
  readonly photos: readonly string[];
  readonly note?: string;
}

export type Question = 'extent' | 'severity' | 'activity' | 'origin';

/** An open zone: the fold of its touches over what the record knew before the first one. */
export interface ZoneDraft {
  readonly sculpture: string;
  readonly round: string;
  readonly zone: string;
  readonly zoneVersion: number;
  readonly ownEye: boolean;
  /** Entered from a pencil card: nobody stands before the surface to say how it differs from before. */
  readonly fromPaper?: true;
  /** The last round that has an answer for this zone, where there is one. */
  readonly before?: { readonly round: string; readonly judgedIn: string; readonly date: string };
  /** What this round already holds of the zone, when it is opened again. */
  readonly already?: VisitBody['state'];
  /** Earlier findings first, then new ones in the order they were seen. */
  readonly findings: readonly DraftFinding[];
  /** Key of the finding being asked about. */
  readonly open?: string;
  /** A question of the open finding asked again on purpose. */
  readonly again?: Question;
  /** Group whose kinds are laid out. */
  readonly group?: string;
  /** 'gone': asks for each earlier finding whether it is gone. 'why': asks why it could not be looked at. */
  readonly panel?: 'gone' | 'why';
  readonly beading?: VisitBody['beading'];
  readonly photos: readonly string[];
  readonly note?: string;
  /** Key of the finding, or 'zone', a camera was opened for and no photo came back yet. */
  readonly photoExpected?: string;
  /** Number of touches folded in. */
  readonly touches: number;
}

export interface DraftStart {
  readonly sculpture: string;
  readonly round: string;
  readonly zone: string;
  readonly zoneVersion: number;
  readonly ownEye: boolean;
  readonly fromPaper?: true;
  readonly before?: ZoneDraft['before'];
  readonly earlier: readonly EarlierFinding[];
  /** What this round already holds of this zone. */
  readonly present?: {
    readonly visit: VisitBody;
    readonly findings: readonly { readonly body: FindingBody; readonly measure: ExtentMeasure }[];
  };
}

export const keyOf = (kind: string, origin: Origin | undefined): string => `${kind}/${origin ?? '?'}`;

/** True once the extent of a finding has been told in this round. */
export const isJudged = (f: DraftFinding): boolean =>
  f.gone === true || f.coverage !== undefined || f.count !== undefined || f.there === true;

const fromBody = (body: FindingBody, measure: ExtentMeasure): DraftFinding => ({
  key: keyOf(body.kind, body.origin),
  kind: body.kind,
  measure,
  origin: body.origin,
  severity: body.severity,
  activity: body.activity,
  photos: body.photos ?? [],
  ...(body.coverage && !body.cleared ? { coverage: body.coverage } : {}),
  ...(body.count && !body.cleared ? { count: body.count } : {}),
  ...(measure !== 'area' && measure !== 'count' && !body.cleared ? { there: true as const } : {}),
  ...(body.cleared ? { gone: true as const } : {}),
  ...(body.against ? { against: body.against } : {}),
  ...(body.stainFrom ? { stainFrom: body.stainFrom } : {}),
  ...(body.note ? { note: body.note } : {}),
});

const unjudged = (earlier: EarlierFinding): DraftFinding => ({
  key: keyOf(earlier.body.kind, earlier.body.origin),
  kind: earlier.body.kind,
  measure: earlier.measure,
  origin: earlier.body.origin,
  earlier,
  photos: [],
});

/** With own eye first, the first earlier finding that has not been judged opens by itself. */
export const firstUnjudged = (draft: Pick<ZoneDraft, 'ownEye' | 'findings'>): string | undefined =>
  draft.ownEye ? draft.findings.find((f) => f.earlier && !isJudged(f))?.key : undefined;

/** The zone as it stands before the first touch. Answers this round already holds are kept; carried ones count as not judged. */
export const startDraft = (start: DraftStart): ZoneDraft => {
  const judged = (start.present?.findings ?? []).filter((f) => !f.body.carriedFrom);
  const here = new Map(judged.map((f) => [keyOf(f.body.kind, f.body.origin), fromBody(f.body, f.measure)]));
  const findings: DraftFinding[] = start.earlier.map((earlier) => {
    const key = keyOf(earlier.body.kind, earlier.body.origin);
    const found = here.get(key);
    here.delete(key);
    return found ? { ...found, earlier } : unjudged(earlier);
  });
  findings.push(...here.values());
  const visit = start.present?.visit;
  const open = visit ? undefined : firstUnjudged({ ownEye: start.ownEye, findings });
  return {
    sculpture: start.sculpture,
    round: start.round,
    zone: start.zone,
    zoneVersion: start.zoneVersion,
    ownEye: start.ownEye,
    findings,
    photos: visit?.photos ?? [],
    touches: 0,
    ...(start.fromPaper ? { fromPaper: true } : {}),
    ...(start.before ? { before: start.before } : {}),
    ...(visit ? { already: visit.state } : {}),
    ...(visit?.beading ? { beading: visit.beading } : {}),
    ...(visit?.note ? { note: visit.note } : {}),
    ...(open ? { open } : {}),
  };
};
