import type { Planned } from '../../actions';
import { campaignStepOf } from '../../engine/trade';
import { w } from '../../words';

const words = w.plan;

/** Where the plan of a work stands, in a few words: its campaign under way, else the last verdict; undefined where there is neither. */
export const standsAt = (planned: Planned, sculpture: string): string | undefined => {
  const campaign = [...planned.campaign]
    .filter(({ body }) => body.sculpture === sculpture && !body.givenUp)
    .sort((a, b) => (a.body.opened < b.body.opened ? 1 : -1))[0];
  if (campaign)
    return words.campaignAt(campaign.body.title, campaignStepOf(campaign.body.step)?.name ?? campaign.body.step);
  const verdict = [...planned.yearVerdict]
    .filter(({ body }) => body.sculpture === sculpture)
    .sort((a, b) => b.body.year - a.body.year)[0];
  return verdict && words.verdictOf(String(verdict.body.year), words.verdicts[verdict.body.verdict]);
};
