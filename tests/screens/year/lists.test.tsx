import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addInsert, type Desk, openPersonCheck, setAccess, setPlanned } from '../../../src/actions';
import { nameOf } from '../../../src/engine/record';
import { BriefingScreen, CloseDownScreen, PackingScreen, SitePlanScreen } from '../../../src/screens/year';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const bodies = async (desk: Desk, kind: 'listTicks' | 'sitePlan') =>
  (await desk.store.ofKind(kind)).filter(({ gone }) => !gone).map(({ lead }) => lead.body);

/** Two works; one is planned for 20 October with a wax, the other for nothing. */
const planned = async () => {
  const desk = await freshDesk();
  const heron = await aWork(desk, { title: 'Heron', number: '1', areas: [2, 1] });
  const otter = await aWork(desk, { title: 'Otter', number: '2', areas: [1] });
  await done(
    setPlanned(desk, 'yearPlan', nameOf.yearPlan(desk.collection, 2026), {
      year: 2026,
      works: [
        { work: heron.sculpture, survey: 'full', waxes: 1, day: '2026-10-20' },
        { work: otter.sculpture, survey: 'none', waxes: 0 },
      ],
      contacts: 'Steward, 555\nConservator, 556',
    }),
  );
  await done(setAccess(desk, heron.sculpture, 'Key at the gate'));
  return { desk, heron, otter };
};

