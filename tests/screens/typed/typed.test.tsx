import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { type Desk, holdTyped, typedAt } from '../../../src/actions';
import { ConservatorPageScreen } from '../../../src/screens/papers';
import { w } from '../../../src/words';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';

const words = w.notKept;
const ask = (name: RegExp) => screen.getByRole('textbox', { name }) as HTMLTextAreaElement;
const title = { name: 'Conservator’s page' };

const page = async (desk: Desk, sculpture: string) => {
  const view = show(desk, <ConservatorPageScreen sculpture={sculpture} />);
  await screen.findByRole('heading', { level: 1, ...title });
  return view;
};
const workHere = async () => {
  const desk = await freshDesk();
  const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1, 1] });
  return { desk, sculpture, place: `conservator page new ${sculpture}`, user: userEvent.setup() };
};
const heldNote = (desk: Desk, place: string) => typedAt(desk, place).then((typed) => typed?.values);

test('what a conservator’s page was filled with is there again after it was left, and the line says from when', async () => {
  const { desk, sculpture, place, user } = await workHere();
  const first = await page(desk, sculpture);
  await user.type(ask(/Whose words/), 'Ilka Imagined');
  await user.type(ask(/think goes on/), 'Salt in the joint');
  await user.selectOptions(screen.getByRole('combobox'), 'Zone B, part B');
  expect(screen.queryByText(/Not yet kept/)).toBeNull();
  first.unmount();
  await page(desk, sculpture);
  const line = await screen.findByRole('status');
  expect(line.textContent).toContain('Not yet kept: what you typed on 15 October 2026');
  expect([ask(/Whose words/).value, ask(/think goes on/).value]).toEqual(['Ilka Imagined', 'Salt in the joint']);
  expect((screen.getByRole('combobox') as HTMLSelectElement).selectedOptions[0]?.text).toBe('Zone B, part B');
  expect(await axeFaults()).toEqual([]);
  await user.click(screen.getByRole('button', { name: 'Keep the answers' }));
  await waitFor(() => expect(screen.queryByText(/Not yet kept/)).toBeNull());
  await waitFor(async () => expect(await heldNote(desk, place)).toBeUndefined());
});

test('discarded by a touch it is gone from the device, and can be brought back as long as the form is open', async () => {
  const { desk, sculpture, place, user } = await workHere();
  const at = desk.now();
  await done(holdTyped(desk, place, { at, where: '/', title: '', values: { by: 'Ilka', 'answers.never': 7 } }));
  await page(desk, sculpture);
  await waitFor(() => expect(ask(/Whose words/).value).toBe('Ilka'));
  const line = screen.getByRole('status');
  await user.click(within(line).getByRole('button', { name: words.discard }));
  expect(ask(/Whose words/).value).toBe('');
  await waitFor(async () => expect(await heldNote(desk, place)).toBeUndefined());
  await user.click(within(line).getByRole('button', { name: words.bringBack }));
  expect(ask(/Whose words/).value).toBe('Ilka');
  await waitFor(async () => expect(await heldNote(desk, place)).toMatchObject({ by: 'Ilka' }));
});

test('a form that was only looked at leaves nothing, and one emptied again neither', async () => {
  const { desk, sculpture, place, user } = await workHere();
  await page(desk, sculpture);
  await user.click(ask(/Whose words/));
  expect(await desk.store.metas('typed ')).toEqual([]);
  await user.keyboard('I');
  await waitFor(async () => expect(await heldNote(desk, place)).toBeDefined());
  await user.keyboard('{Backspace}');
  await waitFor(async () => expect(await heldNote(desk, place)).toBeUndefined());
});

test('where the device has no room, or this tab only reads, that is said beside the form while it is typed', async () => {
  const { desk, sculpture, user } = await workHere();
  await page(desk, sculpture);
  desk.store.close();
  await user.type(ask(/Whose words/), 'I');
  expect(await screen.findByText(words.notHeld, { exact: false })).toBeDefined();
  expect(ask(/Whose words/).value).toBe('I');
});
