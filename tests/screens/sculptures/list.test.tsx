import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { addSculpture, openPersonCheck, setUpCollection } from '../../../src/actions';
import { SculptureListScreen } from '../../../src/screens/sculptures/SculptureListScreen';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const cards = () => screen.getAllByRole('listitem').map((card) => card.textContent ?? '');

const inATab = () => vi.stubGlobal('matchMedia', () => ({ matches: false }));
beforeEach(inATab);
afterEach(() => vi.unstubAllGlobals());

describe('The first screen with nothing begun', () => {
  it('asks an iPad to put it on the Home Screen before the first entry', async () => {
    vi.spyOn(navigator, 'userAgent', 'get').mockReturnValue('Mozilla/5.0 (iPad; CPU OS 17_0 like Mac OS X)');
    show(await freshDesk(), <SculptureListScreen />);
    expect(await screen.findByText('Put it on the Home Screen first')).toBeDefined();
    vi.restoreAllMocks();
  });

  it('offers three ways to begin and says that data lies unencrypted', async () => {
    show(await freshDesk(), <SculptureListScreen />);
    expect(await screen.findByRole('button', { name: 'Start your own' })).toBeDefined();
    expect(screen.getByRole('button', { name: 'Open a survey file or bag' })).toBeDefined();
    expect(screen.getByRole('button', { name: 'Look at an invented garden' })).toBeDefined();
    expect(screen.getByText('Data lies unencrypted on this device')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('says plainly that an insecure address will not open without a network', async () => {
    vi.stubGlobal('isSecureContext', false);
    show(await freshDesk(), <SculptureListScreen />);
    expect(await screen.findByText('This address is not secure')).toBeDefined();
    expect(screen.getByText(/will not open without a network/)).toBeDefined();
  });

  it('sets up a collection only with a name and a role, then asks for the first work', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { history } = show(desk, <SculptureListScreen />);
    await user.click(await screen.findByRole('button', { name: 'Start your own' }));
    await user.click(await screen.findByRole('button', { name: 'Begin' }));
    expect(screen.getByText('Give the collection a name; you can change it later.')).toBeDefined();
    expect(await desk.store.current(desk.collection)).toBeUndefined();
    await user.type(screen.getByRole('textbox', { name: /Name of the collection/ }), 'Quay walk');
    await user.type(screen.getByRole('textbox', { name: /Your role/ }), 'Curator');
    await user.click(screen.getByRole('button', { name: 'Begin' }));
    await waitFor(() => expect(history.at(-1)).toBe('/sculpture/new'));
    expect((await desk.store.current(desk.collection))?.lead.body).toMatchObject({ name: 'Quay walk' });
  });

  it('asks for the first sculpture once the collection has a name', async () => {
    const desk = await freshDesk();
    await done(setUpCollection(desk, { name: 'Quay walk', role: 'Curator' }));
    show(desk, <SculptureListScreen />);
    expect(await screen.findByRole('link', { name: 'Add a sculpture' })).toBeDefined();
    expect(screen.getByText('No sculpture yet')).toBeDefined();
  });
});

describe('The list of sculptures', () => {
  const garden = async () => {
    const desk = await freshDesk();
    const heron = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] });
    const boat = await aWork(desk, { title: 'Boat on the quay', number: '10', areas: [3] });
    await aWork(desk, { title: 'Never looked at', number: '11', areas: [1] });
    await aRound(desk, boat, '2026-05-11', ['nothing']);
    await aRound(desk, heron, '2026-05-10', [{ 'even-green-film': 0.5 }, { notLooked: 'wet' }], {
      finding: { severity: 'severe' },
    });
    return { desk, heron, boat };
  };

  it('puts the work in most need first and those never looked at last', async () => {
    const { desk } = await garden();
    const list = show(desk, <SculptureListScreen />);
    await screen.findAllByText(/Annual round/);
    await waitFor(() => expect(cards().join()).not.toMatch(/Being worked out/));
    list.unmount();
    show(desk, <SculptureListScreen />);
    await screen.findAllByText(/Annual round/);
    const [first, second, third] = cards();
    expect(first).toMatch(/Grey heron/);
    expect(second).toMatch(/Boat on the quay/);
    expect(third).toMatch(/Never looked at.*1 zone/);
    expect(
      within(screen.getByRole('link', { name: /Never looked at/ })).getAllByText('not yet surveyed'),
    ).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('keeps every work where it stands while figures come, and puts them in order at a touch', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const pier = await aWork(desk, { title: 'Sound pier', number: '1', areas: [2] });
    const gate = await aWork(desk, { title: 'Green gate', number: '2', areas: [2] });
    await aRound(desk, pier, '2026-05-11', ['nothing']);
    await aRound(desk, gate, '2026-05-10', [{ 'even-green-film': 0.5 }], { finding: { severity: 'severe' } });
    show(desk, <SculptureListScreen />);
    const order = await screen.findByRole('button', { name: 'Put in order' });
    await waitFor(() => expect(cards().join()).not.toMatch(/Being worked out/));
    expect(cards()[0], 'by number, as it stood while nothing was known').toMatch(/Sound pier/);
    await user.click(order);
    expect(cards()[0]).toMatch(/Green gate/);
  });

  it('never shows an index without its range and the share of the area seen', async () => {
    const { desk } = await garden();
    show(desk, <SculptureListScreen />);
    const heron = await screen.findByRole('link', { name: /Grey heron.*Annual round, 10 May 2026/ });
    expect(heron.textContent).toMatch(/Index between \d+ and \d+/);
    expect(heron.textContent).toMatch(/67 % of the area seen/);
    expect(within(heron).getByRole('img', { name: /condition index \d+ of 100, between \d+ and \d+/ })).toBeDefined();
  });

  it('puts a danger to people above every work, with what to do', async () => {
    const { desk, boat } = await garden();
    await done(openPersonCheck(desk, boat.sculpture, { what: 'Plaque hangs by one bolt' }));
    show(desk, <SculptureListScreen />);
    const danger = await screen.findByRole('note', { name: /Boat on the quay: keep people away/ });
    expect(within(danger).getByText('Plaque hangs by one bolt')).toBeDefined();
    const heron = screen.getByRole('link', { name: /Grey heron/ });
    expect(danger.compareDocumentPosition(heron) & Node.DOCUMENT_POSITION_FOLLOWING).toBeTruthy();
  });

  it('finds one among many by number or title', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    for (let i = 1; i <= 9; i++)
      await done(addSculpture(desk, { number: `B-${i}`, title: `Bather ${'long '.repeat(30)}${i}` }));
    show(desk, <SculptureListScreen />);
    await user.type(await screen.findByRole('textbox', { name: /Find by number or title/ }), 'b-7');
    await waitFor(() => expect(screen.getAllByRole('listitem')).toHaveLength(1));
    expect(screen.getByText('B-7')).toBeDefined();
  });
});
