import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import type { ReactNode } from 'react';
import { expect, test } from 'vitest';
import { addPlanned, type Desk, editPlanned, forgetTyped, holdTyped, recordTreatment } from '../../../src/actions';
import { nameOf } from '../../../src/engine/record';
import { paperSorts } from '../../../src/papers';
import { BidsScreen } from '../../../src/screens/campaign';
import { DecisionsScreen } from '../../../src/screens/decisions';
import { KeepingScreen } from '../../../src/screens/keeping';
import { LogbookScreen } from '../../../src/screens/logbook';
import { PaperScreen } from '../../../src/screens/papers';
import { w } from '../../../src/words';
import { axeFaults } from '../axe';
import { heronWithCampaign, kept, withSchedule } from '../campaign/opened';
import { aWork, done, freshDesk, show } from '../deskwork';

const words = w.notKept;
const user = userEvent.setup();
const box = (name: RegExp | string) => screen.getByRole('textbox', { name }) as HTMLInputElement;
const press = async (name: string) => user.click(await screen.findByRole('button', { name }));
const heron = async () => {
  const desk = await freshDesk();
  return { desk, work: await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] }) };
};
/** The screen is left, and shown again as after a reload. */
const again = async (view: { unmount(): void }, desk: Desk, shown: ReactNode) => {
  view.unmount();
  return show(desk, shown);
};
const saysBack = () =>
  screen.findByText(/^Not yet kept: what you typed on 15 October 2026 at 10:\d\d is here again\.$/);

test('a logbook entry closed by Escape is there again with what was chosen and typed, and gone once it is written down', async () => {
  const { desk, work } = await heron();
  const shown = <LogbookScreen sculpture={work.sculpture} />;
  const view = show(desk, shown);
  await press('Write an entry');
  await user.click(screen.getByRole('radio', { name: 'Cold wax' }));
  await user.type(box(/Note/), 'Two thin coats, wiped');
  await user.click(screen.getByRole('button', { name: w.parts.closeSheet }));
  await again(view, desk, shown);
  expect(screen.queryByText(/Not yet kept/)).toBeNull();
  await press('Write an entry');
  await saysBack();
  expect(box(/Note/).value).toBe('Two thin coats, wiped');
  expect((screen.getByRole('radio', { name: 'Cold wax' }) as HTMLInputElement).checked).toBe(true);
  expect(await axeFaults()).toEqual([]);
  await press('Write it down');
  await waitFor(async () => expect(await desk.store.metas('typed ')).toEqual([]));
  await press('Write an entry');
  expect(box(/Note/).value).toBe('');
});

test('of an entry that is changed only what was typed is held: what came from elsewhere meanwhile stands', async () => {
  const { desk, work } = await heron();
  const fields = { zones: [], type: 'wax', date: '2025-05-20', by: 'Steward' };
  const { treatment } = await done(recordTreatment(desk, work.sculpture, fields));
  const place = `logbook ${treatment} ${work.sculpture}`;
  await done(holdTyped(desk, place, { at: desk.now(), where: '/', title: '', values: { 'text.note': 'half a sen' } }));
  show(desk, <LogbookScreen sculpture={work.sculpture} />);
  await user.click(await screen.findByRole('button', { name: /Edit the entry/ }));
  await saysBack();
  expect([box(/Note/).value, box(new RegExp(`^${w.logbook.by}`)).value]).toEqual(['half a sen', 'Steward']);
});

