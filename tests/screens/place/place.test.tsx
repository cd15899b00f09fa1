import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { setClimate, undoLast } from '../../../src/actions';
import { corrosionRates } from '../../../src/engine/site';
import { PlaceScreen } from '../../../src/screens/place';
import { speak } from '../../../src/words/tongue';
import { axeFaults } from '../axe';
import { done, freshDesk, show } from '../deskwork';

const enter = async (user: ReturnType<typeof userEvent.setup>, figures: Readonly<Record<string, string>>) => {
  await user.click(await screen.findByRole('button', { name: 'Enter the four figures' }));
  for (const [name, text] of Object.entries(figures)) {
    await user.clear(screen.getByLabelText(name));
    await user.type(screen.getByLabelText(name), text);
  }
  await user.click(screen.getByRole('button', { name: 'Keep' }));
};

it('says first that it speaks of clean coupons, and what is missing', async () => {
  show(await freshDesk(), <PlaceScreen />);
  expect(screen.getByText(/It does not speak of a waxed work of art/)).toBeDefined();
  expect(await screen.findByText(/No figures yet/)).toBeDefined();
});

it('takes four figures, a frost among them, and gives rate, range and category of three metals', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  show(desk, <PlaceScreen />);
  await enter(user, {
    'Air temperature': '-2,5',
    'Relative humidity': '79',
    'Deposition of sulfur dioxide': '4',
    'Deposition of chloride (salt)': '30',
    'Where the figures come from (optional)': 'quay station, invented',
  });
  const [copper] = corrosionRates({ temperature: -2.5, humidity: 79, so2: 4, chloride: 30 });
  expect(await screen.findByText(`Copper: category ${copper?.category}, low.`)).toBeDefined();
  const rows = within(screen.getAllByRole('table')[0] as HTMLElement).getAllByRole('row');
  expect(rows).toHaveLength(4);
  expect(rows[1]?.textContent).toContain(copper?.rate.value.toFixed(3));
  expect(screen.getByText('quay station, invented')).toBeDefined();
  expect(await axeFaults()).toEqual([]);
  await done(undoLast(desk));
  expect(await screen.findByText(/No figures yet/)).toBeDefined();
});

it('refuses what is no number, and what no air can be, in a sentence', async () => {
  const user = userEvent.setup();
  show(await freshDesk(), <PlaceScreen />);
  const rest = { 'Relative humidity': '79', 'Deposition of sulfur dioxide': '4' };
  await enter(user, { ...rest, 'Air temperature': 'mild', 'Deposition of chloride (salt)': '30' });
  expect(screen.getByText(/Air temperature is no number/)).toBeDefined();
  await user.clear(screen.getByLabelText('Air temperature'));
  await user.type(screen.getByLabelText('Air temperature'), '95');
  await user.click(screen.getByRole('button', { name: 'Keep' }));
  expect(await screen.findByText(/A yearly mean temperature lies between -60 and 60/)).toBeDefined();
});

it('flags what lies outside the ranges, and says both categories where the columns differ', async () => {
  const desk = await freshDesk();
  await done(setClimate(desk, { temperature: 33, humidity: 97, so2: 4, chloride: 30 }));
  show(desk, <PlaceScreen />);
  expect(await screen.findByText(/The temperature, 33, lies outside the range/)).toBeDefined();
  expect(screen.getByText(/The relative humidity, 97, lies outside the range/)).toBeDefined();
});

it('shows the figures in the unit and with the mark of the device', async () => {
  speak({ language: 'en', locale: 'en-US', units: 'us' });
  const desk = await freshDesk();
  await done(setClimate(desk, { temperature: 10, humidity: 79.5, so2: 4, chloride: 30, from: 'invented' }));
  show(desk, <PlaceScreen />);
  expect(await screen.findByText('50 °F')).toBeDefined();
  expect(screen.getByText('79.5 %')).toBeDefined();
  speak({ language: 'en', locale: 'en-GB', units: 'metric' });
});
