import type { CampaignFile, PlannedForWork } from '../../../src/engine/campaign';
import { type BodyOf, type KindOfThing, nameOf, type SculptureRecord, type Thing } from '../../../src/engine/record';
import { invented, zoneName } from '../change/invented';

export const today = '2026-10-15';
export const sculpture = nameOf.sculpture('w');
export const campaignName = nameOf.campaign('c');
export const zone = zoneName;

export const thing = <K extends KindOfThing>(name: string, body: BodyOf<K>): Thing<K> => ({
  thing: name,
  body,
  heads: ['00000000-0000-7000-8000-000000000000'],
  lead: {
    id: '00000000-0000-7000-8000-000000000000',
    thing: name,
    kind: name.split('/')[0] as string,
    within: sculpture,
    v: 1,
    at: '2026-10-15T10:00:00.000+00:00',
    by: '',
    device: 'invented',
    n: 0,
    deed: '00000000-0000-7000-8000-000000000001',
    replaces: [],
    body,
  },
});

export const insert = (id: string, body: Partial<BodyOf<'insert'>> = {}): Thing<'insert'> =>
  thing(nameOf.insert(id), { sculpture, material: 'cast glass', count: 1, removable: 'not known', ...body });

export const cause = (sort: string, body: Partial<BodyOf<'cause'>> = {}): Thing<'cause'> =>
  thing(nameOf.cause(sort), { sculpture, sort, zones: [], found: '2026-03-01', state: 'open', ...body });

let bids = 0;
export const bid = (
  lines: Readonly<Record<string, number | readonly [minor: number, measured: number]>>,
  body: Partial<BodyOf<'bid'>> = {},
): Thing<'bid'> =>
  thing(nameOf.bid(`b${bids++}`), {
    sculpture,
    campaign: campaignName,
    who: 'A foundry',
    date: '2026-03-20',
    validUntil: '2026-12-31',
    visited: '2026-03-10',
    currency: 'EUR',
    lines: Object.entries(lines).map(([item, price]) =>
      typeof price === 'number' ? { item, minor: price } : { item, minor: price[0], measured: price[1] },
    ),
    ...body,
  });

/** A work of zones A 2 m2, B 1 m2, seen in one round: green on A, nothing on B. */
export const work = (more: Partial<SculptureRecord> = {}): SculptureRecord => ({
  ...invented({
    zones: { A: { m2: 2 }, B: { m2: 1 } },
    rounds: [{ date: '2026-05-12', saw: { A: [{ kind: 'even-green-film', cover: 0.2 }], B: 'nothing' } }],
  }),
  ...more,
});

const empty: PlannedForWork = {
  cause: [],
  decision: [],
  fund: [],
  quantities: [],
  bid: [],
  bidCriteria: [],
  bidScore: [],
  completeness: [],
  approval: [],
  colourCard: [],
  layer: [],
  insertCare: [],
  accessSheet: [],
};

export const file = (
  campaign: Partial<BodyOf<'campaign'>> = {},
  planned: Partial<PlannedForWork> = {},
  record: SculptureRecord = work(),
): CampaignFile => ({
  record,
  campaign: thing(campaignName, { sculpture, title: 'The stair', opened: '2026-03-02', step: 'request', ...campaign }),
  planned: { ...empty, ...planned },
  today,
});
