import { named } from './named';
import type { Source } from './source';

/** A step of a campaign: what is settled in it, and who has the last word. */
export interface CampaignStep {
  readonly id: string;
  readonly name: string;
  /** What she decides or gathers. */
  readonly asks: string;
  /** Who decides, where it is not she. */
  readonly decides?: string;
  readonly source: Source;
}

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };
const step = (id: string, name: string, asks: string, decides?: string): CampaignStep => ({
  id,
  name,
  asks,
  ...(decides ? { decides } : {}),
  source: practice,
});

/** From the first doubt to the closed file, in the order in which they are usually settled. */
export const campaignSteps: readonly CampaignStep[] = named('campaignSteps', [
  step('trigger', 'Trigger', 'What shows that the care given so far is not enough any more.'),
  step('causes', 'Causes first', 'Remove what feeds the damage, and wait a season where that may be enough.'),
  step(
    'assessment',
    'Assessment',
    'A conservator looks, tests and puts ways of treatment in writing.',
    'The conservator',
  ),
  step(
    'rights',
    'Rights and intent',
    'What colour the work is to have, by what evidence, and who has to be asked.',
    'The artist or estate and the owner; counsel on rights',
  ),
  step('options', 'Options', 'Which way, and what would change your mind.', 'The owner, on the conservator’s advice'),
  step('money', 'Money', 'Target, contingency, upkeep; care goes on meanwhile.'),
  step('request', 'Request and bids', 'The same job in writing for all; chosen by more than the price.'),
  step(
    'access',
    'Access and permits',
    'How the work is reached, who closes and drains what, who permits heat.',
    'The competent person; fire authority and insurer for hot work',
  ),
  step(
    'inserts',
    'Inserts and neighbours',
    'Taken out, or shielded and watched within a named expert’s limits.',
    'A specialist of the material',
  ),
  step('before', 'Record before', 'Every zone and station, dry and clean. After this day the evidence is gone.'),
  step(
    'strip',
    'Cleaning down',
    'A sample area first, seen and signed; stop where metal or tool marks suffer.',
    'The conservator',
  ),
  step(
    'colour',
    'Colour agreed',
    'Test panel seen dry and wet, in sun and shade, and signed.',
    'Those who must sign: artist or estate, owner, conservator',
  ),
  step('patina', 'Patina', 'Every layer written down as it is laid.', 'The conservator and the trade'),
  step('wax', 'Wax', 'Product, batch, coats.'),
  step('report', 'Report', 'Handed over and whole before the last payment.'),
  step('watch', 'Watch', 'Looks after 1, 3, 6, 12 and 24 months, then yearly; one before the warranty ends.'),
  step('close', 'Closed', 'What it cost, what held, what you would not do again.'),
]);

const byId = new Map(campaignSteps.map((row) => [row.id, row]));
export const campaignStepOf = (id: string): CampaignStep | undefined => byId.get(id);
