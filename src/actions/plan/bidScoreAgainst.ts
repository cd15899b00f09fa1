import { bidCriteriaRefused, bidScoreRefused, type KeptOfBids } from '../../engine/campaign';
import { asThing, type BodyOf, type KindOfThing, nameOf, type Reason, type Thing } from '../../engine/record';
import type { Desk } from '../desk';

/** Weights against those kept before and the bids that are in. */
export const bidCriteriaAgainst = async (body: BodyOf<'bidCriteria'>, desk: Desk): Promise<Reason | undefined> =>
  bidCriteriaRefused(body, await keptOfBids(desk, body));

/** A sheet against what it was and the bids that are in. */
export const bidScoreAgainst = async (
  body: BodyOf<'bidScore'>,
  desk: Desk,
  sheet: string,
): Promise<Reason | undefined> =>
  bidScoreRefused(body, (await living(desk, 'bidScore', sheet))?.body, await keptOfBids(desk, body));

const keptOfBids = async (
  desk: Desk,
  { sculpture, campaign }: { readonly sculpture: string; readonly campaign: string },
): Promise<KeptOfBids> => {
  const bids = (await desk.store.within(sculpture, ['bid'])).flatMap((current): Thing<'bid'>[] => {
    const thing = current.gone ? undefined : asThing(current, 'bid');
    return thing && thing.body.campaign === campaign ? [thing] : [];
  });
  return { bids, before: (await living(desk, 'bidCriteria', nameOf.bidCriteria(campaign)))?.body };
};

const living = async <K extends KindOfThing>(desk: Desk, kind: K, thing: string): Promise<Thing<K> | undefined> => {
  const current = await desk.store.current(thing);
  return current && !current.gone ? asThing(current, kind) : undefined;
};
