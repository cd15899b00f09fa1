import { useState } from 'react';
import { ofCampaign } from '../../engine/campaign';
import type { Thing } from '../../engine/record';
import { w, workName } from '../../words';
import { AddIcon, Button, EmptyState, Page, Section } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo } from '../shell';
import { ApprovalCards } from './ApprovalCards';
import { ApprovalSheet } from './ApprovalSheet';
import { ColourCardSheet } from './ColourCardSheet';
import { ColourCards } from './ColourCards';

import { OfCampaign, type OpenFile } from './OfCampaign';
import './campaign.css';

const words = w.campaign.approvals;

/** What was put to those who must say yes, and the colour that was agreed. */
export function ApprovalsScreen({ campaign }: { readonly campaign: string }) {
  return <OfCampaign campaign={campaign}>{(file) => <Approvals file={file} />}</OfCampaign>;
}

type Open = { readonly approval: Thing<'approval'> | undefined } | { readonly card: Thing<'colourCard'> | undefined };

function Approvals({ file }: { readonly file: OpenFile }) {
  const { record, campaign } = file;
  const [open, setOpen] = useState<Open>();
  const newestFirst = <T extends { readonly body: { readonly date: string } }>(list: readonly T[]): T[] =>
    [...list].sort((a, b) => b.body.date.localeCompare(a.body.date));
  const approvals = newestFirst(ofCampaign(file, 'approval'));
  const cards = newestFirst(ofCampaign(file, 'colourCard'));
  const close = () => setOpen(undefined);
  return (
    <Page
      title={words.title}
      over={workName(record.sculpture)}
      lead={words.lead}
      back={{ to: pathTo.campaign(campaign.thing), label: campaign.body.title }}
      actions={
        <Button kind="main" icon={<AddIcon />} onClick={() => setOpen({ approval: undefined })}>
          {words.addShort}
        </Button>
      }
    >
      {approvals.length === 0 ? (
        <EmptyState title={words.none}>
          <p>{words.noneWhat}</p>
        </EmptyState>
      ) : (
        <Section title={words.section}>
          <ApprovalCards file={file} approvals={approvals} onEdit={(approval) => setOpen({ approval })} />
        </Section>
      )}
      <Section
        title={w.campaign.card.section}
        lead={w.campaign.card.lead}
        actions={<Button onClick={() => setOpen({ card: undefined })}>{w.campaign.card.add}</Button>}
      >
        <ColourCards file={file} cards={cards} onEdit={(card) => setOpen({ card })} />
      </Section>
      <PrintRow />
      {open && 'approval' in open && <ApprovalSheet file={file} approval={open.approval} onClose={close} />}
      {open && 'card' in open && <ColourCardSheet file={file} card={open.card} onClose={close} />}
    </Page>
  );
}
