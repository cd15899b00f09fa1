import type { Reason } from '../record';
import { type CampaignStep, campaignSteps } from '../trade';
import type { CampaignFile } from './campaignFile';
import { type Found, foundAt } from './foundAtStep';

/** `left open`: the campaign has gone past it, yet something it asks for is not there. */
export type StepState = 'done' | 'left open' | 'now' | 'ahead';

export interface StepStanding {
  readonly step: CampaignStep;
  readonly state: StepState;
  /** What is there for it. */
  readonly there: readonly Reason[];
  /** What it still asks for. */
  readonly lacks: readonly Reason[];
}

/**
 * The steps of a campaign in their order: where it stands is hers to say, what is there and what is lacking is read from the
 * record. A step this version does not know counts as the first.
 */
export const stepsOfCampaign = (file: CampaignFile): readonly StepStanding[] => {
  const { step, givenUp } = file.campaign.body;
  const at = Math.max(
    0,
    campaignSteps.findIndex(({ id }) => id === step),
  );
  return campaignSteps.map((row, i) => {
    const { there, lacks } = found(file, row.id);
    return { step: row, state: stateOf(i, at, lacks.length > 0, givenUp !== undefined), there, lacks };
  });
};

const nothing: Found = { there: [], lacks: [] };
const found = (file: CampaignFile, step: string): Found => foundAt[step]?.(file) ?? nothing;

const stateOf = (i: number, at: number, lacks: boolean, over: boolean): StepState => {
  if (i > at) return 'ahead';
  if (i === at) return over ? 'ahead' : 'now';
  return lacks ? 'left open' : 'done';
};

/** The step after the one a campaign stands at; undefined after the last. */
export const stepAfter = (step: string): CampaignStep | undefined =>
  campaignSteps[campaignSteps.findIndex(({ id }) => id === step) + 1];
