import { useState } from 'react';
import { plannedAll, sculptureList, tabs } from '../../actions';
import { endowmentFor, fundFiguresOf, giftsOf, isFundFigures } from '../../engine/fund';
import type { Thing } from '../../engine/record';
import { date, money, number, sayReason, w, worksNamed } from '../../words';
import { AddIcon, Button, EmptyState, LinkButton, Notice, Page, Reading, Section } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk, useMoney, useQuestion } from '../shell';
import { FundLines } from './FundLines';
import { FundSheet } from './FundSheet';
import { GiftSheet } from './GiftSheet';
import { GiftsByState } from './GiftsByState';
import { WhenMet } from './WhenMet';
import '../parts/plainTable.css';
import './funds.css';

const words = w.funds;

/** One fund: what it must pay for, what there is, when it is met, and the upkeep after. Also a paper. */
export function FundScreen({ fund: name }: { readonly fund: string }) {
  const desk = useDesk();
  const planned = useQuestion(plannedAll(desk));
  const rows = useQuestion(sculptureList(desk));
  const mayWrite = useQuestion(tabs(desk)).mode === 'writing';
  const { rules } = useMoney();
  const [editing, setEditing] = useState(false);
  const [gift, setGift] = useState<Thing<'gift'> | 'new'>();
  const back = { to: pathTo.funds(), label: words.toFunds };
  const fund = planned?.fund.find(({ thing }) => thing === name);
  if (!planned || !rows || !fund)
    return (
      <Page title={words.title} back={back}>
        {planned && rows ? <EmptyState title={words.gone}>{words.goneWhat}</EmptyState> : <Reading />}
      </Page>
    );
  const works = worksNamed(rows);
  const gifts = giftsOf(planned.gift, name);
  const found = fundFiguresOf(fund, gifts, rules, desk.today());
  const { title, sculpture, closed, upkeep, promise, note, priced, lines } = fund.body;
  const work = works.find(({ thing }) => thing === sculpture)?.name;
  return (
    <Page
      title={title}
      over={work ? words.of(work) : words.ofCollection}
      lead={
        isFundFigures(found) && lines.length > 0 ? words.targetToday(money(found.target), date(priced)) : words.noLines
      }
      back={back}
      actions={
        mayWrite && (
          <>
            <Button onClick={() => setEditing(true)}>{words.edit}</Button>
            <Button kind="main" size="round" icon={<AddIcon />} onClick={() => setGift('new')}>
              {words.addGift}
            </Button>
          </>
        )
      }
    >
      {closed && <p className="strong">{words.closed(date(closed))}</p>}
      {!mayWrite && <p className="soft not-printed">{words.readOnly}</p>}
      {isFundFigures(found) ? (
        <>
          {lines.length > 0 && <FundLines figures={found} rules={rules} />}
          <GiftsByState figures={found} onGift={mayWrite ? setGift : undefined} />
          {lines.length > 0 && <WhenMet figures={found} rules={rules} />}
        </>
      ) : (
        <Notice kind="problem" title={sayReason(found)} />
      )}
      <Section title={words.upkeep}>
        <p>
          {upkeep
            ? words.upkeepIs(
                money(upkeep),
                number(rules.spending * 100, 1),
                money(endowmentFor(upkeep, rules.spending)),
              )
            : words.upkeepNone}
        </p>
        <div className="row not-printed">
          <LinkButton kind="quiet" to={pathTo.money()}>
            {words.rules}
          </LinkButton>
          {sculpture && (
            <LinkButton kind="quiet" to={pathTo.options(sculpture)}>
              {words.options}
            </LinkButton>
          )}
        </div>
      </Section>
      {promise && (
        <Section title={words.promise}>
          <p>{promise}</p>
        </Section>
      )}
      {note && (
        <Section title={words.note}>
          <p>{note}</p>
        </Section>
      )}
      <p className="soft">{words.who}</p>
      <PrintRow />
      {editing && <FundSheet works={works} fund={fund} hasGifts={gifts.length > 0} onClose={() => setEditing(false)} />}
      {gift && <GiftSheet fund={fund} gift={gift === 'new' ? undefined : gift} onClose={() => setGift(undefined)} />}
    </Page>
  );
}
