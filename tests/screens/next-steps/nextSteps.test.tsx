import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it, vi } from 'vitest';
import { openPersonCheck, setClass } from '../../../src/actions';
import { nameOf } from '../../../src/engine/record';
import { NextStepsScreen } from '../../../src/screens/next-steps';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const garden = async () => {
  const desk = await freshDesk();
  const heron = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] });
  const boat = await aWork(desk, { title: 'Boat on the quay', number: '10', areas: [3] });
  const heronRound = await aRound(desk, heron, '2026-05-10', [{ 'even-green-film': 0.5 }, 'nothing'], {
    finding: { severity: 'severe' },
  });
  await aRound(desk, boat, '2026-05-11', [{ 'even-green-film': 0.03 }], { finding: { severity: 'slight' } });
  return { desk, heron, boat, heronRound };
};

describe('Next steps', () => {
  it('says where zones will stand when nothing was looked at yet', async () => {
    const desk = await freshDesk();
    show(desk, <NextStepsScreen />);
    expect(await screen.findByText(/Zones stand here in order of need once you have looked/)).toBeDefined();
  });

  it('puts people above every list, and says to keep people away', async () => {
    const { desk, boat } = await garden();
    await done(openPersonCheck(desk, boat.sculpture, { what: 'Loose plaque over the path' }));
    show(desk, <NextStepsScreen />);
    expect(await screen.findByText('Loose plaque over the path')).toBeDefined();
    const headings = screen.getAllByRole('heading', { level: 2 }).map((h) => h.textContent);
    expect(headings.indexOf('People first')).toBe(0);
    expect(screen.getByRole('heading', { name: /Keep people away\. Tell/ })).toBeDefined();
  });

  it('closes a person check only with the name of the person who says it is safe', async () => {
    const user = userEvent.setup();
    const { desk, boat } = await garden();
    const { personCheck } = await done(openPersonCheck(desk, boat.sculpture, { what: 'Loose plaque' }));
    show(desk, <NextStepsScreen />);
    await user.click(await screen.findByRole('button', { name: 'Close this check' }));
    await user.click(screen.getByRole('button', { name: 'It is safe: close the check' }));
    expect(screen.getByText('Write the name of the person who says it is safe.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: /Name of the person who closes it/ }), 'E. Marsh');
    await user.click(screen.getByRole('button', { name: 'It is safe: close the check' }));
    await waitFor(() => expect(screen.queryByRole('heading', { name: 'People first' })).toBeNull());
    const closed = (await desk.store.current(personCheck))?.lead.body.closed;
    expect(closed).toMatchObject({ by: 'E. Marsh', on: '2026-10-15' });
  });

  it('ranks zones over all sculptures, and each rank says why', async () => {
    const { desk } = await garden();
    show(desk, <NextStepsScreen />);
    const first = await screen.findByRole('article', { name: /A · part A.*Grey heron/ });
    expect(within(first).getByText(/Before the next because/)).toBeDefined();
    expect(within(first).getByText(/Urgency class UC\d, proposed by rule\./)).toBeDefined();
    const articles = screen.getAllByRole('article').map((a) => a.getAttribute('aria-labelledby'));
    expect(articles[0]).toBe(first.getAttribute('aria-labelledby'));
  });

  it('says of each zone how firm its place is, in a word and a sentence, and what was redrawn once for the page', async () => {
    const { desk } = await garden();
    show(desk, <NextStepsScreen />);
    const first = await screen.findByRole('article', { name: /A · part A.*Grey heron/ });
    await within(first).findByText('Firm.');
    expect(within(first).getByText(/Stays the first in 100 of 100 redraws\./)).toBeDefined();
    expect(screen.getByText(/The order was drawn 1,000 times anew/)).toBeDefined();
    expect(screen.queryByText(/Not yet known: how firm/)).toBeNull();
  });

  it('counts no firm places where a zone stands alone', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2] });
    await aRound(desk, work, '2026-05-10', ['nothing']);
    show(desk, <NextStepsScreen />);
    expect(await screen.findByRole('heading', { name: 'How firm is this order?' })).toBeDefined();
    expect(await screen.findByText(/The order was drawn 1,000 times anew/)).toBeDefined();
    expect(screen.queryByText(/places asked for/)).toBeNull();
  });

  it('leads from a zone to the years of its work', async () => {
    const { desk, heron } = await garden();
    const { history } = show(desk, <NextStepsScreen />);
    const [first] = await screen.findAllByRole('link', { name: 'Over the years' });
    await userEvent.click(first!);
    expect(history.at(-1)).toBe(`/sculpture/${heron.sculpture.slice(heron.sculpture.indexOf('/') + 1)}/over-time`);
  });

  it('leaves off at a touch and goes on at another', async () => {
    const { desk } = await garden();
    const read = desk.store.standing;
    let letGo: () => void = () => undefined;
    const gate = new Promise<void>((go) => {
      letGo = go;
    });
    vi.spyOn(desk.store, 'standing').mockImplementation(async (work) => {
      await gate;
      return read(work);
    });
    show(desk, <NextStepsScreen />);
    expect(await screen.findByRole('progressbar', { name: 'Working out the figures.' })).toBeDefined();
    await userEvent.click(screen.getByRole('button', { name: 'Leave off' }));
    const goOn = await screen.findByRole('button', { name: 'Go on' });
    letGo();
    expect(screen.queryByRole('progressbar')).toBeNull();
    expect(screen.queryByRole('article')).toBeNull();
    await userEvent.click(goOn);
    expect(await screen.findByRole('article', { name: /part A.*Grey heron/ })).toBeDefined();
    expect(await screen.findByText(/The order was drawn 1,000 times anew/)).toBeDefined();
    expect(screen.queryByRole('progressbar')).toBeNull();
  });

  it('says plainly what is not yet known, once for the page', async () => {
    const { desk } = await garden();
    show(desk, <NextStepsScreen />);
    expect(await screen.findByRole('heading', { name: 'How firm is this order?' })).toBeDefined();
    expect(screen.getAllByText(/Not yet known: what it will be by the next round/)).toHaveLength(1);
  });

  it('shows one sculpture alone when it is chosen', async () => {
    const { desk, boat } = await garden();
    show(desk, <NextStepsScreen />);
    await userEvent.selectOptions(await screen.findByRole('combobox', { name: 'Show' }), boat.sculpture);
    expect(screen.queryByRole('article', { name: /Grey heron/ })).toBeNull();
  });

  it('says ask the conservator at a stop word, and gives no treatment', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [1] });
    await aRound(desk, work, '2026-05-10', [{ 'pale-powdery-mounds': 0.01 }], { finding: { count: 'one' } });
    show(desk, <NextStepsScreen />);
    const zone = await screen.findByRole('article', { name: /Grey heron/ });
    const stop = within(zone).getByRole('note', { name: /Ask the conservator/ });
    expect(within(stop).getByText(/do not wash or wax this zone yet/)).toBeDefined();
    expect(within(zone).queryByText(/Wash gently/)).toBeNull();
  });

  it('lets a named person overrule a class, refuses it without a name, and shows both', async () => {
    const user = userEvent.setup();
    const { desk, heron, heronRound } = await garden();
    show(desk, <NextStepsScreen />);
    await user.click(await screen.findByRole('button', { name: 'Set a class of zone A, Grey heron' }));
    const urgency = screen.getByRole('group', { name: 'Urgency' });
    await user.click(within(urgency).getByRole('radio', { name: /^UC1/ }));
    await user.click(screen.getByRole('button', { name: 'Set these classes' }));
    expect(screen.getByText('Write the name of the person who sets the class.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: /Your name/ }), 'E. Marsh');
    await user.click(screen.getByRole('button', { name: 'Set these classes' }));
    expect(await screen.findByText(/set by E\. Marsh; the rule proposes UC2/)).toBeDefined();
    const set = await desk.store.current(nameOf.classSet(heronRound, heron.zones[0] ?? ''));
    expect(set?.lead.body).toMatchObject({ urgency: 1, setBy: 'E. Marsh' });
  });

  it('does not let a card vanish while its figures are worked out anew', async () => {
    const { desk, heron, heronRound } = await garden();
    show(desk, <NextStepsScreen />);
    const card = await screen.findByRole('article', { name: /A · part A.*Grey heron/ });
    await screen.findByRole('article', { name: /Boat on the quay/ });
    await done(setClass(desk, heronRound, heron.zones[0] ?? '', { urgency: 3, setBy: 'E. Marsh' }));
    await within(card).findByText(/set by E\. Marsh; the rule proposes/);
    expect(card.isConnected).toBe(true);
  });

  it('never ranks a zone nobody looked at, and says so', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [1, 1] });
    await aRound(desk, work, '2026-05-10', ['nothing', { notLooked: 'reach' }]);
    show(desk, <NextStepsScreen />);
    await userEvent.click(await screen.findByRole('button', { name: 'Show 1 zone not judged this time' }));
    expect(screen.getByText('zone B, part B, Grey heron')).toBeDefined();
    expect(screen.queryByRole('article', { name: /part B/ })).toBeNull();
  });
});
