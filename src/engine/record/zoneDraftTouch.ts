import type { BodyOf } from './bodies';
import { coverageBetween } from './coverageBetween';
import type { Origin } from './names';
import {
  type Count,
  type Coverage,
  type DraftFinding,
  type ExtentMeasure,
  firstUnjudged,
  isJudged,
  keyOf,
  type Question,
  type ZoneDraft,
} from './zoneDraft';

type Finding = BodyOf<'finding'>;

/** One touch inside an open zone, as it stands in the log of touches. Leaving the zone is no touch: its entries say it. */
export type ZoneTouch =
  | { readonly do: 'open'; readonly key: string; readonly ask?: Question }
  | { readonly do: 'close' }
  | { readonly do: 'group'; readonly group: string }
  /** `origin` only where the kind leaves no choice: a crack is in the metal. */
  | { readonly do: 'kind'; readonly kind: string; readonly measure: ExtentMeasure; readonly origin?: Origin }
  | { readonly do: 'origin'; readonly origin: Origin }
  | { readonly do: 'stain from'; readonly zone: string }
  | { readonly do: 'cover'; readonly coverage: Coverage }
  /** A value between two steps: inside the bin of the step of this value. */
  | { readonly do: 'cover between'; readonly step: number; readonly by: -1 | 1 }
  | { readonly do: 'count'; readonly count: Count }
  | { readonly do: 'there'; readonly key?: string }
  | { readonly do: 'gone'; readonly key?: string }
  | { readonly do: 'against'; readonly against: NonNullable<Finding['against']> }
  | { readonly do: 'rate again' }
  | { readonly do: 'severity'; readonly severity: Finding['severity'] }
  | { readonly do: 'activity'; readonly activity: Finding['activity'] }
  | { readonly do: 'remove' }
  | { readonly do: 'nothing' }
  | { readonly do: 'could not reach' }
  | { readonly do: 'photo expected'; readonly of: string }
  | { readonly do: 'photo'; readonly of: string; readonly photo: string }
  | { readonly do: 'no photo' }
  | { readonly do: 'beading'; readonly beading: NonNullable<BodyOf<'visit'>['beading']> }
  | { readonly do: 'note'; readonly of: string; readonly text: string };

const withOpen = (draft: ZoneDraft, open: string | undefined): ZoneDraft => {
  const { open: _open, again: _again, group: _group, panel: _panel, ...rest } = draft;
  return open === undefined ? rest : { ...rest, open };
};

const change = (draft: ZoneDraft, key: string | undefined, to: (f: DraftFinding) => DraftFinding): ZoneDraft => ({
  ...draft,
  findings: draft.findings.map((f) => (f.key === key ? to(f) : f)),
});

const findingAt = (draft: ZoneDraft, key: string | undefined): DraftFinding | undefined =>
  draft.findings.find((f) => f.key === key);

/** What an earlier finding hands on once it is judged again: severity and activity stand until someone touches them. */
const handedOn = (f: DraftFinding): Partial<DraftFinding> =>
  f.earlier ? { severity: f.severity ?? f.earlier.body.severity, activity: f.activity ?? f.earlier.body.activity } : {};

const cleared = (f: DraftFinding): DraftFinding => {
  const { coverage: _c, count: _n, there: _t, gone: _g, against: _a, ...rest } = f;
  return rest;
};

/** True where the step chosen now is the one that held the earlier value: then it is the same without a touch. */
const isSameExtent = (f: DraftFinding): boolean => {
  const was = f.earlier?.body;
  if (!was) return false;
  if (f.gone) return false;
  if (f.coverage) {
    const old = was.coverage;
    return (
      old !== undefined &&
      (old.value === f.coverage.value || (old.value > f.coverage.low && old.value <= f.coverage.high))
    );
  }
  if (f.count) return was.count === f.count;
  return f.there === true;
};

/** With own eye first, an extent that differs from the earlier one has still to be said same, changed, or earlier wrong. */
export const awaitsAgainst = (draft: ZoneDraft, f: DraftFinding): boolean =>
  draft.ownEye && !draft.fromPaper && f.earlier !== undefined && isJudged(f) && !f.gone && f.against === undefined;

const judge = (draft: ZoneDraft, key: string | undefined, extent: Partial<DraftFinding>): ZoneDraft => {
  const judged = change(draft, key, (f) => {
    const next: DraftFinding = { ...cleared(f), ...extent, ...handedOn(f) };
    if (!draft.ownEye || draft.fromPaper || !f.earlier) return next;
    if (next.gone) return { ...next, against: 'changed' };
    return isSameExtent(next) ? { ...next, against: 'same' } : next;
  });
  const f = findingAt(judged, key);
  if (f && (awaitsAgainst(judged, f) || !f.earlier)) return withOpen(judged, key);
  return withOpen(judged, firstUnjudged(judged) ?? key);
};

/** Takes back what was said: an earlier finding is unjudged again, a new one was never there. */
const remove = (draft: ZoneDraft, key: string | undefined): ZoneDraft => {
  const f = findingAt(draft, key);
  if (!f) return draft;
  const findings = f.earlier
    ? draft.findings.map((other) => (other === f ? cleared(f) : other))
    : draft.findings.filter((other) => other !== f);
  return withOpen({ ...draft, findings }, undefined);
};

