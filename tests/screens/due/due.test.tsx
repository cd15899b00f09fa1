import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { addPlanned, openPersonCheck, setPlanned, watchOfCampaign } from '../../../src/actions';
import { nameOf } from '../../../src/engine/record';
import { DueScreen } from '../../../src/screens/due';
import { AfterCampaign } from '../../../src/screens/parts/AfterCampaign';
import { useDesk, useQuestion } from '../../../src/screens/shell';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const garden = async () => {
  const desk = await freshDesk();
  const one = await aWork(desk, { title: 'Grey heron', number: '1', areas: [2, 1] });
  const two = await aWork(desk, { title: 'Otter', number: '2', areas: [1] });
  for (const work of [one, two])
    await aRound(
      desk,
      work,
      '2026-05-12',
      work.zones.map(() => 'nothing' as const),
    );
  const campaign = { sculpture: two.sculpture, title: 'Strip', opened: '2023-05-09', step: 'watch' };
  const ended = { ended: '2023-09-22', warrantyUntil: '2026-11-22', warrantyWho: 'Foundry team' };
  const { thing } = await done(addPlanned(desk, 'campaign', { ...campaign, ...ended }));
  const task = { sculpture: one.sculpture, what: 'Clear the weep hole', from: '2026-10-01' };
  await done(addPlanned(desk, 'task', task));
  return { desk, one, two, campaign: thing };
};
const inSection = (name: string) =>
  within(screen.getByRole('heading', { name, level: 2 }).closest('section') as HTMLElement);

