import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addPlanned, type Desk, plannedOf, plannedOfCollection, setPlanned, undoLast } from '../../../src/actions';
import { defaultMoneyRules } from '../../../src/engine/money';
import { nameOf } from '../../../src/engine/record';
import { OptionsScreen } from '../../../src/screens/options';
import { stripAll, waxAndLocal, waxOnly } from '../../engine/options/halfTideStair';
import { answered } from '../../files/answered';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show, type Work } from '../deskwork';

const stair = async (seed = 1): Promise<{ desk: Desk; work: Work }> => {
  const desk = await freshDesk(seed);
  const work = await aWork(desk, { title: 'Half-Tide Stair', number: 'SW-02', areas: [10, 7.8] });
  return { desk, work };
};

/** The three ways of the invented work, kept in the order A, B, C. */
const threeWays = async (desk: Desk, { sculpture }: Work): Promise<string[]> => {
  const rules = { version: 1, currency: 'XXX', ...defaultMoneyRules };
  await done(setPlanned(desk, 'moneyRules', nameOf.moneyRules(desk.collection), rules));
  const things: string[] = [];
  for (const { body } of [waxOnly, waxAndLocal, stripAll])
    things.push((await done(addPlanned(desk, 'option', { ...body, sculpture }))).thing);
  return things;
};

const section = (name: string) => screen.getByRole('heading', { level: 2, name }).closest('section') as HTMLElement;

describe('Options set side by side', () => {
  it('show the printed figures at three rates, with their ranges', async () => {
    const { desk, work } = await stair();
    await threeWays(desk, work);
    show(desk, <OptionsScreen sculpture={work.sculpture} />);
    const table = await screen.findByRole('table', { name: /at three rates/ });
    const rows = within(table)
      .getAllByRole('row')
      .map((row) => row.textContent ?? '');
    expect(rows.filter((row) => row.startsWith('2 %'))).toHaveLength(3);
    expect(rows.filter((row) => row.startsWith('4 %'))).toHaveLength(3);
    const at3 = rows.filter((row) => row.startsWith('3 %'));
    for (const [i, yearly, month] of [
      [0, 'demo $ 4,442', 'demo $ 1,481'],
      [1, 'demo $ 7,585', 'demo $ 1,084'],
      [2, 'demo $ 7,361', 'demo $ 736'],
    ] as const) {
      expect(at3[i]).toContain(yearly);
      expect(at3[i]).toContain(month);
    }
  });

  it('say both sentences, and in which year the dearer at the start has caught up', async () => {
    const { desk, work } = await stair();
    await threeWays(desk, work);
    show(desk, <OptionsScreen sculpture={work.sculpture} />);
    await screen.findByRole('table', { name: /at three rates/ });
    const side = within(section('Side by side'));
    expect(side.getByText('Cheapest in money: A · Yearly wax only.')).toBeDefined();
    expect(side.getByText('Dearest per good month: A · Yearly wax only.')).toBeDefined();
    expect(screen.getByText(/until year 19; only from then on has it cost no more/)).toBeDefined();
  });

  it('print what speaks against the favourite, and against any other way that is leaned to', async () => {
    const user = userEvent.setup();
    const { desk, work } = await stair();
    const [a] = await threeWays(desk, work);
    show(desk, <OptionsScreen sculpture={work.sculpture} />);
    const choice = await screen.findByRole('combobox', { name: 'The way you lean to' });
    expect(within(choice).getByRole('option', { name: /^C · Strip/ })).toHaveProperty('selected', true);
    const against = section('What speaks against it, too');
    expect(within(against).getByText('It takes one large step that cannot be taken back.')).toBeDefined();
    expect(within(against).getByText(/If the colour holds a shorter time, B · .* may be the better buy/)).toBeDefined();
    await user.selectOptions(choice, a ?? '');
    expect(within(against).queryByText(/cannot be taken back/)).toBeNull();
    expect(
      within(section('What if')).getByText(/A good month of A · Yearly wax only costs demo \$ 1,481/),
    ).toBeDefined();
  });

  it('tell the price of waiting line by line', async () => {
    const { desk, work } = await stair();
    await threeWays(desk, work);
    show(desk, <OptionsScreen sculpture={work.sculpture} />);
    const table = await screen.findByRole('table', { name: /^What it costs to wait, in demo \$: C/ });
    const [one, three] = within(table)
      .getAllByRole('row')
      .slice(1)
      .map((row) =>
        within(row)
          .getAllByRole('cell')
          .map((cell) => cell.textContent?.trim()),
      );
    expect(one).toEqual(['67,908', '2,612', '3,100', '0', '5,712']);
    expect(three?.slice(0, 3)).toEqual(['73,449', '8,153', '9,677']);
    expect(screen.getByText(/Today’s price of C .*: demo \$ 65,296\./)).toBeDefined();
  });

  it('say who decides once, and have no faults axe can find', async () => {
    const { desk, work } = await stair();
    await threeWays(desk, work);
    const { container } = show(desk, <OptionsScreen sculpture={work.sculpture} />);
    expect(await screen.findAllByText(/is for a conservator to say/)).toHaveLength(1);
    await screen.findByRole('table', { name: /^What it costs to wait, in demo \$: C/ });
    expect(container.textContent).not.toMatch(/NaN|Infinity|undefined|null|option\//);
    expect(await axeFaults()).toEqual([]);
  });
});

describe('What the record says', () => {
  it('stands with each way, for it and against it', async () => {
    const { desk, work } = await stair();
    await threeWays(desk, work);
    await aRound(desk, work, '2026-05-12', [{ 'even-green-film': 0.75 }, { 'pale-powdery-mounds': 0.1 }]);
    show(desk, <OptionsScreen sculpture={work.sculpture} />);
    const strip = await screen.findByRole('article', { name: /^C · Strip/ });
    expect(await within(strip).findByText(/Ask the conservator before anything else/)).toBeDefined();
    expect(within(strip).getByText(/of the surface seen is green\./)).toBeDefined();
    expect(screen.getByText('It speaks for ways not entered yet: Investigate.')).toBeDefined();
  });

  it('before any round nothing is taken to be sound', async () => {
    const { desk, work } = await stair();
    show(desk, <OptionsScreen sculpture={work.sculpture} />);
    expect(await screen.findByText('No round has been made yet.')).toBeDefined();
    expect(screen.getByText('No way to go on is entered yet')).toBeDefined();
  });

  it('a work without zones, or with forty and long names, stands without a number that is none', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const bare = await aWork(desk, { title: 'Bare', number: 'W-1', areas: [] });
    const wide = await aWork(desk, { title: 'Wide '.repeat(30), number: 'W-2', areas: Array(40).fill(0.2) });
    await threeWays(desk, bare);
    await done(addPlanned(desk, 'option', { ...stripAll.body, sculpture: wide.sculpture, zones: [...wide.zones] }));
    for (const work of [bare, wide]) {
      const { container, unmount } = show(desk, <OptionsScreen sculpture={work.sculpture} />);
      await screen.findByRole('table', { name: /^What it costs to wait/ });
      await screen.findAllByText('No round has been made yet.');
      expect(container.textContent).not.toMatch(/NaN|Infinity|undefined|null/);
      await user.click(screen.getAllByRole('button', { name: /^Change/ })[0] as HTMLElement);
      expect(screen.getByRole('dialog').textContent).not.toMatch(/NaN|Infinity|undefined|null/);
      unmount();
    }
  });

  it('a work that is not here says so', async () => {
    show(await freshDesk(), <OptionsScreen sculpture="sculpture/none" />);
    expect(await screen.findByRole('heading', { level: 1 })).toBeDefined();
  });
});

