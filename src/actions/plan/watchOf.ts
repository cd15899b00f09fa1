import type { BodyOf, Thing } from '../../engine/record';
import {
  beganOf,
  didItHold,
  endOfCampaign,
  type Recall,
  recallList,
  type Treated,
  treatedOf,
  type WatchMark,
  watchPlan,
  type ZoneHeld,
} from '../../engine/watch';
import type { Desk, Question } from '../desk';
import { bringUpToDate, firstFound } from '../questions/figures';
import { live } from '../questions/live';
import { thingsWithin } from '../theThing';

/** After a campaign: when to look, what came back, and what had been promised. */
export interface WatchOfCampaign {
  readonly campaign: Thing<'campaign'>;
  /** Null while the work is not over. */
  readonly ended: string | null;
  readonly marks: readonly WatchMark[];
  readonly held: readonly ZoneHeld[];
  readonly recall: Recall | null;
  /** What the fund promised those who gave. */
  readonly promise: string | null;
  /** Good months a year that the chosen option was to bring; null where nothing was said. */
  readonly goodMonths: BodyOf<'option'>['goodMonths'] | null;
  readonly zones: ReadonlyMap<string, BodyOf<'zone'>>;
}

/** Undefined while it is worked out; null where the campaign is not here. */
export const watchOfCampaign = (desk: Desk, campaign: string): Question<WatchOfCampaign | null | undefined> =>
  live<WatchOfCampaign | null | undefined>(desk, `watch ${campaign}`, async () => {
    const current = await desk.store.current(campaign);
    if (!current || current.gone || current.kind !== 'campaign') return { value: null };
    const { sculpture } = current.lead.body as BodyOf<'campaign'>;
    const first = (await firstFound(desk, sculpture))?.value;
    if (!first) return { value: undefined, after: () => bringUpToDate(desk) };
    const [campaigns, options, funds] = await Promise.all([
      thingsWithin(desk, 'campaign', sculpture),
      thingsWithin(desk, 'option', sculpture),
      thingsWithin(desk, 'fund', sculpture),
    ]);
    const thing = campaigns.find((one) => one.thing === campaign);
    if (!thing) return { value: null };
    const { body } = thing;
    const ended = endOfCampaign(thing) ?? null;
    const treated: Treated | undefined = treatedOf(first.record, campaigns).find(({ of }) => of === campaign);
    const today = desk.today();
    return {
      value: {
        campaign: thing,
        ended,
        marks: treated ? watchPlan(first.record, treated, today) : [],
        held: treated ? didItHold(first.holds, treated, beganOf(first.record, thing)) : [],
        recall: recallList([thing], () => first.holds, today)[0] ?? null,
        promise: funds.find((fund) => fund.thing === body.fund)?.body.promise ?? null,
        goodMonths: options.find((option) => option.thing === body.option)?.body.goodMonths ?? null,
        zones: new Map(first.record.zones.map((zone) => [zone.thing, zone.body])),
      },
    };
  });
