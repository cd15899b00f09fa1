import { useState } from 'react';
import { ofCampaign } from '../../engine/campaign';
import { type PaperOf, paperItems } from '../../engine/trade';
import { w, workName } from '../../words';
import { EmptyState, Page } from '../parts';
import { Select } from '../parts/Select';
import { pathTo } from '../shell';

import { OfCampaign, type OpenFile } from './OfCampaign';
import { PaperCheck } from './PaperCheck';
import './campaign.css';

const words = w.campaign.papers;

/** A paper of a campaign against what it must hold, with the letter of what is missing. */
export function CompletenessScreen({ campaign, of }: { readonly campaign: string; readonly of: string }) {
  if (!Object.hasOwn(paperItems, of)) return <EmptyState page title={w.campaign.notHere} />;
  return <OfCampaign campaign={campaign}>{(file) => <Paper file={file} of={of as PaperOf} />}</OfCampaign>;
}

function Paper({ file, of }: { readonly file: OpenFile; readonly of: PaperOf }) {
  const { record, campaign } = file;
  const bids = of === 'proposal' ? ofCampaign(file, 'bid') : [];
  const [bid, setBid] = useState(campaign.body.takenBid ?? '');
  const chosen = bids.some(({ thing }) => thing === bid) ? bid : '';
  return (
    <Page
      title={words.titles[of]}
      over={workName(record.sculpture)}
      lead={words.leads[of]}
      back={{ to: pathTo.campaign(campaign.thing), label: campaign.body.title }}
    >
      {bids.length > 0 && (
        <div className="not-printed">
          <Select
            label={words.whose}
            value={chosen}
            onChange={setBid}
            options={[
              { value: '', label: words.whoseNone },
              ...bids.map(({ thing, body }) => ({ value: thing, label: body.who })),
            ]}
          />
        </div>
      )}
      <PaperCheck key={chosen} file={file} of={of} bid={chosen === '' ? undefined : chosen} />
    </Page>
  );
}