describe('Entering a way', () => {
  it('asks for the currency with the first amount and keeps both, and an undo takes the way back', async () => {
    const user = userEvent.setup();
    const { desk, work } = await stair();
    show(desk, <OptionsScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Add a way' }));
    const sheet = within(screen.getByRole('dialog'));
    await user.click(sheet.getByRole('radio', { name: 'Keep waxing' }));
    expect(sheet.getByLabelText('Called')).toHaveProperty('value', 'Keep waxing');
    await user.click(sheet.getByRole('button', { name: 'Add a cost' }));
    await user.type(sheet.getByLabelText('What for'), 'Wash and wax');
    await user.type(sheet.getByLabelText('Amount'), '3 100');
    await user.type(sheet.getByLabelText('Currency'), 'eur');
    await user.selectOptions(sheet.getByRole('combobox', { name: 'When' }), 'Each year');
    await user.type(sheet.getByLabelText('About (optional)'), '3');
    await user.click(sheet.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByRole('article', { name: /^A · Keep waxing/ })).toBeDefined();
    const { option } = await answered(plannedOf(desk, work.sculpture));
    expect(option[0]?.body).toEqual({
      sculpture: work.sculpture,
      sort: 'keep waxing',
      title: 'Keep waxing',
      costs: [
        {
          name: 'Wash and wax',
          amount: { minor: 310_000, currency: 'EUR' },
          first: 1,
          every: 1,
          price: 'estimate',
        },
      ],
      goodMonths: { value: 3, low: 3, high: 3, from: 'said' },
      irreversible: 0,
      does: expect.any(String),
      risks: expect.any(String),
      who: expect.any(String),
    });
    const { moneyRules } = await answered(plannedOfCollection(desk));
    expect(moneyRules[0]?.body).toMatchObject({ currency: 'EUR', rate: 0.03 });
    await done(undoLast(desk));
    expect(await screen.findByText('No way to go on is entered yet')).toBeDefined();
  });

  it('takes the good months that are proposed with where they come from', async () => {
    const user = userEvent.setup();
    const { desk, work } = await stair();
    show(desk, <OptionsScreen sculpture={work.sculpture} />);
    await screen.findByText('No round has been made yet.');
    await user.click(screen.getByRole('button', { name: 'Add a way' }));
    const sheet = within(screen.getByRole('dialog'));
    await user.click(sheet.getByRole('radio', { name: 'Keep waxing' }));
    await user.click(sheet.getByRole('button', { name: 'Take 12 (6 to 12), from a published range' }));
    await user.click(sheet.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText('12 (6 to 12), from a published range')).toBeDefined();
  });

  it('says what is wrong where, and keeps nothing', async () => {
    const user = userEvent.setup();
    const { desk, work } = await stair();
    show(desk, <OptionsScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Add a way' }));
    const sheet = within(screen.getByRole('dialog'));
    await user.click(sheet.getByRole('radio', { name: 'Strip and repatinate, then wax' }));
    await user.clear(sheet.getByLabelText('Called'));
    await user.click(sheet.getByRole('radio', { name: 'Some zones' }));
    await user.click(sheet.getByRole('button', { name: 'Add a cost' }));
    await user.type(sheet.getByLabelText('Amount'), '-5');
    await user.type(sheet.getByLabelText('About (optional)'), '13');
    await user.click(sheet.getByRole('button', { name: 'Keep' }));
    for (const said of [
      'Give it a name.',
      'Choose at least one zone.',
      'Say the currency first: its three letters, such as EUR.',
      'Months are a number from 0 to 12.',
    ])
      expect(sheet.getAllByText(said).length).toBeGreaterThan(0);
    await user.type(sheet.getByLabelText('Currency'), 'EUR');
    await user.click(sheet.getByRole('button', { name: 'Keep' }));
    expect(sheet.getByText('An amount cannot be below nothing.')).toBeDefined();
    expect((await answered(plannedOf(desk, work.sculpture))).option).toEqual([]);
  });

  it('changes a way, and counts by its costs what cannot be taken back', async () => {
    const user = userEvent.setup();
    const { desk, work } = await stair();
    await threeWays(desk, work);
    show(desk, <OptionsScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: /^Change B ·/ }));
    const sheet = within(screen.getByRole('dialog'));
    expect(sheet.getByText('By its costs: 10.')).toBeDefined();
    const [, local] = sheet.getAllByRole('combobox', { name: 'When' });
    if (local) await user.selectOptions(local, 'Every 4 years');
    expect(sheet.getByText('By its costs: 5.')).toBeDefined();
    const steps = sheet.getByLabelText('Steps that cannot be taken back (optional)');
    await user.clear(steps);
    await user.type(steps, '5');
    await user.click(sheet.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText('5 small')).toBeDefined();
  });
});

