import { type DraftFinding, isJudged, type ZoneDraft } from '../../engine/record';
import { w } from '../../words';
import { FindingCard } from './FindingCard';
import { usePad } from './PadContext';
import { kindName, saidEarlier, saidFinding, yearOf } from './said';

const words = w.round;

/** What stands under the name of a finding: the own answer first, the earlier one only where it may be seen. */
export const underName = (draft: ZoneDraft, f: DraftFinding): string => {
  const year = draft.before ? yearOf(draft.before.date) : '';
  if (!isJudged(f)) {
    if (!f.earlier) return '';
    return draft.ownEye ? words.zone.earlierHidden : words.zone.earlierIs(year, saidEarlier(f.earlier));
  }
  const now = saidFinding(f);
  return f.earlier ? `${now} (${words.zone.earlierIs(year, saidEarlier(f.earlier))})` : now;
};

/** Every finding of the zone: earlier kinds first. A touch opens one. */
export function FindingRows() {
  const { view, touch } = usePad();
  const { draft, asks } = view;
  if (draft.findings.length === 0) return null;
  const card = asks.what === 'card' ? asks.finding.key : undefined;
  return (
    <section aria-label={words.zone.findings}>
      <ul className="bare finding-rows">
        {draft.findings.map((f) => {
          const open = f.key === card;
          const origin = f.origin && f.origin !== 'metal' ? `, ${words.said.origin[f.origin]}` : '';
          return (
            <li key={f.key} className={open ? 'finding open' : 'finding'}>
              <button
                type="button"
                className="finding-row"
                aria-expanded={open}
                onClick={() => touch(open ? { do: 'close' } : { do: 'open', key: f.key })}
              >
                <RowMark finding={f} />
                <span className="finding-words">
                  <span className="finding-name">
                    {kindName(f.kind)}
                    {origin}
                  </span>
                  <span className="finding-said"> {underName(draft, f)}</span>
                </span>
                {f.photos.length > 0 && <span className="finding-photos">{words.card.photos(f.photos.length)}</span>}
              </button>
              {open && <FindingCard finding={f} />}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** Judged: a full disc. Gone: a crossed ring. Not judged: an open ring. Told apart without colour. */
function RowMark({ finding }: { readonly finding: DraftFinding }) {
  return (
    <svg className="row-mark" width="24" height="24" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <circle className="row-mark-ring" cx="12" cy="12" r="9" />
      {finding.gone ? (
        <path className="row-mark-ring" d="M6 18L18 6" />
      ) : (
        isJudged(finding) && <circle className="row-mark-full" cx="12" cy="12" r="5.5" />
      )}
    </svg>
  );
}
