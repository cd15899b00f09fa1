import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { thingsWithin } from '../../../src/actions/theThing';
import { AccessScreen, InsertsScreen } from '../../../src/screens/hot-work';
import { axeFaults } from '../axe';
import { aWork, freshDesk, show } from '../deskwork';
import { hotPlace } from './hotPlace';

const lens = 'Cast glass, lens L2 (zone B)';

it('a limit is refused without the expert who set it, and stands with name and day once it has them', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  const place = await hotPlace(desk);
  show(desk, <InsertsScreen sculpture={place.sculpture} />);
  await user.click(await screen.findByRole('button', { name: `Change: ${lens}` }));
  expect(screen.getByText('Zone B, part B: L5 from the left figure')).toBeDefined();
  const sheet = within(await screen.findByRole('dialog'));
  await user.type(sheet.getByRole('textbox', { name: /^Never hotter than/ }), '60');
  await user.click(sheet.getByRole('button', { name: 'Keep it' }));
  expect((await sheet.findByRole('alert')).textContent).toContain('A limit needs the name or role of the expert');
  await user.type(sheet.getByRole('textbox', { name: /^Limit set by: role/ }), 'Glass conservator');
  await user.type(sheet.getByLabelText(/^On/), '2026-05-01');
  await user.click(sheet.getByRole('radio', { name: 'A shield' }));
  await user.click(sheet.getByRole('button', { name: 'Keep it' }));
  expect(await screen.findByText('60 °C, set by Glass conservator, 1 May 2026')).toBeDefined();
  const [care] = await thingsWithin(desk, 'insertCare', place.sculpture);
  expect(care?.body).toMatchObject({ most: 60, method: 'shield', limitBy: { role: 'Glass conservator' } });
  expect(await axeFaults()).toEqual([]);
});

it('of glass nobody knows no number is given, and of whole flat glass the limit of practice leads', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  const place = await hotPlace(desk);
  show(desk, <InsertsScreen sculpture={place.sculpture} />);
  await user.click(await screen.findByRole('button', { name: 'Show the sums' }));
  expect(screen.getByText('No number')).toBeDefined();
  expect(screen.getByText(/nobody can say from here what heat it bears/)).toBeDefined();
  await user.selectOptions(screen.getByRole('combobox', { name: 'Glass' }), 'Flat, annealed, whole');
  expect(screen.getByText('40 K')).toBeDefined();
  expect(screen.getByText(/theory gives 51 to 57 K; a weathered edge only about 25 K/)).toBeDefined();
  expect(document.body.textContent).not.toMatch(/safe distance/i);
  expect(await axeFaults()).toEqual([]);
});

it('sums on heat are two ends and never one number, and a figure that is none is asked for', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  const place = await hotPlace(desk);
  show(desk, <InsertsScreen sculpture={place.sculpture} />);
  await user.click(await screen.findByRole('button', { name: 'Show the sums' }));
  const said = () => screen.getByText(/To heat it through takes/).textContent;
  // 8800 * 380 * 0.006 * 0.05 * 180 J by 40 % and by 10 % of 20 kW
  expect(said()).toBe('To heat it through takes: 23 to 90 s');
  await user.clear(screen.getByRole('textbox', { name: 'Thickness' }));
  expect(screen.getByText('Give the thickness of the metal as a number above nought.')).toBeDefined();
});

it('a work without inserts says where they are added', async () => {
  const desk = await freshDesk();
  const { sculpture } = await aWork(desk, { title: 'Plain', number: 'T-9', areas: [1] });
  show(desk, <InsertsScreen sculpture={sculpture} />);
  expect(await screen.findByText('No inserts yet')).toBeDefined();
});

it('the access sheet keeps what was said and works out reach, ladder and days with time lost to weather', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  const { sculpture } = await aWork(desk, { title: 'Stair', number: 'T-2', areas: [1, 2] });
  show(desk, <AccessScreen sculpture={sculpture} />);
  await user.click(await screen.findByRole('button', { name: 'Write the sheet' }));
  const sheet = within(await screen.findByRole('dialog'));
  await user.type(sheet.getByRole('textbox', { name: /^Height of the work/ }), '4,9');
  await user.type(sheet.getByRole('textbox', { name: /^Height of what it stands on/ }), '1.1');
  await user.type(sheet.getByRole('textbox', { name: /^Days asked for/ }), '5');
  await user.type(sheet.getByRole('textbox', { name: /^A day costs/ }), '380');
  await user.type(await sheet.findByRole('textbox', { name: /^Currency/ }), 'EUR');
  await user.type(sheet.getByRole('textbox', { name: /^Competent person: role/ }), 'Lift owner');
  await user.click(sheet.getByRole('button', { name: 'Keep the sheet' }));
  await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
  expect(await screen.findByText('4.4 m')).toBeDefined();
  expect(screen.getByText('6.2 m of it in use, foot 1.55 m out')).toBeDefined();
  expect(screen.getByText(/75.52°/)).toBeDefined();
  expect(screen.getByText('7 days')).toBeDefined();
  expect(screen.getByText('EUR 2,660')).toBeDefined();
  const [kept] = await thingsWithin(desk, 'accessSheet', sculpture);
  expect(kept?.body).toMatchObject({ height: 4.9, plinth: 1.1, dayCost: { minor: 38_000, currency: 'EUR' } });
  expect(await axeFaults()).toEqual([]);
});

it('a height that is no number is refused with a sentence', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  const { sculpture } = await aWork(desk, { title: 'Stair', number: 'T-2', areas: [] });
  show(desk, <AccessScreen sculpture={sculpture} />);
  await user.click(await screen.findByRole('button', { name: 'Write the sheet' }));
  const sheet = within(await screen.findByRole('dialog'));
  await user.type(sheet.getByRole('textbox', { name: /^Height of the work/ }), 'tall');
  await user.click(sheet.getByRole('button', { name: 'Keep the sheet' }));
  expect(sheet.getByText('A number, or leave it empty.')).toBeDefined();
  expect(await thingsWithin(desk, 'accessSheet', sculpture)).toEqual([]);
});