describe('Quotes', () => {
  it('count down, expire, and are renewed by a later one', async () => {
    const user = userEvent.setup();
    const { desk, work } = await stair();
    await threeWays(desk, work);
    const quote = {
      ...{ sculpture: work.sculpture, who: 'A foundry', what: 'Strip', state: 'quote' as const },
      amount: { minor: 4_600_000, currency: 'XXX' },
    };
    await done(addPlanned(desk, 'quote', { ...quote, date: '2024-10-07', validUntil: '2025-04-05' }));
    show(desk, <OptionsScreen sculpture={work.sculpture} />);
    expect(await screen.findByText('Expired on 5 April 2025, 558 days ago. Ask for a renewal.')).toBeDefined();
    await done(addPlanned(desk, 'quote', { ...quote, date: '2026-03-16', validUntil: '2026-11-11' }));
    expect(await screen.findByText('Ends on 11 November 2026, in 27 days.')).toBeDefined();
    await user.click(screen.getByRole('button', { name: /Expired on 5 April 2025/ }));
    const sheet = within(screen.getByRole('dialog'));
    await user.selectOptions(
      sheet.getByRole('combobox', { name: 'Renewed' }),
      'Renewed by A foundry, 16 March 2026, demo $ 46,000',
    );
    await user.click(sheet.getByRole('button', { name: 'Keep quote' }));
    expect(await screen.findByText('Renewed by a later one.')).toBeDefined();
    expect(screen.queryByText(/^Expired on/)).toBeNull();
  });

  it('that cannot be so are refused in a sentence', async () => {
    const user = userEvent.setup();
    const { desk, work } = await stair();
    await threeWays(desk, work);
    show(desk, <OptionsScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Add a quote' }));
    const sheet = within(screen.getByRole('dialog'));
    await user.type(sheet.getByLabelText('Who gave it'), 'A foundry');
    await user.type(sheet.getByLabelText('For what'), 'Strip');
    await user.type(sheet.getByLabelText('Amount'), '46.000,50');
    await user.type(sheet.getByLabelText('Valid until (optional)'), '2020-01-01');
    await user.click(sheet.getByRole('button', { name: 'Keep quote' }));
    expect(await sheet.findByText('The quote ends before its own date. Correct one of the two.')).toBeDefined();
  });
});
