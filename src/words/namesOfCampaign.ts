import type { CampaignFile } from '../engine/campaign';
import type { SculptureRecord } from '../engine/record';
import type { NameOfThing } from './en/sentence';

/** Letters of zones, in walking order: "A, C". */
export const lettersOf = (record: SculptureRecord, zones: readonly string[]): string =>
  record.zones
    .filter(({ thing }) => zones.includes(thing))
    .map(({ body }) => body.letter)
    .join(', ');

/** What this part calls inserts and bids, for the sentences of reasons. */
export const namesOfCampaign = ({ record, planned }: CampaignFile): NameOfThing => {
  const names = new Map([
    ...record.inserts.map(({ thing, body }) => {
      const zone = record.zones.find((one) => one.thing === body.zone);
      return [thing, zone ? `${body.material} (${zone.body.letter})` : body.material] as const;
    }),
    ...planned.bid.map(({ thing, body }) => [thing, body.who] as const),
  ]);
  return (thing) => names.get(thing);
};
