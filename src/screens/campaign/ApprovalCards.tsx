import type { Thing } from '../../engine/record';
import { area, date, lettersOf, w } from '../../words';
import { Button } from '../parts';
import type { OpenFile } from './OfCampaign';
import { Signed } from './Signed';
import { SmallPhoto } from './SmallPhoto';

const words = w.campaign.approvals;

interface ApprovalCardsProps {
  readonly file: OpenFile;
  readonly approvals: readonly Thing<'approval'>[];
  readonly onEdit: (approval: Thing<'approval'>) => void;
}

/** Each question that was put to somebody, with its answer. */
export function ApprovalCards({ file, approvals, onEdit }: ApprovalCardsProps) {
  return (
    <ul className="bare bid-cards">
      {approvals.map((approval) => {
        const { of, zone, m2, date: day, answer, words: said, photos = [], signed, note } = approval.body;
        const where = [zone && words.onZone(lettersOf(file.record, [zone])), m2 && words.size(area(m2)), date(day)];
        return (
          <li key={approval.thing} className="card stack tight">
            <h3>
              {words.of[of]} <span className="chip">{words.answers[answer]}</span>
            </h3>
            <p className="soft">{where.filter(Boolean).join(' · ')}</p>
            <p>{said}</p>
            {photos.length > 0 && (
              <div className="row top">
                {photos.map((photo, i) => (
                  <SmallPhoto key={photo} photo={photo} alt={w.parts.photosHere.alt(words.of[of], i + 1)} />
                ))}
              </div>
            )}
            <Signed signed={signed} />
            {note && <p className="small">{note}</p>}
            <div className="row not-printed">
              <Button kind="quiet" aria-label={words.edit(words.of[of], date(day))} onClick={() => onEdit(approval)}>
                {words.change}
              </Button>
            </div>
          </li>
        );
      })}
    </ul>
  );
}
