import { useState } from 'react';
import { type DueThings, dueThings, removePlanned } from '../../actions';
import type { Thing } from '../../engine/record';
import type { DueStanding, DueWhen } from '../../engine/watch';
import { date, type NameOfThing, namesOfWorks, w, workName } from '../../words';
import { AddIcon, Button, Choice, EmptyState, Page, Reading, Section } from '../parts';
import { Fold } from '../parts/Fold';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, say, UnderWay, useDeed, useDesk, useQuestion } from '../shell';
import { AnswerDueSheet } from './AnswerDueSheet';
import { byWalk } from './byWalk';
import { CalendarSheet } from './CalendarSheet';
import { DueRow } from './DueRow';
import { dueTitle } from './dueText';
import { RecallList } from './RecallList';
import { TaskSheet } from './TaskSheet';
import '../parts/lines.css';
import './due.css';

const words = w.due;
const near: readonly DueWhen[] = ['over', 'now', 'soon'];

/** What is opened over the list. */
type Opened =
  | { readonly what: 'answer'; readonly due: DueStanding }
  | { readonly what: 'task'; readonly task: Thing<'task'> | undefined }
  | { readonly what: 'calendar' };

/** Everything that has a day, in one place: by date or by walk, to be answered or taken along in a calendar. */
export function DueScreen() {
  const desk = useDesk();
  const things = useQuestion(dueThings(desk));
  const [order, setOrder] = useState<'date' | 'walk'>('date');
  const [opened, setOpened] = useState<Opened>();
  if (!things)
    return (
      <Page title={words.title} lead={words.lead}>
        <Reading>{words.reading}</Reading>
      </Page>
    );
  const names = namesOfWorks(things.works, things.zones);
  const answer = (due: DueStanding) => {
    if (due.sort === 'task')
      return () => setOpened({ what: 'task', task: things.tasks.find(({ thing }) => thing === due.about) });
    return due.ownEnd ? undefined : () => setOpened({ what: 'answer', due });
  };
  const shut = () => setOpened(undefined);
  return (
    <Page
      title={words.title}
      lead={words.lead}
      back={{ to: pathTo.plan(), label: w.plan.title }}
      actions={
        <Button kind="main" icon={<AddIcon />} onClick={() => setOpened({ what: 'task', task: undefined })}>
          {words.task.add}
        </Button>
      }
    >
      <UnderWay what="figures" />
      {things.workingOut > 0 && <p className="soft">{words.stillWorking(things.workingOut)}</p>}
      {things.due.length === 0 && things.workingOut === 0 && (
        <EmptyState title={words.empty}>
          <p>{words.emptyWhat}</p>
        </EmptyState>
      )}
      {things.due.length > 0 && (
        <div className="row due-order not-printed">
          <Choice
            label={words.order}
            labelUnseen
            tiles="narrow"
            options={[
              { value: 'date', label: words.byDate },
              { value: 'walk', label: words.byWalk },
            ]}
            value={order}
            onChange={setOrder}
          />
          <Button kind="quiet" onClick={() => setOpened({ what: 'calendar' })}>
            {words.calendar.do}
          </Button>
        </div>
      )}
      {order === 'date' ? (
        <ByDate things={things} names={names} answer={answer} />
      ) : (
        <ByWalk things={things} names={names} answer={answer} />
      )}
      <RecallList recall={things.recall} names={names} />
      <Answered things={things} names={names} />
      {things.due.length > 0 && <p className="soft">{words.reminder}</p>}
      {things.due.length > 0 && <PrintRow />}
      {opened?.what === 'answer' && <AnswerDueSheet due={opened.due} names={names} onClose={shut} />}
      {opened?.what === 'task' && <TaskSheet task={opened.task} works={things.works} onClose={shut} />}
      {opened?.what === 'calendar' && <CalendarSheet things={things} names={names} onClose={shut} />}
    </Page>
  );
}

interface ListProps {
  readonly things: DueThings;
  readonly names: NameOfThing;
  readonly answer: (due: DueStanding) => (() => void) | undefined;
}

function ByDate({ things, names, answer }: ListProps) {
  const rows = (when: DueWhen) => things.due.filter((due) => due.when === when);
  const list = (due: readonly DueStanding[]) => (
    <ul className="lines bare">
      {due.map((one) => (
        <DueRow key={one.key} due={one} zones={things.zones} names={names} onAnswer={answer(one)} />
      ))}
    </ul>
  );
  const later = rows('later');
  return (
    <>
      {near
        .filter((when) => rows(when).length > 0)
        .map((when) => (
          <Section key={when} title={words.when[when]}>
            {list(rows(when))}
          </Section>
        ))}
      {later.length > 0 && (
        <Fold show={words.laterFold(String(later.length))} hide={words.laterHide}>
          <Section title={words.when.later}>{list(later)}</Section>
        </Fold>
      )}
    </>
  );
}

function ByWalk({ things, names, answer }: ListProps) {
  const stops = byWalk(things);
  return (
    <>
      <p className="soft">{things.sitePlan?.body.spots.length ? words.walkFrom : words.walkNumber}</p>
      {stops.map(({ work, due }) => (
        <Section key={work?.thing ?? ''} title={work ? workName(work) : words.noWork}>
          <ul className="lines bare">
            {due.map((one) => (
              <DueRow
                key={one.key}
                due={one}
                zones={things.zones}
                names={names}
                withoutWork={work !== undefined}
                onAnswer={answer(one)}
              />
            ))}
          </ul>
        </Section>
      ))}
    </>
  );
}

/** What was answered and would else stand above: seen, and asked again by one touch. */
function Answered({ things: { answered }, names }: Pick<ListProps, 'things' | 'names'>) {
  const desk = useDesk();
  const { run, busy } = useDeed();
  if (answered.length === 0) return null;
  return (
    <Fold show={words.answeredFold(String(answered.length))} hide={words.answeredHide} alsoOnPaper>
      <ul className="lines bare">
        {answered.map(({ due, answer }) => {
          const title = [dueTitle(due), due.sculpture && names(due.sculpture)].filter(Boolean).join(' · ');
          return (
            <li key={due.key} className="due">
              <div className="line told">
                <span className="grow">
                  <span className="strong">{title}</span>
                  <span className="line-detail soft">
                    {words.answeredOn(words.answers[answer.body.answer], date(answer.body.on))}
                    {answer.body.note && `. ${answer.body.note}`}
                  </span>
                </span>
              </div>
              <div className="not-printed">
                <Button
                  kind="quiet"
                  disabled={busy}
                  aria-label={words.takeBackOf(title)}
                  onClick={() =>
                    run(
                      () => removePlanned(desk, 'dueAnswered', answer.thing),
                      () => say(words.takenBack),
                    )
                  }
                >
                  {words.takeBack}
                </Button>
              </div>
            </li>
          );
        })}
      </ul>
    </Fold>
  );
}
