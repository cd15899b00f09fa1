import { useState } from 'react';
import { Link } from 'wouter';
import { plannedAll, type WorkAround, yearAround } from '../../actions';
import type { Thing } from '../../engine/record';
import { isAway, roundsOfMove } from '../../engine/year';
import { date, midSentence, roundName, w, workName } from '../../words';
import { AddIcon, Button, EmptyState, LinkButton, Page, Reading } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk, useQuestion } from '../shell';
import { MoveSheet } from './MoveSheet';

const words = w.moves;

/** Where works went, and the rounds that show them before and after. */
export function MovesScreen() {
  const desk = useDesk();
  const planned = useQuestion(plannedAll(desk));
  const around = useQuestion(yearAround(desk));
  const [open, setOpen] = useState<Thing<'move'> | 'new'>();
  const back = { to: pathTo.plan(), label: words.toPlan };
  if (!planned || !around)
    return (
      <Page title={words.title} lead={words.lead} back={back}>
        <Reading />
      </Page>
    );
  const moves = [...planned.move].sort(
    (a, b) => b.body.left.localeCompare(a.body.left) || (a.thing < b.thing ? -1 : 1),
  );
  return (
    <Page
      title={words.title}
      lead={words.lead}
      back={back}
      actions={
        around.works.length > 0 && (
          <Button kind="main" icon={<AddIcon />} onClick={() => setOpen('new')}>
            {words.add}
          </Button>
        )
      }
    >
      {moves.length === 0 ? (
        <EmptyState
          title={words.empty}
          actions={around.works.length === 0 && <LinkButton to={pathTo.sculptures()}>{w.plan.toSculptures}</LinkButton>}
        >
          <p>{words.emptyWhat}</p>
        </EmptyState>
      ) : (
        <>
          <p className="soft">{words.defer}</p>
          <ul className="bare stack">
            {moves.map((move) => (
              <li key={move.thing} className="card stack tight">
                <MoveCard
                  move={move}
                  work={around.works.find(({ sculpture }) => sculpture.thing === move.body.sculpture)}
                  today={desk.today()}
                  onEdit={() => setOpen(move)}
                />
              </li>
            ))}
          </ul>
          <PrintRow />
        </>
      )}
      {open && (
        <MoveSheet works={around.works} move={open === 'new' ? undefined : open} onClose={() => setOpen(undefined)} />
      )}
    </Page>
  );
}

interface MoveCardProps {
  readonly move: Thing<'move'>;
  readonly work: WorkAround | undefined;
  readonly today: string;
  readonly onEdit: () => void;
}

function MoveCard({ move, work, today, onEdit }: MoveCardProps) {
  const { body } = move;
  const away = isAway(move, today);
  const late = away && body.backDue !== undefined && body.backDue < today;
  const name = work ? workName(work.sculpture) : body.sculpture;
  return (
    <>
      <h2>{name}</h2>
      <p>
        <span className="strong">{words.sorts[body.sort]}</span>: {words.fromTo(body.from, body.to)}
        {away && <span className="chip">{words.away}</span>}
      </p>
      <p className="figures">
        {body.back
          ? words.span(date(body.left), date(body.back))
          : [date(body.left), body.backDue && !late && `${midSentence(words.backDue)} ${date(body.backDue)}`]
              .filter(Boolean)
              .join(' · ')}
      </p>
      {late && body.backDue && <p className="strong">{words.late(date(body.backDue))}</p>}
      {[body.who, body.how, body.insurance, body.note].filter(Boolean).map((line) => (
        <p key={line} className="small">
          {line}
        </p>
      ))}
      <Rounds move={move} work={work} today={today} />
      <div className="row not-printed">
        <Button aria-label={words.changeOf(name)} onClick={onEdit}>
          {words.change}
        </Button>
      </div>
    </>
  );
}

/** The state before and after, as rounds tell it; what is missing is said while it can still be made. */
function Rounds({ move, work, today }: Omit<MoveCardProps, 'onEdit'>) {
  const { before, after, afterDue } = roundsOfMove(move, work?.rounds ?? [], today);
  const link = (round: Thing<'round'>) => <Link href={pathTo.endRound(round.thing)}>{roundName(round)}</Link>;
  return (
    <>
      <p>
        {words.before}: {before ? link(before) : words.noBefore}
      </p>
      <p>
        {words.after}: {after ? link(after) : afterDue ? words.noAfter : words.afterLater}
      </p>
      {afterDue && (
        <div className="row not-printed">
          <LinkButton to={pathTo.startRound(move.body.sculpture)}>{words.beginRound}</LinkButton>
        </div>
      )}
    </>
  );
}
