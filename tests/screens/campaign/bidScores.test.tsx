import { screen, waitFor, within } from '@testing-library/react';
import userEvent, { type UserEvent } from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { setPlanned } from '../../../src/actions';
import { nameOf } from '../../../src/engine/record';
import { bidCriteria } from '../../../src/engine/trade';
import { BidsScreen } from '../../../src/screens/campaign';
import { axeFaults } from '../axe';
import { done, show } from '../deskwork';
import { aBid, heronWithCampaign, kept, type Opened, withSchedule } from './opened';

const marked = ['method', 'people', 'documentation', 'programme'];
const scorers = [
  { id: 's1', role: 'Steward' },
  { id: 's2', role: 'Conservator' },
];

const named = ({ desk, work, campaign }: Opened) =>
  done(
    setPlanned(desk, 'bidCriteria', nameOf.bidCriteria(campaign), {
      ...{ sculpture: work.sculpture, campaign, date: '2026-03-02', scorers },
      criteria: bidCriteria.map(({ id, weight }) => ({ id, weight })),
    }),
  );

/** Marks by hand, one for all criteria of a bid, and handed in. */
const marks = ({ desk, work, campaign }: Opened, scorer: string, of: readonly (readonly [string, number])[]) =>
  done(
    setPlanned(desk, 'bidScore', nameOf.bidScore(campaign, scorer), {
      ...{ sculpture: work.sculpture, campaign, scorer, date: '2026-03-25', handedIn: '2026-03-25' },
      marks: of.flatMap(([bid, mark]) => marked.map((criterion) => ({ bid, criterion, mark }))),
    }),
  );

const cellsOf = (name: string) =>
  within(screen.getByRole('rowheader', { name }).closest('tr') as HTMLElement)
    .getAllByRole('cell')
    .map((cell) => cell.textContent);

const markAll = async (user: UserEvent, mark: string) => {
  for (const box of within(screen.getByRole('dialog')).getAllByRole('textbox', { name: /North|South/ })) {
    await user.clear(box);
    await user.type(box, mark);
  }
};

const twoBids = async () => {
  const opened = await withSchedule(await heronWithCampaign());
  const north = await aBid(opened, 'North foundry', [300_000, 100_000]);
  const south = await aBid(opened, 'South workshop', [600_000, 200_000]);
  return { opened, north, south };
};