describe('The packing list', () => {
  it('holds what the next planned day asks for, and how the work is got at', async () => {
    const { desk } = await planned();
    show(desk, <PackingScreen />);
    expect(await screen.findByRole('checkbox', { name: 'Spray bottle with clean water' })).toBeDefined();
    expect(screen.getByRole('checkbox', { name: /Wax: the tin of last time/ })).toBeDefined();
    expect(screen.getByText('Key at the gate')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('drops what only waxing asks for when it is not waxed that day', async () => {
    const user = userEvent.setup();
    const { desk } = await planned();
    show(desk, <PackingScreen />);
    await user.click(await screen.findByRole('checkbox', { name: 'Waxing too' }));
    expect(screen.queryByRole('checkbox', { name: /Wax: the tin/ })).toBeNull();
  });

  it('keeps every tick of fingers faster than the store, and what somebody adds', async () => {
    const user = userEvent.setup();
    const { desk } = await planned();
    show(desk, <PackingScreen />);
    for (const name of ['Gloves', 'Measuring tape', 'Torch and a mirror on a stick'])
      (await screen.findByRole('checkbox', { name })).click();
    await user.type(screen.getByRole('textbox', { name: /Something else/ }), 'Thermos');
    await user.click(screen.getByRole('button', { name: 'Add to the list' }));
    await user.click(await screen.findByRole('checkbox', { name: 'Thermos' }));
    await waitFor(async () => {
      const [ticks] = await bodies(desk, 'listTicks');
      expect(ticks).toMatchObject({ list: 'packing', of: '2026-10-20', own: ['Thermos'] });
      expect(((ticks?.ticked ?? []) as { item: string }[]).map(({ item }) => item).sort()).toEqual([
        'gloves',
        'own Thermos',
        'tape',
        'torch',
      ]);
    });
  });

  it('says where to plan when nothing is planned', async () => {
    const desk = await freshDesk();
    show(desk, <PackingScreen />);
    expect(await screen.findByText('Nothing is planned for that day.')).toBeDefined();
  });
});

describe('The briefing', () => {
  it('says what is done where, what never, when to stop and whom to call', async () => {
    const { desk, heron } = await planned();
    await done(addInsert(desk, heron.sculpture, { material: 'glass', count: 2, removable: 'not known' }));
    await done(
      setPlanned(desk, 'methodSheet', nameOf.methodSheet(heron.sculpture), {
        ...{ sculpture: heron.sculpture, allowed: [], forbidden: ['pressure washer'] },
        alsoForbidden: ['the ladder against the wing'],
      }),
    );
    show(desk, <BriefingScreen />);
    const works = (await screen.findByRole('heading', { name: 'The works, in order' })).closest(
      'section',
    ) as HTMLElement;
    expect(within(works).getByText(/survey, before washing, wash, cold wax/)).toBeDefined();
    expect(within(works).getByText(/2 × glass/)).toBeDefined();
    expect(screen.getByText('Pressure washer.')).toBeDefined();
    expect(screen.getByText('1 Heron: the ladder against the wing')).toBeDefined();
    expect(screen.getByText(/A part moves, a crack shows/)).toBeDefined();
    expect(screen.getByText(/Steward, 555/)).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });
});

it('the briefing tells a helper which zones to leave alone, though the work is washed and waxed that day', async () => {
  const { desk, heron } = await planned();
  await aRound(desk, heron, '2026-05-12', ['nothing', { 'green-under-film': 0.03 }]);
  await done(openPersonCheck(desk, heron.sculpture, { what: 'The wing is loose' }));
  show(desk, <BriefingScreen />);
  expect(
    await screen.findByText('Zone B is not washed, not waxed, not touched: Green under wax or lacquer. Ask first.'),
  ).toBeDefined();
  expect(screen.getByText('Danger to people, not closed: The wing is loose. Ask before you go near.')).toBeDefined();
});

it('the briefing says first that hot work is done that day, and keeps people out of the clear zone, and where water is', async () => {
  const { desk, heron, otter } = await planned();
  await done(
    setPlanned(desk, 'hotDay', nameOf.hotDay('h1'), {
      ...{ sculpture: otter.sculpture, date: '2026-10-20', permit: '17', authorisedBy: { role: 'Fire officer' } },
      ...{ clearZone: 11, checked: [], watchMinutes: 60 },
    }),
  );
  await done(
    setPlanned(desk, 'accessSheet', nameOf.accessSheet(heron.sculpture), {
      ...{ sculpture: heron.sculpture, water: 'tap at the shed', closures: 'Mondays' },
    }),
  );
  show(desk, <BriefingScreen />);
  expect(await screen.findByText(/Hot work at 2 Otter that day: stay out of the 11 m/)).toBeDefined();
  expect(screen.getByText(/Closed: Mondays · Water: tap at the shed/)).toBeDefined();
});

describe('The winter close-down', () => {
  it('lists each work, is ticked, and keeps the ticks of the year', async () => {
    const user = userEvent.setup();
    const { desk } = await planned();
    show(desk, <CloseDownScreen />);
    const heron = (await screen.findByRole('heading', { name: '1 Heron' })).closest('section') as HTMLElement;
    await user.click(within(heron).getByRole('checkbox', { name: /Leaves out of folds/ }));
    await waitFor(async () =>
      expect(await bodies(desk, 'listTicks')).toMatchObject([
        { list: 'close-down', of: '2026', ticked: [{ on: '2026-10-15' }] },
      ]),
    );
    expect(await axeFaults()).toEqual([]);
  });
});

describe('The plan of the site', () => {
  it('takes a spot by Enter at the cross, goes on to the next work, and moves it by arrows', async () => {
    const user = userEvent.setup();
    const { desk, heron, otter } = await planned();
    show(desk, <SitePlanScreen />);
    (await screen.findByRole('button', { name: 'Place 1 Heron' })).focus();
    await user.keyboard('{ArrowRight}{Enter}');
    expect(await screen.findByRole('button', { name: 'Place 2 Otter' })).toBeDefined();
    await waitFor(async () => expect((await bodies(desk, 'sitePlan'))[0]?.spots).toHaveLength(1));
    screen.getByRole('button', { name: 'Place 2 Otter' }).focus();
    await user.keyboard('{Enter}');
    await waitFor(async () => expect((await bodies(desk, 'sitePlan'))[0]?.spots).toHaveLength(2));
    await user.click(await screen.findByRole('button', { name: /2 Otter.*right|right.*2 Otter/i }));
    await waitFor(async () => {
      const [site] = await bodies(desk, 'sitePlan');
      const spots = site?.spots as { work: string; x: number }[];
      expect(spots.find(({ work }) => work === otter.sculpture)?.x).toBeGreaterThan(0.5);
      expect(spots.map(({ work }) => work).sort()).toEqual([heron.sculpture, otter.sculpture].sort());
    });
    expect(await axeFaults()).toEqual([]);
  });

  it('tells the walk in metres once the width is known, and refuses a width that is none', async () => {
    const user = userEvent.setup();
    const { desk, heron, otter } = await planned();
    await done(
      setPlanned(desk, 'sitePlan', nameOf.sitePlan(desk.collection), {
        spots: [
          { work: heron.sculpture, x: 0.25, y: 0.5 },
          { work: otter.sculpture, x: 0.75, y: 0.5 },
        ],
      }),
    );
    show(desk, <SitePlanScreen />);
    await user.type(await screen.findByRole('textbox', { name: /The plan’s width/ }), '0');
    await user.click(screen.getByRole('button', { name: 'Keep the width' }));
    expect(screen.getByText('Give metres, over 0 and up to 100 000.')).toBeDefined();
    await user.clear(screen.getByRole('textbox', { name: /The plan’s width/ }));
    await user.type(screen.getByRole('textbox', { name: /The plan’s width/ }), '120');
    await user.click(screen.getByRole('button', { name: 'Keep the width' }));
    expect(await screen.findByText(/About 60 m/)).toBeDefined();
  });
});