/** Only what was there can be gone; "none" said of a new finding means it was a slip. */
const sayGone = (draft: ZoneDraft, key: string | undefined): ZoneDraft =>
  findingAt(draft, key)?.earlier ? judge(draft, key, { gone: true }) : remove(draft, key);

const beginKind = (draft: ZoneDraft, kind: string, measure: ExtentMeasure): ZoneDraft => {
  const key = keyOf(kind, undefined);
  const begun = draft.findings.filter((f) => f.origin !== undefined);
  const there = measure === 'length' || measure === 'presence' ? { there: true as const } : {};
  return withOpen({ ...draft, findings: [...begun, { key, kind, measure, photos: [], ...there }] }, key);
};

const chooseOrigin = (draft: ZoneDraft, origin: Origin): ZoneDraft => {
  const f = findingAt(draft, draft.open);
  if (!f || f.earlier) return draft;
  const key = keyOf(f.kind, origin);
  if (key === f.key) return withOpen(draft, key);
  if (findingAt(draft, key)) {
    return withOpen({ ...draft, findings: draft.findings.filter((other) => other.key !== f.key) }, key);
  }
  return withOpen(
    change(draft, f.key, (was) => ({ ...was, key, origin })),
    key,
  );
};

const addPhoto = (draft: ZoneDraft, of: string, photo: string): ZoneDraft => {
  const { photoExpected: _expected, ...rest } = draft;
  if (of === 'zone') return { ...rest, photos: [...rest.photos, photo] };
  return change(rest, of, (f) => ({ ...f, photos: [...f.photos, photo] }));
};

const setNote = (draft: ZoneDraft, of: string, text: string): ZoneDraft => {
  return of === 'zone' ? { ...draft, note: text } : change(draft, of, (f) => ({ ...f, note: text }));
};

const step = (draft: ZoneDraft, touch: ZoneTouch): ZoneDraft => {
  switch (touch.do) {
    case 'open':
      if (!findingAt(draft, touch.key)) return draft;
      return { ...withOpen(draft, touch.key), ...(touch.ask ? { again: touch.ask } : {}) };
    case 'close': {
      const closed = withOpen(draft, undefined);
      return { ...closed, findings: closed.findings.filter((f) => f.origin !== undefined) };
    }
    case 'group':
      return { ...withOpen(draft, undefined), group: touch.group };
    case 'kind': {
      const begun = beginKind(draft, touch.kind, touch.measure);
      return touch.origin ? chooseOrigin(begun, touch.origin) : begun;
    }
    case 'origin':
      return chooseOrigin(draft, touch.origin);
    case 'stain from':
      return change(draft, draft.open, (f) => ({ ...f, stainFrom: touch.zone }));
    case 'cover':
      if (touch.coverage.value === 0) return sayGone(draft, draft.open);
      return judge(draft, draft.open, { coverage: touch.coverage });
    case 'cover between':
      return change(draft, draft.open, (f) => {
        const coverage = f.coverage && coverageBetween(f.coverage, touch.step, touch.by);
        return coverage ? { ...f, coverage } : f;
      });
    case 'count':
      return judge(draft, draft.open, { count: touch.count });
    case 'there':
      return judge(draft, touch.key ?? draft.open, { there: true });
    case 'gone': {
      const said = sayGone(draft, touch.key ?? draft.open);
      return draft.panel ? { ...withOpen(said, undefined), panel: draft.panel } : said;
    }
    case 'against': {
      const said = change(draft, draft.open, (f) => ({ ...f, against: touch.against }));
      return withOpen(said, firstUnjudged(said) ?? draft.open);
    }
    case 'rate again':
      return withOpen(change(draft, draft.open, cleared), draft.open);
    case 'severity':
      return withOpen(
        change(draft, draft.open, (f) => ({ ...f, severity: touch.severity, activity: f.activity ?? 'unclear' })),
        draft.open,
      );
    case 'activity':
      return withOpen(
        change(draft, draft.open, (f) => ({ ...f, activity: touch.activity })),
        draft.open,
      );
    case 'remove':
      return remove(draft, draft.open);
    case 'nothing':
      return { ...withOpen(draft, undefined), panel: 'gone' };
    case 'could not reach':
      return { ...withOpen(draft, undefined), panel: 'why' };
    case 'photo expected':
      return { ...draft, photoExpected: touch.of };
    case 'photo':
      return addPhoto(draft, touch.of, touch.photo);
    case 'no photo': {
      const { photoExpected: _expected, ...rest } = draft;
      return rest;
    }
    case 'beading':
      return { ...draft, beading: touch.beading };
    case 'note':
      return setNote(draft, touch.of, touch.text);
    default:
      // A touch written by a later version of the app: kept in the log, without effect here.
      return draft;
  }
};

/** The draft after one more touch. Never throws: a touch that does not fit leaves the draft as it was. */
export const applyTouch = (draft: ZoneDraft, touch: ZoneTouch): ZoneDraft => {
  const next = step(draft, touch);
  return { ...next, touches: draft.touches + 1 };
};

/** The draft as it stood when the last of these touches was saved: how an open zone comes back after a restart. */
export const draftFrom = (start: ZoneDraft, touches: readonly ZoneTouch[]): ZoneDraft =>
  touches.reduce(applyTouch, start);
