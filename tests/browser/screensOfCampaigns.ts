import { type Entry, idPart } from '../../src/engine/record';
import { w } from '../../src/words';
import type { Screen } from './screensOfGarden';

/** The campaign that is pending, with bids; approvals and report of the one that is done. */
export const screensOfCampaigns = (entries: readonly Entry[]): readonly Screen[] => {
  const campaignOf = (number: string) => {
    const work = entries.find(({ kind, body }) => kind === 'sculpture' && body.number === number)!.thing;
    return { work: idPart(work), id: idPart(entries.find((e) => e.kind === 'campaign' && e.within === work)!.thing) };
  };
  const [pending, over] = [campaignOf('SW-02'), campaignOf('SW-03')];
  const hash = `#/campaign/${pending.id}`;
  const { campaign } = w;
  return [
    { name: 'campaigns', hash: `#/sculpture/${pending.work}/campaigns` },
    {
      name: 'sheet: cause',
      hash: `#/sculpture/${pending.work}/campaigns`,
      touch: [campaign.causes.add],
      sheet: true,
    },
    { name: 'campaign', hash },
    { name: 'sheet: campaign', hash, touch: [campaign.overview.change], sheet: true },
    { name: 'campaign over', hash: `#/campaign/${over.id}` },
    { name: 'quantities', hash: `${hash}/quantities` },
    { name: 'sheet: lines from zones', hash: `${hash}/quantities`, touch: [campaign.quantities.make], sheet: true },
    { name: 'sheet: line', hash: `${hash}/quantities`, touch: [campaign.quantities.add], sheet: true },
    { name: 'bids', hash: `${hash}/bids` },
    { name: 'sheet: bid', hash: `${hash}/bids`, touch: [campaign.bids.enter], sheet: true },
    { name: 'request', hash: `${hash}/papers/request` },
    { name: 'proposal', hash: `${hash}/papers/proposal` },
    { name: 'letter', hash: `${hash}/papers/proposal`, touch: [campaign.papers.toLetter] },
    { name: 'report', hash: `#/campaign/${over.id}/papers/report` },
    { name: 'approvals', hash: `#/campaign/${over.id}/approvals` },
    {
      name: 'sheet: approval',
      hash: `#/campaign/${over.id}/approvals`,
      touch: [campaign.approvals.addShort],
      sheet: true,
    },
    { name: 'sheet: colour card', hash: `#/campaign/${over.id}/approvals`, touch: [campaign.card.add], sheet: true },
  ];
};
