import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { type Desk, undoLast } from '../../../src/actions';
import { ConservatorPageScreen } from '../../../src/screens/papers';
import { axeFaults } from '../axe';
import { aWork, freshDesk, show } from '../deskwork';

const kept = async (desk: Desk, kind: 'interpretation' | 'finding') =>
  (await desk.store.ofKind(kind)).filter(({ gone }) => !gone).map(({ lead }) => lead.body);

const page = async () => {
  const desk = await freshDesk();
  const { sculpture, zones } = await aWork(desk, { title: 'Heron', number: '1', areas: [1, 1] });
  show(desk, <ConservatorPageScreen sculpture={sculpture} />);
  await screen.findByRole('heading', { level: 1, name: 'Conservator’s page' });
  return { desk, sculpture, zones, user: userEvent.setup() };
};
const ask = (name: RegExp) => screen.getByRole('textbox', { name });

it('keeps each answer as a thought of whoever said it, with day, zone and where it came from, and makes no finding', async () => {
  const { desk, zones, user } = await page();
  await user.type(ask(/Whose words/), 'Ilka Imagined');
  await user.type(ask(/think goes on/), 'Salt in the joint, fairly sure');
  await user.selectOptions(screen.getByRole('combobox'), 'Zone B, part B');
  await user.type(ask(/never be done/), 'No steam');
  expect(await axeFaults()).toEqual([]);
  await user.click(screen.getByRole('button', { name: 'Keep the answers' }));
  const from = { by: 'Ilka Imagined', date: '2026-10-15', source: 'conservator’s page' };
  await waitFor(async () => expect((await kept(desk, 'interpretation')).length).toBe(2));
  expect(await kept(desk, 'interpretation')).toEqual(
    expect.arrayContaining([
      expect.objectContaining({
        ...from,
        statement: 'Thought to go on: Salt in the joint, fairly sure',
        about: zones[1],
      }),
      expect.objectContaining({ ...from, statement: 'Never to be done: No steam' }),
    ]),
  );
  expect(await kept(desk, 'finding')).toEqual([]);
  await waitFor(() => expect((ask(/never be done/) as HTMLTextAreaElement).value).toBe(''));
});

it('is taken back as one: a page typed in under the wrong work leaves nothing behind', async () => {
  const { desk, user } = await page();
  await user.type(ask(/Whose words/), 'Ilka Imagined');
  await user.type(ask(/think goes on/), 'Salt');
  await user.type(ask(/never be done/), 'No steam');
  await user.click(screen.getByRole('button', { name: 'Keep the answers' }));
  await waitFor(async () => expect((await kept(desk, 'interpretation')).length).toBe(2));
  await undoLast(desk);
  expect(await kept(desk, 'interpretation')).toEqual([]);
});

it('keeps nothing of nobody, and nothing where nothing was written', async () => {
  const { desk, user } = await page();
  await user.click(screen.getByRole('button', { name: 'Keep the answers' }));
  expect(screen.getByText('Say whose words these are.')).toBeDefined();
  expect(screen.getByText('Write at least one answer.')).toBeDefined();
  await user.type(ask(/Whose words/), 'Ilka Imagined');
  await user.type(ask(/never be done/), '   ');
  await user.click(screen.getByRole('button', { name: 'Keep the answers' }));
  expect(await kept(desk, 'interpretation')).toEqual([]);
});
