import { ofCampaign, paperEntered, paperStanding } from '../../engine/campaign';
import type { PaperOf } from '../../engine/trade';
import { w } from '../../words';
import { LinkLines } from '../parts/LinkLines';
import { pathTo } from '../shell';
import type { OpenFile } from './OfCampaign';

const words = w.campaign.overview;

/** Where each paper and record of a campaign is, and what is in it. */
export function CampaignPapers({ file }: { readonly file: OpenFile }) {
  const { campaign, planned, record } = file;
  const { thing, body } = campaign;
  const paper = (of: PaperOf): string => {
    const entered = paperEntered(planned.completeness, thing, of)?.body;
    const { missing, unseen } = paperStanding(of, entered);
    return words.paperWhat(entered === undefined, missing.length + unseen);
  };
  const lines = ofCampaign(file, 'quantities').flatMap((one) => one.body.items).length;
  const hotDays = planned.hotDay.filter((day) => day.body.campaign === thing).length;
  return (
    <LinkLines
      rows={[
        { to: pathTo.quantities(thing), name: words.quantities, what: words.quantitiesWhat(lines) },
        { to: pathTo.completeness(thing, 'request'), name: words.request, what: paper('request') },
        { to: pathTo.bids(thing), name: words.bids, what: words.bidsWhat(ofCampaign(file, 'bid').length) },
        { to: pathTo.completeness(thing, 'proposal'), name: words.proposals, what: paper('proposal') },
        {
          to: pathTo.access(body.sculpture),
          name: words.access,
          what: w.plan.ofWork.accessWhat(planned.accessSheet.length > 0),
        },
        {
          to: pathTo.inserts(body.sculpture),
          name: words.inserts,
          what: w.plan.ofWork.insertsWhat(record.inserts.length),
        },
        {
          to: pathTo.approvals(thing),
          name: words.approvals,
          what: words.approvalsWhat(ofCampaign(file, 'approval').length, ofCampaign(file, 'colourCard').length),
        },
        { to: pathTo.layers(thing), name: words.layers, what: words.layersWhat(ofCampaign(file, 'layer').length) },
        { to: pathTo.hotDays(thing), name: words.hotDays, what: words.hotDaysWhat(hotDays) },
        { to: pathTo.completeness(thing, 'report'), name: words.report, what: paper('report') },
        { to: pathTo.papersOf(thing), name: w.paperHub.link, what: w.paperHub.linkWhat },
      ]}
    />
  );
}
