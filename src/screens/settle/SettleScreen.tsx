import { useState } from 'react';
import { roundsThatMayBeOne, sculptureRecordOf, unsettled } from '../../actions';
import { w } from '../../words';
import { Button, EmptyState, LinkButton, Page, Reading, Section } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { OneRound } from './OneRound';
import { SettleOne } from './SettleOne';
import { titleOf } from './titleOf';
import './settle.css';

const words = w.settle;

/** Things on which people spoke without seeing each other, and rounds that may be one. */
export function SettleScreen() {
  const desk = useDesk();
  const things = useQuestion(unsettled(desk));
  const pairs = useQuestion(roundsThatMayBeOne(desk));
  const [open, setOpen] = useState<string | undefined>();
  const back = { to: pathTo.carry(), label: words.back };
  if (!things || !pairs) {
    return (
      <Page title={words.title} lead={words.lead} back={back}>
        <Reading>{words.reading}</Reading>
      </Page>
    );
  }
  const shown = things.find(({ thing }) => thing === open);
  if (shown) {
    return (
      <SettleOne
        key={shown.thing}
        unsettled={shown}
        left={things.length - 1}
        onDone={() => setOpen(things.find(({ thing }) => thing !== shown.thing)?.thing)}
        onBack={() => setOpen(undefined)}
      />
    );
  }
  return (
    <Page title={words.title} lead={words.lead} back={back}>
      {pairs.length > 0 && (
        <Section title={words.rounds}>
          {pairs.map((pair) => (
            <OneRound key={`${pair.earlier.thing} ${pair.later.thing}`} pair={pair} />
          ))}
        </Section>
      )}
      {things.length > 0 ? (
        <Section title={words.count(things.length)} lead={words.untilThen}>
          <ul className="bare stack">
            {things.map(({ thing, kind, within, versions }) => (
              <li key={thing} className="card row">
                <Title thing={thing} kind={kind} within={within} body={versions[0]?.body ?? {}} />
                <Button onClick={() => setOpen(thing)}>{words.open}</Button>
              </li>
            ))}
          </ul>
        </Section>
      ) : (
        pairs.length === 0 && (
          <EmptyState title={words.empty} actions={<LinkButton to={pathTo.carry()}>{words.back}</LinkButton>} />
        )
      )}
    </Page>
  );
}

interface TitleProps {
  readonly thing: string;
  readonly kind: string;
  readonly within: string;
  readonly body: Readonly<Record<string, unknown>>;
}

function Title({ kind, within, body }: TitleProps) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, within));
  const { title, where } = titleOf(kind, body, record ?? undefined);
  return (
    <div className="grow">
      <p className="strong">{title}</p>
      {where && <p className="soft small">{where}</p>}
    </div>
  );
}
