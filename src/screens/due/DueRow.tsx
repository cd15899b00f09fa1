import { Link } from 'wouter';
import type { DueThings } from '../../actions';
import type { DueStanding } from '../../engine/watch';
import { date, type NameOfThing, w } from '../../words';
import { Button, OnIcon, StopIcon } from '../parts';
import { dueInShort, dueTitle, placeOf, zonesText } from './dueText';

const words = w.due;

interface DueRowProps {
  readonly due: DueStanding;
  readonly zones: DueThings['zones'];
  readonly names: NameOfThing;
  /** In a list of one work its name stands above already. */
  readonly withoutWork?: boolean;
  /** Undefined where it may not be answered here. */
  readonly onAnswer: (() => void) | undefined;
}

/** One thing that is due: its day, what it is, of which work, why; a link to where it is done, and an answer. */
export function DueRow({ due, zones, names, withoutWork, onAnswer }: DueRowProps) {
  const place = placeOf(due);
  const title = dueTitle(due);
  const work = due.sculpture && !withoutWork ? names(due.sculpture) : undefined;
  const where = [work, zonesText(due, zones)].filter(Boolean).join(' · ');
  const told = (
    <span className="grow">
      <span className="due-day figures">
        {date(due.day)}
        {due.until && due.until !== due.day && <span className="soft"> {words.until(date(due.until))}</span>}
      </span>
      <span className="strong due-title">
        {due.sort === 'danger' && <StopIcon />} {title}
      </span>
      {where && <span className="line-detail">{where}</span>}
      <span className="line-detail soft">{dueInShort(due, names)}</span>
    </span>
  );
  return (
    <li className={`due ${due.when}${due.sort === 'danger' ? ' people' : ''}`}>
      {place ? (
        <Link href={place} className="line">
          {told}
          <OnIcon />
        </Link>
      ) : (
        <div className="line told">{told}</div>
      )}
      {onAnswer && (
        <div className="not-printed">
          <Button onClick={onAnswer} aria-label={words.answerTo([title, where].filter(Boolean).join(', '))}>
            {words.answer}
          </Button>
        </div>
      )}
    </li>
  );
}
