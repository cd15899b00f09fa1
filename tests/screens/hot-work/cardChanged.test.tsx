import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { thingsWithin } from '../../../src/actions/theThing';
import { HotDayScreen } from '../../../src/screens/hot-work';
import { freshDesk, show } from '../deskwork';
import { cardOf, hotPlace } from './hotPlace';

it('a card changed in its sheet keeps what was ticked before anything was lit', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  const place = await hotPlace(desk);
  const hotDay = await cardOf(desk, place, { checked: ['extinguisher'] });
  show(desk, <HotDayScreen hotDay={hotDay} />);
  await user.click(await screen.findByRole('button', { name: 'Change the card' }));
  const sheet = within(await screen.findByRole('dialog'));
  const watch = sheet.getByRole('textbox', { name: 'Fire watch after the work' });
  await user.clear(watch);
  await user.type(watch, '90');
  await user.click(sheet.getByRole('button', { name: 'Keep the card' }));
  await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
  const [day] = await thingsWithin(desk, 'hotDay', place.sculpture);
  expect(day?.body).toMatchObject({ watchMinutes: 90, checked: ['extinguisher'], campaign: place.campaign });
});
