import { useId, useState } from 'react';
import type { LookSaid, WorkOnList, ZoneOnList } from '../../actions';
import { reaches } from '../../engine/trade';
import { date, midSentence, w } from '../../words';
import { Button } from '../parts';
import { LookRow } from './LookRow';

const words = w.walk;

interface WalkWorkProps {
  readonly row: WorkOnList;
  readonly today: string;
  readonly answer: (sculpture: string, zone: string, letter: string, result: LookSaid['result']) => void;
  readonly allClear: (sculpture: string, zones: readonly string[]) => void;
  readonly keep: (look: string, file: File) => void;
}

/** One work of the walk: what is on the list, in walking order, and the rest a touch away. */
export function WalkWork({ row, today, answer, allClear, keep }: WalkWorkProps) {
  const id = useId();
  const [open, setOpen] = useState(false);
  const { sculpture } = row.work;
  const title = sculpture.body.title || w.sculptures.untitled;
  const left = row.listed.filter(({ why }) => why !== 'today');
  const shown = open ? [...row.listed, ...row.rest].sort(inWalkingOrder) : row.listed;
  return (
    <section className="walk-work" aria-labelledby={id}>
      <h2 id={id}>
        {title} <span className="soft small">{sculpture.body.number}</span>
      </h2>
      {shown.length === 0 ? (
        <p className="soft">{words.noneHere}</p>
      ) : (
        <ul className="bare look-zones">
          {shown.map((at) => (
            <LookRow
              key={at.zone.thing}
              zone={at.zone}
              today={at.last?.body.date === today ? at.last : undefined}
              lines={linesOf(at, today)}
              answer={(result) => {
                // Said already today: the same answer once more is no second look.
                if (at.last?.body.date === today && at.last.body.result === result) return;
                answer(sculpture.thing, at.zone.thing, at.zone.body.letter, result);
              }}
              keep={keep}
            />
          ))}
        </ul>
      )}
      <div className="row">
        {left.length > 0 && (
          <Button
            size="round"
            aria-label={words.allClearFor(left.length, title)}
            onClick={() =>
              allClear(
                sculpture.thing,
                left.map(({ zone }) => zone.thing),
              )
            }
          >
            {words.allClear(left.length)}
          </Button>
        )}
        {row.rest.length > 0 && (
          <Button size="round" kind="quiet" aria-expanded={open} onClick={() => setOpen(!open)}>
            {open ? words.othersHide : words.others(row.rest.length)}
          </Button>
        )}
      </div>
    </section>
  );
}

const inWalkingOrder = (a: ZoneOnList, b: ZoneOnList): number => a.zone.body.order - b.zone.body.order;

/** Why it is on the list or what was seen last, and what can be seen from here. */
const linesOf = (at: ZoneOnList, today: string): readonly string[] => {
  const { last, why, due, coated, zone } = at;
  const said = last && midSentence(w.look[last.body.result]);
  const line =
    last?.body.date === today && said
      ? words.seenToday(said)
      : why === 'due' && due
        ? words.why.due(date(due))
        : why === 'not sure' && last
          ? words.why['not sure'](date(last.body.date))
          : why === 'never looked at' && coated
            ? words.why['never looked at'](date(coated))
            : why === 'not known' && at.clearOn
              ? words.why['not known'](date(at.clearOn))
              : last && said
                ? words.lastSeen(date(last.body.date), said)
                : words.never;
  const from = reaches.find(({ id }) => id === zone.body.reach)?.from ?? 'ground';
  return from === 'ground' || from === 'step' ? [line] : [line, words.fromGround];
};
