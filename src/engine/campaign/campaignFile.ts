import type { SculptureRecord, Thing } from '../record';

type Kinds =
  | 'cause'
  | 'decision'
  | 'fund'
  | 'quantities'
  | 'bid'
  | 'bidCriteria'
  | 'bidScore'
  | 'completeness'
  | 'approval'
  | 'colourCard'
  | 'layer'
  | 'insertCare'
  | 'accessSheet';

/** All that is planned for the work of a campaign; what is another campaign's is left out by who asks. */
export type PlannedForWork = { readonly [K in Kinds]: readonly Thing<K>[] };

/** A campaign with everything written for it and the record of its work. */
export interface CampaignFile {
  readonly record: SculptureRecord;
  readonly campaign: Thing<'campaign'>;
  readonly planned: PlannedForWork;
  readonly today: string;
}

/** The things of this campaign; causes, inserts and access are the work's. */
export const ofCampaign = <K extends Exclude<Kinds, 'cause' | 'decision' | 'fund' | 'insertCare' | 'accessSheet'>>(
  { campaign, planned }: CampaignFile,
  kind: K,
): readonly Thing<K>[] =>
  (planned[kind] as readonly Thing<K>[]).filter(
    ({ body }) => (body as { readonly campaign?: string }).campaign === campaign.thing,
  );
