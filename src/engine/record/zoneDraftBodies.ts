import type { BodyOf } from './bodies';
import type { Reason } from './reason';
import { type DraftFinding, isJudged, type ZoneDraft } from './zoneDraft';
import { nextQuestion } from './zoneDraftAsks';

type FindingBody = BodyOf<'finding'>;
type VisitBody = BodyOf<'visit'>;

/** How a zone is left. 'next' carries earlier findings nobody touched, but only with own eye first off. */
export type Leaving =
  | { readonly how: 'next' }
  | { readonly how: 'as last year' }
  | { readonly how: 'nothing' }
  | { readonly how: 'not looked'; readonly reason: string };

export interface ZoneBodies {
  readonly visit: VisitBody;
  readonly findings: readonly FindingBody[];
}

const living = (f: DraftFinding): boolean => isJudged(f) && !f.gone;
const unjudgedEarlier = (draft: ZoneDraft): DraftFinding[] => draft.findings.filter((f) => f.earlier && !isJudged(f));

const because = (code: string, params: Reason['params'] = {}): Reason => ({ code, params });

/**
 * Why the zone cannot be left this way, or undefined.
 * A stop word is never carried; with own eye first, going on needs an answer to every earlier finding.
 */
export const refusal = (draft: ZoneDraft, leaving: Leaving): Reason | undefined => {
  const begun = draft.findings.find((f) => (f.earlier ? isJudged(f) : true) && nextQuestion(draft, f) !== undefined);
  if (begun) {
    return because('round: finding not finished', { kind: begun.kind, question: nextQuestion(draft, begun) ?? '' });
  }
  const open = unjudgedEarlier(draft);
  const said = draft.findings.filter(isJudged);
  const firstSaid = said.find(living);
  switch (leaving.how) {
    case 'not looked':
      return said[0] && because('round: not looked, yet something recorded', { kind: said[0].kind });
    case 'nothing':
      if (firstSaid) return because('round: nothing found, yet something recorded', { kind: firstSaid.kind });
      return open[0] && because('round: earlier finding not answered', { kind: open[0].kind, n: open.length });
    case 'as last year':
    case 'next': {
      if (leaving.how === 'as last year' && !draft.before) return because('round: no earlier round');
      const stop = open.find((f) => f.earlier?.stop);
      if (stop) return because('round: stop word is not carried', { kind: stop.kind });
      if (leaving.how === 'as last year') return undefined;
      if (draft.ownEye && open[0]) {
        return because('round: earlier finding not answered', { kind: open[0].kind, n: open.length });
      }
      return said.length > 0 ? undefined : because('round: nothing said yet');
    }
  }
};

const carriedBody = (draft: ZoneDraft, f: DraftFinding): FindingBody | undefined => {
  if (!f.earlier) return undefined;
  const { photos: _p, note: _n, against: _a, carriedFrom: _c, cleared: _g, ...was } = f.earlier.body;
  return { ...was, round: draft.round, zone: draft.zone, carriedFrom: f.earlier.judgedIn };
};

const judgedBody = (draft: ZoneDraft, f: DraftFinding): FindingBody | undefined => {
  if (!f.origin) return undefined;
  const was = f.earlier?.body;
  return {
    sculpture: draft.sculpture,
    round: draft.round,
    zone: draft.zone,
    kind: f.kind,
    origin: f.origin,
    severity: f.severity ?? was?.severity ?? 'slight',
    activity: f.activity ?? was?.activity ?? 'unclear',
    ...(f.gone ? { cleared: true as const } : {}),
    ...(f.gone && f.measure === 'area' ? { coverage: { value: 0, low: 0, high: 0, method: 'ladder' as const } } : {}),
    ...(f.coverage ? { coverage: f.coverage } : {}),
    ...(f.count ? { count: f.count } : {}),
    ...(f.against ? { against: f.against } : {}),
    ...(f.stainFrom ? { stainFrom: f.stainFrom } : {}),
    ...(f.photos.length > 0 ? { photos: [...f.photos] } : {}),
    ...(f.note ? { note: f.note } : {}),
  };
};

const stateOf = (draft: ZoneDraft, leaving: Leaving): VisitBody['state'] => {
  if (leaving.how === 'not looked') return 'not looked';
  if (draft.findings.some(living)) return 'found';
  const open = unjudgedEarlier(draft).length;
  if (leaving.how === 'as last year' && !draft.findings.some(isJudged)) return 'carried';
  // Some said gone and the rest carried: the zone was looked at, and something is held to be there.
  return open > 0 ? 'found' : 'nothing';
};

/** What leaving the zone writes: one visit, and one finding for each judged, gone or carried. Call `refusal` first. */
export const bodiesOf = (draft: ZoneDraft, leaving: Leaving): ZoneBodies => {
  const state = stateOf(draft, leaving);
  const visit: VisitBody = {
    sculpture: draft.sculpture,
    round: draft.round,
    zone: draft.zone,
    zoneVersion: draft.zoneVersion,
    state,
    ...(leaving.how === 'not looked' ? { reason: leaving.reason } : {}),
    ...(state === 'carried' && draft.before ? { carriedFrom: draft.before.judgedIn } : {}),
    ...(state !== 'not looked' && draft.beading ? { beading: draft.beading } : {}),
    ...(draft.photos.length > 0 ? { photos: [...draft.photos] } : {}),
    ...(draft.fromPaper ? { fromPaper: true as const } : {}),
    ...(draft.note ? { note: draft.note } : {}),
  };
  if (state === 'not looked') return { visit, findings: [] };
  const findings = draft.findings
    .map((f) => (isJudged(f) ? judgedBody(draft, f) : carriedBody(draft, f)))
    .filter((body): body is FindingBody => body !== undefined);
  return { visit, findings };
};

/** The living findings as judged so far: what the check for kinds that exclude each other and the read-back line read. */
export const standing = (draft: ZoneDraft): readonly FindingBody[] =>
  draft.findings
    .filter(living)
    .map((f) => judgedBody(draft, f))
    .filter((body): body is FindingBody => body !== undefined);
