import type { CampaignFile, PlannedForWork } from '../../engine/campaign';
import { type MoneyRules, rulesOf } from '../../engine/money';
import type { PaperSource, WorkOnPaper } from '../../engine/reckoning';
import type { KindOfThing, Thing } from '../../engine/record';
import type { PaperSort } from '../layout';
import { nameOfWork, thingsIn, thingsOfAll, workOf } from '../reading';

/** A campaign with all that is written for its work, as papers read it. */
export interface CampaignOnPaper extends CampaignFile {
  readonly source: PaperSource;
  readonly work: WorkOnPaper;
  readonly rules: MoneyRules;
  /** Number and title of the work. */
  readonly name: string;
  /** Of the work, in the order in which they were written down. */
  things<K extends KindOfThing>(kind: K): readonly Thing<K>[];
}

const inOrder = <K extends KindOfThing>(things: readonly Thing<K>[]): Thing<K>[] =>
  [...things].sort((a, b) => (a.thing < b.thing ? -1 : 1));

export const campaignsOf = (source: PaperSource): readonly Thing<'campaign'>[] =>
  source.works.flatMap(({ within }) => inOrder(thingsIn(within, 'campaign')));

/** How money is reckoned in the collection. */
export const moneyRules = (source: PaperSource): MoneyRules => rulesOf(thingsOfAll(source, 'moneyRules')[0]?.body);

/** Names of campaigns to choose from; `suits` leaves out those a paper says nothing of. */
export const campaignsToChoose = (
  source: PaperSource,
  suits: (file: CampaignOnPaper) => boolean = () => true,
): readonly { readonly about: string; readonly label: string }[] =>
  campaignsOf(source).flatMap(({ thing, body }) => {
    const file = campaignOnPaper(source, thing);
    return file && suits(file) ? [{ about: thing, label: `${file.name}: ${body.title}` }] : [];
  });

export const campaignOnPaper = (source: PaperSource, about: string): CampaignOnPaper | undefined => {
  const campaign = campaignsOf(source).find(({ thing }) => thing === about);
  const work = campaign && workOf(source, campaign.body.sculpture);
  if (!campaign || !work) return undefined;
  const things = <K extends KindOfThing>(kind: K) => inOrder(thingsIn(work.within, kind));
  const planned: PlannedForWork = {
    cause: things('cause'),
    decision: things('decision'),
    fund: thingsOfAll(source, 'fund'),
    quantities: things('quantities'),
    bid: things('bid'),
    bidCriteria: things('bidCriteria'),
    bidScore: things('bidScore'),
    completeness: things('completeness'),
    approval: things('approval'),
    colourCard: things('colourCard'),
    layer: things('layer'),
    insertCare: things('insertCare'),
    accessSheet: things('accessSheet'),
  };
  const { record } = work;
  return {
    ...{ source, work, record, campaign, planned, things },
    today: source.today,
    rules: moneyRules(source),
    name: nameOfWork(work),
  };
};

/** Those for which money and hands are still sought. */
export const campaignsAhead: PaperSort['choices'] = (source) =>
  campaignsToChoose(source, ({ campaign: { body } }) => !body.began && !body.ended && !body.accepted && !body.givenUp);
