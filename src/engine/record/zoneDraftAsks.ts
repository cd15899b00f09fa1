import type { DraftFinding, Question, ZoneDraft } from './zoneDraft';
import { isJudged } from './zoneDraft';
import { awaitsAgainst } from './zoneDraftTouch';

/** The one thing the pad asks at this moment. */
export type Asking =
  | { readonly what: 'rows' }
  | { readonly what: 'gone' }
  | { readonly what: 'why' }
  | { readonly what: 'kinds'; readonly group: string }
  | { readonly what: Question | 'against' | 'card'; readonly finding: DraftFinding };

/** What a finding still has to be asked, in the order of the trade: where it sits, how much, against before, how bad. */
export const nextQuestion = (
  draft: ZoneDraft,
  f: DraftFinding,
): 'origin' | 'extent' | 'against' | 'severity' | undefined => {
  if (!f.origin) return 'origin';
  if (!isJudged(f)) return 'extent';
  if (awaitsAgainst(draft, f)) return 'against';
  return f.gone || f.severity ? undefined : 'severity';
};

export const asking = (draft: ZoneDraft): Asking => {
  if (draft.panel) return { what: draft.panel };
  if (draft.group) return { what: 'kinds', group: draft.group };
  const finding = draft.findings.find((f) => f.key === draft.open);
  if (!finding) return { what: 'rows' };
  return { what: draft.again ?? nextQuestion(draft, finding) ?? 'card', finding };
};
