import { addDays, dayRange, type SculptureRecord, type Thing, zonesAt } from '../record';
import { treatmentOf } from '../trade';
import type { Due } from './due';
import { because } from './reasonCodes';
import { watchNumbers } from './watchNumbers';
import { endOfCampaign, seenWhole, type Treated, watchPlan } from './watchPlan';

/** A treatment that made the surface another one: after it the surface is watched. A cause removed is no treatment. */
const callsForWatch = (type: string): boolean => {
  const row = treatmentOf(type);
  return row?.breaksSeries === true && row.askConservator;
};

/** Treatments that are watched: each finished campaign as one, and what was done outside of campaigns. */
export const treatedOf = (record: SculptureRecord, campaigns: readonly Thing<'campaign'>[]): readonly Treated[] => {
  const own = campaigns
    .filter(({ body }) => body.sculpture === record.sculpture.thing)
    .flatMap((campaign) => {
      const ended = endOfCampaign(campaign);
      return ended ? [{ campaign, ended }] : [];
    });
  const during = (day: string): boolean =>
    own.some(({ campaign: { body }, ended }) => day >= (body.began ?? body.opened) && day <= (body.accepted ?? ended));
  const zonesOf = (of: string, from: string, to: string): readonly string[] => {
    const inIt = record.treatments.filter(
      ({ body }) =>
        callsForWatch(body.type) &&
        (body.campaign === of || (dayRange(body.date).from >= from && dayRange(body.date).to <= to)),
    );
    return inIt.length === 0 || inIt.some(({ body }) => body.zones.length === 0)
      ? []
      : [...new Set(inIt.flatMap(({ body }) => body.zones))];
  };
  const alone = record.treatments
    .filter(({ body }) => callsForWatch(body.type) && !body.campaign)
    .map(({ thing, body }) => ({ of: thing, ended: body.ended ?? dayRange(body.date).to, zones: body.zones }))
    .filter(({ ended }) => ended !== '9999' && !during(ended));
  // Strip and colour of one week are one treatment: the last of them begins the watch.
  const last = alone.filter(
    (one) =>
      !alone.some(
        (other) =>
          other !== one &&
          (other.ended > one.ended || (other.ended === one.ended && other.of > one.of)) &&
          other.ended <= addDays(one.ended, watchNumbers.soon.value),
      ),
  );
  return [
    ...own.map(({ campaign, ended }) => ({
      of: campaign.thing,
      ended,
      zones: zonesOf(campaign.thing, campaign.body.began ?? campaign.body.opened, ended),
    })),
    ...last,
  ];
};

const watches = (record: SculptureRecord, treated: readonly Treated[], today: string): Due[] =>
  treated.flatMap((one) => {
    // A later treatment of the same surface begins a watch of its own.
    if (treated.some((other) => other !== one && other.ended > one.ended)) return [];
    const next = watchPlan(record, one, today).find(({ state }) => state === 'due' || state === 'to come');
    if (!next) return [];
    const { months, day, from, until } = next;
    return [
      {
        key: `watch/${one.of}/${months}`,
        sort: 'watch',
        sculpture: record.sculpture.thing,
        zones: one.zones,
        about: one.of,
        day,
        from,
        until,
        ownEnd: false,
        reasons: [because('due: watch', { months, date: one.ended })],
      },
    ];
  });

/** The one look before a warranty ends, unless the whole work was seen by then. After the end it is too late, and said so once. */
const warranties = (record: SculptureRecord, campaigns: readonly Thing<'campaign'>[], today: string): Due[] =>
  campaigns.flatMap(({ thing, body }) => {
    const { sculpture, warrantyUntil: until, warrantyWho } = body;
    if (sculpture !== record.sculpture.thing || !until || until < today) return [];
    const { warrantyBefore, warrantyFrom } = watchNumbers;
    const zones = zonesAt(record, today).map((zone) => zone.thing);
    if (seenWhole(record, zones, addDays(until, -warrantyFrom.value), today) !== null) return [];
    const params = { who: warrantyWho ?? '', date: until, days: warrantyBefore.value };
    return [
      {
        key: `warranty/${thing}/${until}`,
        sort: 'warranty',
        sculpture,
        zones: [],
        about: thing,
        day: addDays(until, -warrantyBefore.value),
        from: addDays(until, -warrantyFrom.value),
        until,
        ownEnd: false,
        reasons: [because('due: warranty', params)],
      },
    ];
  });

/** What a treatment that is over asks for. */
export const dueAfterTreatment = (
  record: SculptureRecord,
  campaigns: readonly Thing<'campaign'>[],
  today: string,
): readonly Due[] => [...watches(record, treatedOf(record, campaigns), today), ...warranties(record, campaigns, today)];
