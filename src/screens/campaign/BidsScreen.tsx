import { useState } from 'react';
import { compareBids, ofCampaign } from '../../engine/campaign';
import type { Thing } from '../../engine/record';
import { outlierFactor } from '../../engine/trade';
import { currency as currencyWord, number, w, workName } from '../../words';
import { AddIcon, Button, EmptyState, LinkButton, Notice, Page, Section } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { Reasons } from '../parts/Reasons';
import { pathTo } from '../shell';
import { BidCards } from './BidCards';
import { BidScores } from './BidScores';
import { BidSheet } from './BidSheet';
import { BidTable } from './BidTable';

import { OddPrices } from './OddPrices';
import { OfCampaign, type OpenFile } from './OfCampaign';
import { scheduleOf } from './scheduleOf';
import './campaign.css';

const words = w.campaign.bids;

/** Bids along the schedule, side by side by the price of a unit. */
export function BidsScreen({ campaign }: { readonly campaign: string }) {
  return <OfCampaign campaign={campaign}>{(file) => <Bids file={file} />}</OfCampaign>;
}

function Bids({ file }: { readonly file: OpenFile }) {
  const { record, campaign, today } = file;
  const [open, setOpen] = useState<Thing<'bid'> | 'new'>();
  const lines = scheduleOf(file)?.body.items ?? [];
  const bids = [...ofCampaign(file, 'bid')].sort((a, b) => a.body.who.localeCompare(b.body.who));
  const compared = compareBids(lines, bids, today);
  return (
    <Page
      title={words.title}
      over={workName(record.sculpture)}
      lead={words.lead}
      back={{ to: pathTo.campaign(campaign.thing), label: campaign.body.title }}
      actions={
        lines.length > 0 && (
          <Button kind="main" icon={<AddIcon />} onClick={() => setOpen('new')}>
            {words.enter}
          </Button>
        )
      }
    >
      {lines.length === 0 ? (
        <EmptyState
          title={words.none}
          actions={<LinkButton to={pathTo.quantities(campaign.thing)}>{words.toSchedule}</LinkButton>}
        >
          <p>{words.noSchedule}</p>
        </EmptyState>
      ) : bids.length === 0 ? (
        <>
          <EmptyState title={words.none}>
            <p>{words.noneWhat}</p>
          </EmptyState>
          <BidScores file={file} bids={bids} compared={compared} />
        </>
      ) : (
        <>
          {compared.length > 1 && <Notice kind="caution" title={words.manyCurrencies} />}
          {compared.map((comparison) => (
            <Section key={comparison.currency} title={words.compared(currencyWord(comparison.currency))}>
              <Reasons reasons={comparison.reasons} />
              <OddPrices comparison={comparison} />
              <BidTable comparison={comparison} taken={campaign.body.takenBid} />
            </Section>
          ))}
          <p className="small soft">{words.how(number(outlierFactor.value))}</p>
          <Section title={words.each}>
            <BidCards file={file} bids={bids} compared={compared} onEdit={setOpen} />
          </Section>
          <BidScores file={file} bids={bids} compared={compared} />
          <PrintRow />
        </>
      )}
      {open && (
        <BidSheet
          file={file}
          lines={lines}
          bid={open === 'new' ? undefined : open}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Page>
  );
}
