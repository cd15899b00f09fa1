import { describe, expect, it } from 'vitest';
import { addPlanned, editPlanned, type PlannedBody, type PlannedKind, setPlanned } from '../../src/actions';
import { nameOf } from '../../src/engine/record';
import { done, freshDesk } from '../screens/deskwork';

const sculpture = nameOf.sculpture('01a00000-0000-7000-8000-0000000000aa');
const campaign = nameOf.campaign('01a00000-0000-7000-8000-0000000000ab');
const zone = nameOf.zone('01a00000-0000-7000-8000-0000000000ac');
const line = { id: 'i1', name: 'A', task: 'clean down', unit: 'm2', amount: 2 } as const;
const bid: PlannedBody<'bid'> = { sculpture, campaign, who: 'Foundry', date: '2026-03-20', currency: 'EUR', lines: [] };

const wrong: { readonly [K in PlannedKind]?: readonly [PlannedBody<K>, string] } = {
  campaign: [
    { sculpture, title: 'Stair', opened: '2026-03-02', step: 'money', began: '2026-03-01' },
    'campaign: days out of order',
  ],
  cause: [
    { sculpture, sort: 'tree', zones: [zone], found: '2026-03-01', state: 'removed' },
    'campaign: say when it changed',
  ],
  quantities: [
    { sculpture, campaign, date: '2026-03-03', items: [{ ...line, amount: 0 }] },
    'campaign: line without an amount',
  ],
  bid: [{ ...bid, lines: [{ item: 'i1', minor: -1 }] }, 'money: below nothing'],
  bidCriteria: [
    { sculpture, campaign, date: '2026-03-02', criteria: [{ id: 'method', weight: 90 }], scorers: [] },
    'campaign: weights come to',
  ],
  bidScore: [
    {
      ...{ sculpture, campaign, scorer: 's1', date: '2026-03-25' },
      marks: [1, 2].map((mark) => ({ bid: nameOf.bid('b'), criterion: 'method', mark })),
    },
    'campaign: mark twice',
  ],
  completeness: [
    { sculpture, campaign, of: 'report', items: [], date: '2026-10-02', letterSent: '2026-10-01' },
    'campaign: days out of order',
  ],
  approval: [
    { sculpture, campaign, of: 'colour', date: '2026-06-01', answer: 'yes', words: 'seen', signed: [] },
    'campaign: yes without a signature',
  ],
  colourCard: [
    { sculpture, zones: [zone], date: '2026-06-01', words: ' ', signed: [] },
    'campaign: card without words',
  ],
};

describe('What belongs to a campaign', () => {
  it.each(Object.entries(wrong))(
    'is refused as a %s that cannot be, and nothing is kept',
    async (kind, [body, code]) => {
      const desk = await freshDesk();
      const came = await addPlanned(desk, kind as PlannedKind, body as PlannedBody<PlannedKind>);
      expect(came).toMatchObject({ ok: false, reason: { code } });
      expect(await desk.store.ofKind(kind)).toEqual([]);
    },
  );

  it('is looked at as a whole when one field is changed: a good bid does not turn bad by a day', async () => {
    const desk = await freshDesk();
    const { thing } = await done(addPlanned(desk, 'bid', bid));
    const came = await editPlanned(desk, 'bid', thing, { validUntil: '2026-03-19' });
    expect(came).toMatchObject({ ok: false, reason: { code: 'campaign: days out of order' } });
    expect((await desk.store.current(thing))?.lead.body.validUntil).toBeUndefined();
  });

  it('keeps a change of weights after a bid only with its reason, and a sheet only once each bid has its marks', async () => {
    const desk = await freshDesk();
    await done(addPlanned(desk, 'bid', bid));
    const other = { sculpture, campaign: nameOf.campaign('other'), date: '2026-03-21', scorers: [] };
    const criteria = [{ id: 'method', weight: 100 }];
    await done(setPlanned(desk, 'bidCriteria', nameOf.bidCriteria(other.campaign), { ...other, criteria }));
    const name = nameOf.bidCriteria(campaign);
    const late = await setPlanned(desk, 'bidCriteria', name, { ...other, campaign, criteria });
    expect(late).toMatchObject({ ok: false, reason: { code: 'campaign: weights changed after a bid' } });
    const sheet = { sculpture, campaign, scorer: 's1', date: '2026-03-25', marks: [], handedIn: '2026-03-25' };
    const empty = await setPlanned(desk, 'bidScore', nameOf.bidScore(campaign, 's1'), sheet);
    expect(empty).toMatchObject({ ok: false, reason: { code: 'campaign: sheet not whole', params: { count: 4 } } });
  });

  it('has one schedule a campaign, said anew and never doubled', async () => {
    const desk = await freshDesk();
    const name = nameOf.quantities(campaign);
    const body = { sculpture, campaign, date: '2026-03-03', items: [line] };
    await done(setPlanned(desk, 'quantities', name, body));
    await done(setPlanned(desk, 'quantities', name, { ...body, items: [{ ...line, amount: 3 }] }));
    const kept = await desk.store.ofKind('quantities');
    expect(kept.map(({ lead }) => lead.body.items)).toEqual([[{ ...line, amount: 3 }]]);
  });
});