test('a bid is there again line by line, with the people named in it, in its own campaign only', async () => {
  const { desk, campaign } = await withSchedule(await heronWithCampaign());
  const shown = <BidsScreen campaign={campaign} />;
  const view = show(desk, shown);
  await press('Enter a bid');
  await user.type(box('Who bids'), 'North foundry');
  await user.type(box(/^A part A ?\(/), '3 100.50');
  await press(w.people.add);
  await user.type(box(w.people.role), 'Foreman');
  await again(view, desk, shown);
  await press('Enter a bid');
  await saysBack();
  expect([box('Who bids').value, box(/^A part A ?\(/).value, box(w.people.role).value]).toEqual([
    'North foundry',
    '3 100.50',
    'Foreman',
  ]);
  expect((await desk.store.metas('typed ')).map(([place]) => place)).toEqual([`bid new ${campaign}`]);
  expect(await kept(desk, 'bid')).toEqual([]);
});

test('a decision keeps what was written for the new one apart from what was begun at an old one', async () => {
  const { desk, work } = await heron();
  const body = { sculpture: work.sculpture, date: '2024-11-20', title: 'Go on waxing', chosen: 'Wax', refused: [] };
  const rest = { evidence: [], consulted: [], tripwires: [], signed: [] };
  const { thing } = await done(addPlanned(desk, 'decision', { ...body, ...rest }));
  const shown = <DecisionsScreen sculpture={work.sculpture} />;
  const view = show(desk, shown);
  await press('Write a decision');
  await user.type(box('What it is about'), 'Strip the coating');
  await press('Add a tripwire');
  await again(view, desk, shown);
  await done(editPlanned(desk, 'decision', thing, { note: 'seen' }));
  await press('Write a decision');
  await saysBack();
  expect(box('What it is about').value).toBe('Strip the coating');
  expect(await screen.findByRole('group', { name: 'Tripwire 1' })).toBeDefined();
  await press(words.discard);
  expect(box('What it is about').value).toBe('');
  expect(screen.queryByRole('group', { name: 'Tripwire 1' })).toBeNull();
  expect(await desk.store.metas('typed ')).toEqual([]);
});

test('own words of a paper the browser was ended over come back and are then kept by themselves', async () => {
  const { desk } = await heron();
  const sort = paperSorts.find(({ id }) => id === 'letter-to-successor')!;
  const part = sort.id;
  const view = show(desk, <PaperScreen sort={sort.id} about={desk.collection} />);
  await user.type(await screen.findByRole('textbox', { name: /^To begin with/ }), 'Dear');
  const [held] = await desk.store.metas<{ values: object }>('typed ');
  expect(held?.[0]).toContain(nameOf.paperText(part, '', desk.collection).split('/')[0]);
  view.unmount();
  await waitFor(async () => expect(await kept(desk, 'paperText')).toMatchObject([{ text: 'Dear' }]));
  await waitFor(async () => expect(await desk.store.metas('typed ')).toEqual([]));
  // As a kill leaves it: held, and not kept.
  await done(holdTyped(desk, held![0], { at: desk.now(), where: '/', title: '', values: { typed: 'Dear friend' } }));
  show(desk, <PaperScreen sort={sort.id} about={desk.collection} />);
  await waitFor(() => expect(box(/^To begin with/).value).toBe('Dear friend'));
  await waitFor(async () => expect(await kept(desk, 'paperText')).toMatchObject([{ text: 'Dear friend' }]));
  await waitFor(async () => expect(await desk.store.metas('typed ')).toEqual([]));
});

test('“Keeping it safe” lists what was left, leads there, and what is discarded there can be brought back', async () => {
  const desk = await freshDesk();
  const values = { text: { title: 'Strip the coating of the whole work', day: '2026-10-15' } };
  await done(holdTyped(desk, 'decision new', { at: desk.now(), where: '/decisions', title: 'Decisions', values }));
  show(desk, <KeepingScreen />);
  const list = (await screen.findByRole('heading', { name: words.title })).closest('section') as HTMLElement;
  expect(within(list).getByText(/15 October 2026, 10:\d\d · “Strip the coating of the whole work”/)).toBeDefined();
  expect(
    within(list)
      .getByRole('link', { name: words.open('Decisions') })
      .getAttribute('href'),
  ).toBe('/decisions');
  expect(await axeFaults()).toEqual([]);
  await press(words.discardOf('Decisions'));
  await waitFor(async () => expect(await desk.store.metas('typed ')).toEqual([]));
  await press(words.bringBack);
  expect(await screen.findByRole('button', { name: words.discardOf('Decisions') })).toBeDefined();
  await done(forgetTyped(desk, 'decision new'));
  await waitFor(() => expect(screen.queryByRole('heading', { name: words.title })).toBeNull());
});