describe('The score sheet', () => {
  it('has the usual weights before any bid, and keeps others that come to 100 with who marks', async () => {
    const user = userEvent.setup();
    const opened = await withSchedule(await heronWithCampaign());
    show(opened.desk, <BidsScreen campaign={opened.campaign} />);
    await user.click(await screen.findByRole('button', { name: 'Weights and scorers' }));
    const method = screen.getByRole<HTMLInputElement>('textbox', { name: /Weight of: Method/ });
    expect(method.value).toBe('30');
    await user.clear(method);
    await user.type(method, '40');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText(/The weights come to 110/)).toBeDefined();
    await user.clear(screen.getByRole('textbox', { name: /Weight of: Programme/ }));
    await user.click(screen.getByRole('button', { name: 'Add a person' }));
    await user.type(screen.getAllByRole('textbox', { name: 'Role' })[0] as Element, 'Steward');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    await waitFor(async () => expect(await kept(opened.desk, 'bidCriteria')).toHaveLength(1));
    const [body] = await kept(opened.desk, 'bidCriteria');
    expect(body?.criteria).toEqual([
      { id: 'method', weight: 40 },
      { id: 'people', weight: 25 },
      { id: 'price', weight: 20 },
      { id: 'documentation', weight: 15 },
    ]);
    expect(body?.scorers).toMatchObject([{ role: 'Steward' }]);
    expect(body?.changed).toBeUndefined();
  });

  it('changed with a bid in asks why, and shows for good what the weights were before', async () => {
    const user = userEvent.setup();
    const { opened } = await twoBids();
    show(opened.desk, <BidsScreen campaign={opened.campaign} />);
    await user.click(await screen.findByRole('button', { name: 'Weights and scorers' }));
    const weight = async (name: RegExp, to: string) => {
      const field = screen.getByRole('textbox', { name });
      await user.clear(field);
      await user.type(field, to);
    };
    await weight(/Weight of: Price/, '30');
    await weight(/Weight of: Method/, '20');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(screen.getByText('Say why.')).toBeDefined();
    expect(await kept(opened.desk, 'bidCriteria')).toEqual([]);
    await user.type(screen.getByRole('textbox', { name: /Why do the weights change/ }), 'The board asked');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText(/Changed on .*, when 2 bids were in and 0 sheets handed in/)).toBeDefined();
    expect(screen.getByText(/Before: Method 30, .*Why: The board asked/)).toBeDefined();
  });

  it('shows nobody what the others marked before all sheets are in, then the spread, the places and why', async () => {
    const user = userEvent.setup();
    const { opened, north, south } = await twoBids();
    await named(opened);
    await marks(opened, 's1', [
      [north, 7],
      [south, 7],
    ]);
    show(opened.desk, <BidsScreen campaign={opened.campaign} />);
    expect(await screen.findByText(/handed in on 25 March 2026/)).toBeDefined();
    expect(screen.queryByRole('rowheader', { name: 'Total' })).toBeNull();
    expect(screen.queryByRole('button', { name: 'Mark as Steward' })).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Mark as Conservator' }));
    await markAll(user, '11');
    await user.click(screen.getByRole('button', { name: 'Keep the marks' }));
    expect(screen.getAllByText('A whole number from 0 to 10.')).toHaveLength(8);
    await markAll(user, '5');
    await user.click(screen.getByRole('checkbox', { name: /Hand in/ }));
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep the marks' }));
    await screen.findByRole('rowheader', { name: 'Total' });
    // 80 points by hand: 56 and 40; the price gives 20 and 10.
    expect(cellsOf('Total')).toEqual(['68(60 to 76)', '58(50 to 66)']);
    expect(cellsOf('Price 20')).toEqual(['20', '10']);
    expect(cellsOf('Place')).toEqual(['1', '2']);
    expect(await axeFaults()).toEqual([]);
  });

  it('says a range of places where the scorers put the bids in different orders', async () => {
    const { opened, north, south } = await twoBids();
    await named(opened);
    await marks(opened, 's1', [
      [north, 9],
      [south, 4],
    ]);
    await marks(opened, 's2', [
      [north, 5],
      [south, 8],
    ]);
    show(opened.desk, <BidsScreen campaign={opened.campaign} />);
    await screen.findByRole('rowheader', { name: 'Total' });
    expect(cellsOf('Place')).toEqual(['1 to 2', '1 to 2']);
    expect(
      screen.getByText(
        'North foundry: Not told apart from South workshop: the scorers do not all put the same one ahead.',
      ),
    ).toBeDefined();
  });

  it('is opened before all are in only by somebody, and says who and why', async () => {
    const user = userEvent.setup();
    const { opened, north, south } = await twoBids();
    await named(opened);
    await marks(opened, 's1', [
      [north, 7],
      [south, 7],
    ]);
    show(opened.desk, <BidsScreen campaign={opened.campaign} />);
    await user.click(await screen.findByRole('button', { name: 'Open the sheets now' }));
    await user.click(screen.getByRole('button', { name: 'Open the sheets' }));
    expect(screen.getByText('Say who opens them.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: 'Who opens them' }), 'Steward');
    await user.type(screen.getByRole('textbox', { name: /Why now/ }), 'The other is ill');
    await user.click(screen.getByRole('button', { name: 'Open the sheets' }));
    expect(
      await screen.findByText(/Opened on .* by Steward, before all were handed in: The other is ill/),
    ).toBeDefined();
    expect(cellsOf('Place')).toEqual(['1 to 2', '1 to 2']);
  });

  it('decides nothing: a bid marked as taken names who decided and why, and loses both when it is not taken after all', async () => {
    const user = userEvent.setup();
    const { opened } = await twoBids();
    show(opened.desk, <BidsScreen campaign={opened.campaign} />);
    await user.click(await screen.findByRole('button', { name: 'Mark as taken: South workshop' }));
    expect(await screen.findByText('Nobody is named who decided.')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Who decided, and why' }));
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(screen.getByText('Say in what role it was decided.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: 'Role' }), 'Board');
    await user.type(screen.getByRole('textbox', { name: /Why this one/ }), 'They come back for five years');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText(/Decided by Board/)).toBeDefined();
    expect(await kept(opened.desk, 'campaign')).toMatchObject([{ takenBy: { role: 'Board' } }]);
    await user.click(screen.getByRole('button', { name: 'Not taken after all' }));
    await waitFor(async () => expect((await kept(opened.desk, 'campaign'))[0]?.takenBy).toBeUndefined());
  });
});
