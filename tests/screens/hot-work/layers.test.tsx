import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { addPlanned, plannedOf } from '../../../src/actions';
import { thingsWithin } from '../../../src/actions/theThing';
import { LayersScreen } from '../../../src/screens/hot-work';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';
import { hotPlace } from './hotPlace';

it('a layer laid on one zone is written for the next zone in one touch, without what was measured there', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  const place = await hotPlace(desk);
  show(desk, <LayersScreen campaign={place.campaign} />);
  await user.click(await screen.findByRole('button', { name: 'Another layer, zone A' }));
  const sheet = within(await screen.findByRole('dialog', { name: 'Zone A, layer 1' }));
  await user.click(sheet.getByRole('button', { name: 'Keep the layer' }));
  expect(sheet.getByText('Say what was laid on.')).toBeDefined();
  await user.type(sheet.getByRole('textbox', { name: /^Solution/ }), 'Ferric nitrate');
  await user.type(sheet.getByRole('textbox', { name: /^Strength/ }), '10 %');
  await user.click(sheet.getByRole('radio', { name: 'Brush' }));
  await user.type(sheet.getByRole('textbox', { name: /^Heat of the metal/ }), '182');
  await user.click(sheet.getByRole('button', { name: 'Keep the layer' }));
  await user.click(await screen.findByRole('button', { name: /^Zone B: Same as zone A/ }));
  await waitFor(async () => expect(await thingsWithin(desk, 'layer', place.sculpture)).toHaveLength(2));
  const layers = await thingsWithin(desk, 'layer', place.sculpture);
  const taken = layers.find(({ body }) => body.zone === place.zones[1])?.body;
  expect(taken).toMatchObject({ order: 1, solution: 'Ferric nitrate', strength: '10 %', tool: 'brush' });
  expect(taken?.sameAs).toBe(layers.find(({ body }) => body.zone === place.zones[0])?.thing);
  expect(taken?.surface).toBeUndefined();
  expect(await screen.findByText(/· as zone A/)).toBeDefined();
  expect(screen.queryByRole('button', { name: /^Zone B: Same as zone A/ })).toBeNull();
  expect(await axeFaults()).toEqual([]);
});

it('a heat nobody can have meant is refused with a sentence and nothing is kept', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  const place = await hotPlace(desk);
  show(desk, <LayersScreen campaign={place.campaign} />);
  await user.click(await screen.findByRole('button', { name: 'Another layer, zone A' }));
  const sheet = within(await screen.findByRole('dialog'));
  await user.type(sheet.getByRole('textbox', { name: /^Solution/ }), 'Ferric nitrate');
  await user.type(sheet.getByRole('textbox', { name: /^Heat of the metal/ }), '18200');
  await user.click(sheet.getByRole('button', { name: 'Keep the layer' }));
  expect(sheet.getByText('A number of degrees, -50 to 1200.')).toBeDefined();
  expect(await thingsWithin(desk, 'layer', place.sculpture)).toEqual([]);
});

it('a work without zones says so, and a campaign that is not here too', async () => {
  const desk = await freshDesk();
  const { sculpture } = await aWork(desk, { title: 'Bare', number: 'T-0', areas: [] });
  const body = { sculpture, title: 'Colour', opened: '2026-01-10', step: 'trigger' };
  const { thing } = await done(addPlanned(desk, 'campaign', body));
  const { unmount } = show(desk, <LayersScreen campaign={thing} />);
  expect(await screen.findByText('No zones yet')).toBeDefined();
  unmount();
  show(desk, <LayersScreen campaign="campaign/none" />);
  expect(await screen.findByRole('link', { name: /sculptures/i })).toBeDefined();
  expect(plannedOf(desk, sculpture)).toBeDefined();
});
