import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { BidsScreen } from '../../../src/screens/campaign';
import { axeFaults } from '../axe';
import { show } from '../deskwork';
import { aBid, heronWithCampaign, kept, withSchedule } from './opened';

const rowOf = (name: RegExp) => within(screen.getByRole('rowheader', { name }).closest('tr') as HTMLElement);

describe('Bids', () => {
  it('wait for a schedule', async () => {
    const { desk, campaign } = await heronWithCampaign();
    show(desk, <BidsScreen campaign={campaign} />);
    expect(await screen.findByText(/Make the schedule of quantities first/)).toBeDefined();
    expect(screen.queryByRole('button', { name: 'Enter a bid' })).toBeNull();
  });

  it('are entered line by line; what is no amount is said, what is left empty is not priced', async () => {
    const user = userEvent.setup();
    const { desk, campaign } = await withSchedule(await heronWithCampaign());
    show(desk, <BidsScreen campaign={campaign} />);
    await user.click(await screen.findByRole('button', { name: 'Enter a bid' }));
    await user.type(screen.getByRole('textbox', { name: 'Who bids' }), 'North foundry');
    await user.type(screen.getByRole('textbox', { name: /Currency of the bid/ }), 'eur');
    const price = screen.getByRole('textbox', { name: /^A part A ?\(/ });
    await user.type(price, '-5');
    await user.click(screen.getByRole('button', { name: 'Keep the bid' }));
    expect(screen.getByText('An amount cannot be below nothing.')).toBeDefined();
    await user.clear(price);
    await user.type(price, '3 100.50');
    await user.type(screen.getByRole('textbox', { name: /A part A: area the bidder measured/ }), '2,6');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep the bid' }));
    expect(await screen.findByText(/Not priced: B part B/)).toBeDefined();
    expect(rowOf(/B part B/).getByText('not priced')).toBeDefined();
    expect(screen.getByText(/North foundry, A part A: 2.6 measured lies outside 1.8 to 2.2/)).toBeDefined();
    expect(await kept(desk, 'bid')).toMatchObject([
      { who: 'North foundry', currency: 'EUR', lines: [{ item: 'i1', minor: 310_050, measured: 2.6 }] },
    ]);
    expect((await kept(desk, 'moneyRules'))[0]?.currency).toBe('EUR');
    expect(await axeFaults()).toEqual([]);
  });

  it('stand side by side by the price of a square metre, and one far above the others is to be asked about', async () => {
    const opened = await withSchedule(await heronWithCampaign());
    await aBid(opened, 'North foundry', [300_000, 140_000]);
    await aBid(opened, 'South workshop', [320_000, 150_000]);
    await aBid(opened, 'West studio', [310_000, 390_000]);
    show(opened.desk, <BidsScreen campaign={opened.campaign} />);
    const odd = within(await screen.findByRole('note', { name: /To ask about/ }));
    expect(odd.getAllByRole('listitem').map((one) => one.textContent)).toEqual([
      'West studio, B part B: 2.6 times the median of this line, more than 2: ask what is in it.',
    ]);
    const row = rowOf(/B part B/);
    expect(row.getByText('3,900 a m²')).toBeDefined();
    expect(row.getByText('(3,545 to 4,333)')).toBeDefined();
    expect(row.getByText(/much above the others/)).toBeDefined();
    const totals = within(
      screen.getByRole('rowheader', { name: 'Total of its priced lines' }).closest('tr') as HTMLElement,
    );
    expect(totals.getAllByRole('cell').map((cell) => cell.textContent)).toEqual([
      'EUR 4,400',
      'EUR 4,700',
      'EUR 7,000',
    ]);
    const perM2 = within(
      screen.getByRole('rowheader', { name: 'A m², over the surface it priced' }).closest('tr') as HTMLElement,
    );
    expect(perM2.getAllByRole('cell')[2]?.textContent).toBe('EUR 2,333');
    expect(await axeFaults()).toEqual([]);
  });

  it('with a line left out are held against the others on the lines all of them priced', async () => {
    const opened = await withSchedule(await heronWithCampaign());
    await aBid(opened, 'North foundry', [300_000, 140_000]);
    await aBid(opened, 'South workshop', [320_000]);
    show(opened.desk, <BidsScreen campaign={opened.campaign} />);
    const shared = await screen.findByRole('rowheader', { name: 'On the 1 line of 2 that all priced' });
    const cells = within(shared.closest('tr') as HTMLElement).getAllByRole('cell');
    expect(cells.map((cell) => cell.textContent)).toEqual(['EUR 3,000', 'EUR 3,200']);
    expect(screen.getByText(/its total is not the price of the whole job/)).toBeDefined();
    expect(screen.getByText(/With fewer than 3 bids in one currency/)).toBeDefined();
  });

  it('in two currencies stand in two tables and no sum joins them', async () => {
    const opened = await withSchedule(await heronWithCampaign());
    await aBid(opened, 'North foundry', [300_000, 140_000]);
    await aBid(opened, 'East yard', [290_000, 130_000], { currency: 'CHF' });
    show(opened.desk, <BidsScreen campaign={opened.campaign} />);
    expect(await screen.findByText(/never added or ranked together/)).toBeDefined();
    expect(screen.getAllByRole('table', { name: /^Price of each line/ })).toHaveLength(2);
    expect(screen.getByRole('heading', { name: 'Side by side, in CHF' })).toBeDefined();
  });

  it('are taken by a touch, and not taken after all by another', async () => {
    const user = userEvent.setup();
    const opened = await withSchedule(await heronWithCampaign());
    const north = await aBid(opened, 'North foundry', [300_000, 140_000]);
    show(opened.desk, <BidsScreen campaign={opened.campaign} />);
    await user.click(await screen.findByRole('button', { name: 'Mark as taken: North foundry' }));
    await waitFor(async () => expect((await kept(opened.desk, 'campaign'))[0]?.takenBid).toBe(north));
    await user.click(await screen.findByRole('button', { name: 'Not taken after all' }));
    await waitFor(async () => expect((await kept(opened.desk, 'campaign'))[0]?.takenBid).toBeUndefined());
  });

  it('past their last day say that they have to be renewed', async () => {
    const opened = await withSchedule(await heronWithCampaign());
    await aBid(opened, 'North foundry', [300_000], { validUntil: '2026-08-28' });
    show(opened.desk, <BidsScreen campaign={opened.campaign} />);
    expect(await screen.findByText('It was valid until 28 August 2026: ask for it to be renewed.')).toBeDefined();
  });

  it('changed keep the price of a line that is no longer in the schedule: the bidder said it', async () => {
    const user = userEvent.setup();
    const opened = await withSchedule(await heronWithCampaign());
    await aBid(opened, 'North foundry', [300_000, 140_000, 99_000]);
    show(opened.desk, <BidsScreen campaign={opened.campaign} />);
    await user.click(await screen.findByRole('button', { name: 'Change the bid of North foundry' }));
    const price = screen.getByRole<HTMLInputElement>('textbox', { name: /^A part A ?\(/ });
    expect(price.value).toBe('3000');
    await user.clear(price);
    await user.type(price, '3050');
    await user.click(screen.getByRole('button', { name: 'Keep the bid' }));
    await waitFor(async () =>
      expect((await kept(opened.desk, 'bid'))[0]?.lines).toEqual([
        { item: 'i1', minor: 305_000 },
        { item: 'i2', minor: 140_000 },
        { item: 'i3', minor: 99_000 },
      ]),
    );
  });
});
