import { useState } from 'react';
import { plannedOfCollection, sculptureList } from '../../actions';
import type { Thing } from '../../engine/record';
import { groundsTopicOf, groundsTopics } from '../../engine/trade';
import { date, list, type WorkNamed, w, worksNamed } from '../../words';
import { AddIcon, Button, EmptyState, Page, Reading, Section } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk, useQuestion } from '../shell';
import { AgreementSheet } from './AgreementSheet';

const words = w.grounds;

/** What was agreed with those who keep the grounds, by what it is about; a paper for the shed. */
export function GroundsScreen() {
  const desk = useDesk();
  const planned = useQuestion(plannedOfCollection(desk));
  const rows = useQuestion(sculptureList(desk));
  const [open, setOpen] = useState<Thing<'groundsAgreement'> | 'new'>();
  const back = { to: pathTo.plan(), label: words.toPlan };
  if (!planned || !rows)
    return (
      <Page title={words.title} lead={words.lead} back={back}>
        <Reading />
      </Page>
    );
  const works = worksNamed(rows);
  const today = desk.today();
  const order = groundsTopics.map(({ id }) => id);
  const all = [...planned.groundsAgreement].sort(
    (a, b) => order.indexOf(a.body.topic) - order.indexOf(b.body.topic) || a.body.agreed.localeCompare(b.body.agreed),
  );
  const isOver = ({ body }: Thing<'groundsAgreement'>) => body.ended !== undefined && body.ended <= today;
  const lines = (shown: readonly Thing<'groundsAgreement'>[]) => (
    <ul className="bare stack">
      {shown.map((agreement) => (
        <li key={agreement.thing} className="card stack tight">
          <h3>{groundsTopicOf(agreement.body.topic)?.name ?? agreement.body.topic}</h3>
          <p>{agreement.body.text}</p>
          <Facts agreement={agreement} works={works} today={today} />
          <div className="row not-printed">
            <Button aria-label={words.changeOf(agreement.body.text)} onClick={() => setOpen(agreement)}>
              {words.change}
            </Button>
          </div>
        </li>
      ))}
    </ul>
  );
  const over = all.filter(isOver);
  const inForce = all.filter((one) => !isOver(one));
  return (
    <Page
      title={words.title}
      lead={words.lead}
      back={back}
      actions={
        <Button kind="main" icon={<AddIcon />} onClick={() => setOpen('new')}>
          {words.add}
        </Button>
      }
    >
      {all.length === 0 && (
        <EmptyState title={words.empty}>
          <p>{words.emptyWhat}</p>
        </EmptyState>
      )}
      {inForce.length > 0 && <Section title={words.inForce}>{lines(inForce)}</Section>}
      {over.length > 0 && (
        <div className="not-printed">
          <Section title={words.over}>{lines(over)}</Section>
        </div>
      )}
      {all.length > 0 && <PrintRow />}
      {open && (
        <AgreementSheet
          works={works}
          agreement={open === 'new' ? undefined : open}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Page>
  );
}

interface FactsProps {
  readonly agreement: Thing<'groundsAgreement'>;
  readonly works: readonly WorkNamed[];
  readonly today: string;
}

function Facts({ agreement: { body }, works, today }: FactsProps) {
  const { who, agreed, review, ended } = body;
  const about = works.filter(({ thing }) => body.works?.includes(thing)).map(({ name }) => name);
  const late = review !== undefined && review <= today && ended === undefined;
  return (
    <>
      <p className="soft small">
        {[
          about.length > 0 ? list(about) : words.allWorks,
          words.agreedOn([who.role, who.name].filter(Boolean).join(', '), date(agreed)),
          !late && review && words.reviewOn(date(review)),
          ended && words.endedOn(date(ended)),
        ]
          .filter(Boolean)
          .join(' · ')}
      </p>
      {late && <p className="strong">{words.reviewDue(date(review))}</p>}
      {body.note && <p className="small">{body.note}</p>}
    </>
  );
}
