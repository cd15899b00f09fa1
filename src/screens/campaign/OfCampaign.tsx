import type { ReactNode } from 'react';
import { type Planned, plannedAll, plannedOf, sculptureRecordOf } from '../../actions';
import type { CampaignFile } from '../../engine/campaign';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { EmptyState, LinkButton, Reading } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { NotHere } from '../shell/NotHere';

/** A campaign's file with all that is planned for its work. */
export interface OpenFile extends CampaignFile {
  readonly planned: Planned;
}

interface OfCampaignProps {
  readonly campaign: string;
  readonly children: (file: OpenFile) => ReactNode;
}

/** Reads a campaign and the record of its work; says so where it is not here. */
export function OfCampaign({ campaign, children }: OfCampaignProps) {
  const all = useQuestion(plannedAll(useDesk()));
  if (!all) return <Reading />;
  const found = all.campaign.find(({ thing }) => thing === campaign);
  if (!found)
    return (
      <EmptyState
        page
        title={w.campaign.notHere}
        actions={<LinkButton to={pathTo.sculptures()}>{w.campaign.toWorks}</LinkButton>}
      />
    );
  return <WithWork campaign={found}>{children}</WithWork>;
}

interface WithWorkProps {
  readonly campaign: Thing<'campaign'>;
  readonly children: OfCampaignProps['children'];
}

function WithWork({ campaign, children }: WithWorkProps) {
  const desk = useDesk();
  const record = useQuestion(sculptureRecordOf(desk, campaign.body.sculpture));
  const planned = useQuestion(plannedOf(desk, campaign.body.sculpture));
  if (record === undefined || !planned) return <Reading />;
  if (record === null) return <NotHere />;
  return children({ record, campaign, planned, today: desk.today() });
}
