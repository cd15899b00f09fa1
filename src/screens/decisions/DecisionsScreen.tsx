import { useState } from 'react';
import { plannedAll, sculptureList, tripwiresMet } from '../../actions';
import type { Thing } from '../../engine/record';
import type { TripwireStanding } from '../../engine/watch';
import { namesOfWorks, w, workName } from '../../words';
import { AddIcon, Button, EmptyState, Page, Reading, Section } from '../parts';
import { Fold } from '../parts/Fold';
import { PrintRow } from '../parts/PrintRow';
import { TripwiresMet } from '../parts/TripwiresMet';
import { pathTo, UnderWay, useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';
import { AnswerSheet } from './AnswerSheet';
import { DecisionCard } from './DecisionCard';
import { type DecisionAsked, DecisionSheet } from './DecisionSheet';
import '../parts/plainTable.css';
import './decisions.css';

const words = w.decisions;

const latestFirst = (a: Thing<'decision'>, b: Thing<'decision'>): number =>
  a.body.date < b.body.date ? 1 : a.body.date > b.body.date ? -1 : a.thing < b.thing ? 1 : -1;

/** The journal of decisions, of one work or of all: what holds, what would change a mind, and what was decided before. */
export function DecisionsScreen({ sculpture }: { readonly sculpture?: string | undefined }) {
  const desk = useDesk();
  const planned = useQuestion(plannedAll(desk));
  const works = useQuestion(sculptureList(desk));
  const wires = useQuestion(tripwiresMet(desk));
  const [asked, setAsked] = useState<DecisionAsked>();
  const [answering, setAnswering] = useState<TripwireStanding>();
  if (!planned || !works || !wires) return <Reading />;
  const own = works.find(({ thing }) => thing === sculpture);
  if (sculpture !== undefined && !own) return <NotHere />;
  const names = namesOfWorks(works, wires.zones);
  const here = planned.decision.filter(({ body }) => sculpture === undefined || body.sculpture === sculpture);
  const hold = here.filter(({ body }) => !body.replacedBy).sort(latestFirst);
  const earlier = here.filter(({ body }) => body.replacedBy).sort(latestFirst);
  const open = wires.open.filter(({ decision }) => here.some(({ thing }) => thing === decision.thing));
  const optionName = (option: string | undefined) => planned.option.find(({ thing }) => thing === option)?.body.title;
  const shared = (decision: Thing<'decision'>) => ({
    decision,
    work:
      sculpture === undefined
        ? ((decision.body.sculpture && names(decision.body.sculpture)) ?? words.allWorks)
        : undefined,
    option: optionName(decision.body.option),
    standing: wires.standing,
    answers: planned.tripwireAnswer,
    names,
  });
  return (
    <Page
      title={words.title}
      over={own && workName(own)}
      lead={words.lead}
      back={
        own
          ? { to: pathTo.planOfWork(own.thing), label: own.body.title || w.sculptures.untitled }
          : { to: pathTo.plan(), label: w.plan.title }
      }
      actions={
        <Button
          kind="main"
          size="round"
          icon={<AddIcon />}
          onClick={() => setAsked({ how: 'new', work: sculpture ?? '' })}
        >
          {words.add}
        </Button>
      }
    >
      <UnderWay what="figures" />
      {open.length > 0 && <TripwiresMet open={open} names={names} />}
      {here.length === 0 && (
        <EmptyState title={words.empty}>
          <p>{words.emptyWhat}</p>
        </EmptyState>
      )}
      {hold.length > 0 && (
        <Section title={words.hold} lead={words.who}>
          <div className="decisions">
            {hold.map((decision) => (
              <DecisionCard
                key={decision.thing}
                {...shared(decision)}
                onEdit={() => setAsked({ how: 'edit', decision })}
                onAnew={() => setAsked({ how: 'anew', decision })}
                onAnswer={setAnswering}
              />
            ))}
          </div>
        </Section>
      )}
      {earlier.length > 0 && (
        <Fold show={words.earlier(String(earlier.length))} hide={words.earlierHide}>
          <div className="decisions">
            {earlier.map((decision) => (
              <div key={decision.thing} className="stack tight">
                <p className="soft">{replacedBy(decision, planned.decision)}</p>
                <DecisionCard {...shared(decision)} />
              </div>
            ))}
          </div>
        </Fold>
      )}
      {here.length > 0 && <PrintRow />}
      {asked && <DecisionSheet asked={asked} works={works} planned={planned} onClose={() => setAsked(undefined)} />}
      {answering && (
        <AnswerSheet
          row={answering}
          names={names}
          onClose={(anew) => {
            if (anew) setAsked({ how: 'anew', decision: answering.decision });
            setAnswering(undefined);
          }}
        />
      )}
    </Page>
  );
}

const replacedBy = ({ body }: Thing<'decision'>, all: readonly Thing<'decision'>[]): string => {
  const next = all.find(({ thing }) => thing === body.replacedBy);
  return next ? words.replaced(next.body.title) : words.replacedGone;
};
