import { useState } from 'react';
import { plannedOf, sculptureRecordOf } from '../../actions';
import { campaignStepOf } from '../../engine/trade';
import { date, w, workName } from '../../words';
import { AddIcon, Button, EmptyState, Page, Reading, Section } from '../parts';
import { LinkLines } from '../parts/LinkLines';
import { pathTo, useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';
import { CampaignSheet } from './CampaignSheet';
import { CausesFirst } from './CausesFirst';

import './campaign.css';

const words = w.campaign;

/** The campaigns of a work, and before them what feeds its damage. */
export function CampaignsScreen({ sculpture }: { readonly sculpture: string }) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, sculpture));
  const planned = useQuestion(plannedOf(desk, sculpture));
  const [open, setOpen] = useState(false);
  if (record === undefined || !planned) return <Reading />;
  if (record === null) return <NotHere />;
  const campaigns = [...planned.campaign].sort((a, b) => b.body.opened.localeCompare(a.body.opened));
  return (
    <Page
      title={words.title}
      over={workName(record.sculpture)}
      lead={words.lead}
      back={{ to: pathTo.planOfWork(sculpture), label: words.overview.toPlan }}
      actions={
        <Button kind="main" icon={<AddIcon />} onClick={() => setOpen(true)}>
          {words.open}
        </Button>
      }
    >
      {campaigns.length === 0 ? (
        <EmptyState title={words.none}>
          <p>{words.noneWhat}</p>
        </EmptyState>
      ) : (
        <LinkLines
          rows={campaigns.map(({ thing, body }) => ({
            to: pathTo.campaign(thing),
            name: body.title,
            what: body.givenUp
              ? words.givenUp(body.givenUp)
              : words.line(campaignStepOf(body.step)?.name ?? body.step, date(body.opened)),
          }))}
        />
      )}
      <Section title={words.causes.title} lead={words.causes.lead}>
        <CausesFirst record={record} causes={planned.cause} />
      </Section>
      {open && <CampaignSheet record={record} planned={planned} campaign={undefined} onClose={() => setOpen(false)} />}
    </Page>
  );
}
