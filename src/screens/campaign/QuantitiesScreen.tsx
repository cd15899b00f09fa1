import { useState } from 'react';
import { type QuantityLine, scheduleStanding, surfaceOf } from '../../engine/campaign';
import { areaTolerance } from '../../engine/trade';
import { date, figure, namesOfCampaign, share, w, workName } from '../../words';
import { AddIcon, Button, EmptyState, Notice, Page } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { Reasons } from '../parts/Reasons';
import { pathTo } from '../shell';
import { LineSheet } from './LineSheet';
import { MakeLinesSheet } from './MakeLinesSheet';
import { OfCampaign, type OpenFile } from './OfCampaign';
import { QuantityTable } from './QuantityTable';
import { scheduleOf } from './scheduleOf';
import './campaign.css';

const words = w.campaign.quantities;

/** The schedule that every bidder prices: lines from the zones, printable. */
export function QuantitiesScreen({ campaign }: { readonly campaign: string }) {
  return <OfCampaign campaign={campaign}>{(file) => <Schedule file={file} />}</OfCampaign>;
}

type Open = 'make' | 'add' | QuantityLine;

function Schedule({ file }: { readonly file: OpenFile }) {
  const { record, campaign, today } = file;
  const [open, setOpen] = useState<Open>();
  const schedule = scheduleOf(file);
  const lines = schedule?.body.items ?? [];
  const standing = scheduleStanding(record, lines, today);
  const surface = surfaceOf(lines);
  const { value, range } = figure(surface, 'm2');
  const close = () => setOpen(undefined);
  return (
    <Page
      title={words.title}
      over={workName(record.sculpture)}
      lead={words.lead}
      back={{ to: pathTo.campaign(campaign.thing), label: campaign.body.title }}
      actions={
        <>
          <Button onClick={() => setOpen('add')}>{words.add}</Button>
          <Button kind="main" icon={<AddIcon />} onClick={() => setOpen('make')}>
            {words.make}
          </Button>
        </>
      }
    >
      {lines.length === 0 ? (
        <EmptyState title={words.none}>
          <p>{words.noneWhat}</p>
        </EmptyState>
      ) : (
        <>
          <p>
            {schedule && <span className="strong">{words.made(date(schedule.body.date))}. </span>}
            {words.areas(share(areaTolerance.low), share(areaTolerance.high))}
          </p>
          {standing.length > 0 && (
            <div className="not-printed">
              <Notice kind="caution" title={words.standing}>
                <Reasons reasons={standing} nameOf={namesOfCampaign(file)} />
              </Notice>
            </div>
          )}
          <QuantityTable file={file} lines={lines} onEdit={setOpen} />
          {surface.value > 0 && (
            <p className="figures">
              <span className="soft">{words.total}: </span>
              <span className="strong">{value}</span> <span className="soft">({range})</span>
            </p>
          )}
          <p className="only-printed sign-line">{words.printedFor}</p>
          <PrintRow />
        </>
      )}
      {open === 'make' && <MakeLinesSheet file={file} lines={lines} onClose={close} />}
      {open === 'add' && <LineSheet file={file} lines={lines} line={undefined} onClose={close} />}
      {typeof open === 'object' && <LineSheet file={file} lines={lines} line={open} onClose={close} />}
    </Page>
  );
}