describe('What is due', () => {
  it('says what will appear there while nothing is due', async () => {
    const desk = await freshDesk();
    show(desk, <DueScreen />);
    expect(await screen.findByText('Nothing is due')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('lists what is past its day first, says why, and leads to where it is done', async () => {
    const { desk, two } = await garden();
    show(desk, <DueScreen />);
    const over = within((await screen.findByRole('heading', { name: 'Past its day' })).closest('section')!);
    await waitFor(() => expect(over.getAllByRole('listitem')).toHaveLength(2));
    const link = over.getByRole('link', { name: /Look before the warranty ends.*2 Otter/ });
    expect(link.getAttribute('href')).toContain(`${two.sculpture.slice('sculpture/'.length)}/round/start`);
    expect(link.textContent).toContain('The warranty of Foundry team ends on 22 November 2026');
    expect(screen.getByText(/A reminder, not a safety device/)).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('puts a danger to people above all, and takes no answer to it here', async () => {
    const { desk, one } = await garden();
    await done(openPersonCheck(desk, one.sculpture, { what: 'A loose beak', opened: '2026-10-15' }));
    show(desk, <DueScreen />);
    const rows = await screen.findAllByText('Danger to people');
    expect(rows).toHaveLength(1);
    const first = inSection('Past its day').getAllByRole('listitem')[0]!;
    expect(first.textContent).toContain('A loose beak');
    expect(within(first).queryByRole('button')).toBeNull();
  });

  it('puts off until a day to come, is done with what was answered, and asks again by one touch', async () => {
    const user = userEvent.setup();
    const { desk } = await garden();
    show(desk, <DueScreen />);
    const answer = { name: 'Answer: Look before the warranty ends, 2 Otter' };
    await user.click(await screen.findByRole('button', answer));
    await user.click(screen.getByRole('radio', { name: /Later/ }));
    await user.click(screen.getByRole('button', { name: 'Keep the answer' }));
    expect(screen.getByText('Say a day to come.')).toBeDefined();
    await user.type(screen.getByLabelText('Until'), '2026-11-01');
    await user.click(screen.getByRole('button', { name: 'Keep the answer' }));
    await waitFor(() => expect(inSection('Within a month').getByText(/Put off to 1 November 2026/)).toBeDefined());
    await user.click(screen.getByRole('button', answer));
    await user.click(screen.getByRole('radio', { name: /Not needed/ }));
    await user.click(screen.getByRole('button', { name: 'Keep the answer' }));
    await user.click(await screen.findByRole('button', { name: 'Show 1 that was answered' }));
    await user.click(screen.getByRole('button', { name: 'Ask again: Look before the warranty ends · 2 Otter' }));
    expect(await screen.findByRole('button', answer)).toBeDefined();
  });

  it('adds a task that comes again, and says it is done', async () => {
    const user = userEvent.setup();
    const { desk } = await garden();
    show(desk, <DueScreen />);
    await user.click(await screen.findByRole('button', { name: 'Add a task' }));
    await user.click(screen.getByRole('button', { name: 'Keep the task' }));
    expect(screen.getByText('Say what is to be done.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: 'What is to be done' }), 'Drain the basin');
    await user.type(screen.getByRole('textbox', { name: /Again after/ }), '12');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep the task' }));
    await user.click(await screen.findByRole('button', { name: 'Answer: Drain the basin' }));
    await user.click(screen.getByRole('button', { name: 'It is done' }));
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
    await user.click(await screen.findByRole('button', { name: /more, later$/ }));
    const row = () => screen.getByText('Drain the basin').closest('li')?.textContent;
    await waitFor(() => expect(row()).toContain('15 October 2027'));
  });

  it('by walk goes work by work in the order of the site plan, and names the works without a due thing nowhere', async () => {
    const user = userEvent.setup();
    const { desk, one, two } = await garden();
    const spots = [
      { work: two.sculpture, x: 0.1, y: 0.1 },
      { work: one.sculpture, x: 0.9, y: 0.9 },
    ];
    await done(setPlanned(desk, 'sitePlan', nameOf.sitePlan(desk.collection), { spots, start: { x: 0, y: 0 } }));
    show(desk, <DueScreen />);
    await user.click(await screen.findByRole('radio', { name: 'By walk' }));
    expect(screen.getByText('In the order of your site plan.')).toBeDefined();
    await waitFor(() =>
      expect(
        screen
          .getAllByRole('heading', { level: 2 })
          .map(({ textContent }) => textContent)
          .filter((text) => /Otter|heron/.test(text ?? '')),
      ).toEqual(['2 Otter', '1 Grey heron']),
    );
  });

  it('gives a calendar file that a reader of calendars understands, with every due thing once', async () => {
    const user = userEvent.setup();
    const { desk } = await garden();
    show(desk, <DueScreen />);
    await screen.findByText('Look before the warranty ends');
    await user.click(await screen.findByRole('button', { name: 'For your calendar' }));
    await user.click(screen.getByRole('radio', { name: 'A week before' }));
    await user.click(screen.getByRole('button', { name: 'Show it as text' }));
    const text = ((await screen.findByRole('textbox', { name: 'Text of the file' })) as HTMLTextAreaElement).value;
    // A text field gives line breaks its own way.
    const calendar = new ICAL.Component(ICAL.parse(text.replace(/\r?\n/g, '\r\n')));
    const events = calendar.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
    const warranty = events.find(({ summary }) => summary.startsWith('Look before the warranty ends'));
    expect(warranty?.startDate.toString()).toBe('2026-10-15');
    expect(warranty?.description).toContain('Past its day: 23 September 2026.');
    expect(String(warranty?.component.getFirstSubcomponent('valarm')?.getFirstPropertyValue('trigger'))).toBe('-P7D');
  });

  it('says whom to call back while the warranty runs', async () => {
    const { desk } = await garden();
    show(desk, <DueScreen />);
    await screen.findByRole('heading', { name: 'Whom to call back' });
    const recall = inSection('Whom to call back');
    expect(recall.getByRole('heading', { name: 'Foundry team' })).toBeDefined();
    expect(recall.getByText('No green seen again so far.')).toBeDefined();
  });
});

function Watch({ campaign }: { readonly campaign: string }) {
  const watch = useQuestion(watchOfCampaign(useDesk(), campaign));
  return watch ? <AfterCampaign watch={watch} /> : null;
}

describe('After a campaign', () => {
  it('stands when it was looked at, when it will be, what held, and that nothing was promised', async () => {
    const { desk, campaign } = await garden();
    show(desk, <Watch campaign={campaign} />);
    const table = within(await screen.findByRole('table', { name: 'Looks after it' }));
    const rows = table.getAllByRole('row').map((row) => row.textContent);
    expect(rows).toContain('1 month22 October 2023nobody looked');
    expect(rows).toContain('36 months22 September 2026seen on 12 May 2026');
    expect(rows.at(-1)).toMatch(/^48 months/);
    expect(screen.getByText('Nothing was promised in writing.')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });
});
