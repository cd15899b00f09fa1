import type { PaperItem, PaperOf } from '../../engine/trade';
import { date, w, workName } from '../../words';
import { BackIcon, Button, Notice } from '../parts';
import { PrintRow } from '../parts/PrintRow';

import type { OpenFile } from './OfCampaign';

const words = w.campaign.papers;

interface PaperLetterProps {
  readonly file: OpenFile;
  readonly of: PaperOf;
  readonly to: string | undefined;
  readonly missing: readonly PaperItem[];
  /** The day it was sent, where it was. */
  readonly sent: string | undefined;
  /** Why noting it as sent was refused. */
  readonly refused: string | undefined;
  readonly onSent: () => void;
  readonly onBack: () => void;
}

/** What is missing, as a letter: printed, it is all there is on the page. */
export function PaperLetter({ file, of, to, missing, sent, refused, onSent, onBack }: PaperLetterProps) {
  const { record, campaign, today } = file;
  const { letter } = words;
  return (
    <>
      {refused && <Notice kind="problem" title={refused} />}
      <div className="row not-printed">
        <Button icon={<BackIcon />} onClick={onBack}>
          {words.toList}
        </Button>
        {missing.length > 0 && <Button onClick={onSent}>{words.sent}</Button>}
        {sent && <p className="soft">{words.sentOn(date(sent))}</p>}
      </div>
      {missing.length === 0 ? (
        <p>{words.nothingMissing}</p>
      ) : (
        <article className="card stack drafted-letter" aria-label={words.toLetter}>
          <p>{date(today)}</p>
          <p>{to ? letter.to(to) : letter.toWhom}</p>
          <p className="strong">{letter.about(workName(record.sculpture), campaign.body.title)}</p>
          <p>{letter[of]}</p>
          <ol>
            {missing.map(({ id, name, means }) => (
              <li key={id}>
                {name}
                {means && <span className="soft line-detail">{means}</span>}
              </li>
            ))}
          </ol>
          {of === 'report' && <p>{letter.heldPayment}</p>}
          <p>{letter.thanks}</p>
          <p className="sign-line">{letter.sign}</p>
        </article>
      )}
      <PrintRow />
    </>
  );
}
