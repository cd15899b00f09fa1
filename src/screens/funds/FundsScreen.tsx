import { Fragment, useState } from 'react';
import { Link } from 'wouter';
import { type Planned, plannedAll, sculptureList, tabs } from '../../actions';
import { fundFiguresOf, giftsOf, isFundFigures } from '../../engine/fund';
import type { Thing } from '../../engine/record';
import { date, money, sayReason, type WorkNamed, w, worksNamed } from '../../words';
import { AddIcon, Button, EmptyState, Page, Reading } from '../parts';
import { pathTo, useDesk, useMoney, useQuestion } from '../shell';
import { FundSheet } from './FundSheet';
import '../parts/lines.css';
import './funds.css';

const words = w.funds;

/** All funds: what each needs, and what there is for it, in three columns that are never one. */
export function FundsScreen() {
  const desk = useDesk();
  const planned = useQuestion(plannedAll(desk));
  const rows = useQuestion(sculptureList(desk));
  const mayWrite = useQuestion(tabs(desk)).mode === 'writing';
  const [open, setOpen] = useState(false);
  const back = { to: pathTo.plan(), label: words.back };
  if (!planned || !rows)
    return (
      <Page title={words.title} lead={words.lead} back={back}>
        <Reading />
      </Page>
    );
  const works = worksNamed(rows);
  const funds = [...planned.fund].sort(
    (a, b) =>
      (a.body.closed ?? '').localeCompare(b.body.closed ?? '') || a.body.title.localeCompare(b.body.title, 'en'),
  );
  return (
    <Page
      title={words.title}
      lead={words.lead}
      back={back}
      actions={
        mayWrite && (
          <Button kind="main" size="round" icon={<AddIcon />} onClick={() => setOpen(true)}>
            {words.add}
          </Button>
        )
      }
    >
      {!mayWrite && <p className="soft not-printed">{words.readOnly}</p>}
      {funds.length === 0 && (
        <EmptyState title={words.empty}>
          <p>{words.emptyWhat}</p>
        </EmptyState>
      )}
      <ul className="bare lines">
        {funds.map((fund) => (
          <li key={fund.thing}>
            <FundRow fund={fund} planned={planned} works={works} />
          </li>
        ))}
      </ul>
      {open && <FundSheet works={works} fund={undefined} hasGifts={false} onClose={() => setOpen(false)} />}
    </Page>
  );
}

interface FundRowProps {
  readonly fund: Thing<'fund'>;
  readonly planned: Planned;
  readonly works: readonly WorkNamed[];
}

function FundRow({ fund, planned, works }: FundRowProps) {
  const { rules } = useMoney();
  const { title, sculpture, closed } = fund.body;
  const work = works.find(({ thing }) => thing === sculpture)?.name;
  const found = fundFiguresOf(fund, giftsOf(planned.gift, fund.thing), rules, useDesk().today());
  return (
    <Link href={pathTo.fund(fund.thing)} className="line">
      <span className="grow">
        <span className="strong">{title}</span>
        <span className="line-detail soft">
          {closed ? words.closed(date(closed)) : work ? words.of(work) : words.ofCollection}
        </span>
        {isFundFigures(found) ? (
          <span className="line-detail figures">
            {words
              .rowSum(money(found.target), {
                inHand: money(found.pipeline.inHand),
                pledged: money(found.pipeline.pledged),
                hoped: money(found.pipeline.hoped),
              })
              .map((piece) => (
                <Fragment key={piece}>
                  <span className="fund-piece">{piece}</span>{' '}
                </Fragment>
              ))}
          </span>
        ) : (
          <span className="line-detail">{sayReason(found)}</span>
        )}
      </span>
    </Link>
  );
}
