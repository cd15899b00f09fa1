import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, it, vi } from 'vitest';
import { addPlanned, editPlanned } from '../../../src/actions';
import { thingsWithin } from '../../../src/actions/theThing';
import { HotDayScreen, HotDaysScreen } from '../../../src/screens/hot-work';
import { jpeg, tiff } from '../../device/photo/camera';
import { axeFaults } from '../axe';
import { done, freshDesk, show } from '../deskwork';
import { cameraFile, withoutBytes } from '../photos/cameraFile';
import { cardOf, hotPlace, limitOf } from './hotPlace';

afterEach(() => vi.restoreAllMocks());

const lens = 'Cast glass, lens L2 (zone B)';

it('a new card begins on the strict side of the rules, with every insert on it, and refuses figures that are none', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  const place = await hotPlace(desk);
  show(desk, <HotDaysScreen campaign={place.campaign} />);
  expect(await screen.findByText('No day of hot work yet')).toBeDefined();
  await user.click(screen.getByRole('button', { name: 'New day' }));
  const sheet = within(await screen.findByRole('dialog', { name: 'New day' }));
  const watch = sheet.getByRole<HTMLInputElement>('textbox', { name: 'Fire watch after the work' });
  expect(watch.value).toBe('60');
  expect(sheet.getByRole<HTMLInputElement>('textbox', { name: 'Clear zone' }).value).toBe('11');
  expect(sheet.getByRole<HTMLInputElement>('checkbox', { name: lens }).checked).toBe(true);
  await user.clear(watch);
  await user.type(watch, 'an hour');
  await user.click(sheet.getByRole('button', { name: 'Keep the card' }));
  expect(sheet.getByText('Give a number, not below nought.')).toBeDefined();
  await user.clear(watch);
  await user.type(watch, '90');
  await user.click(sheet.getByRole('button', { name: 'Keep the card' }));
  expect(await screen.findByRole('link', { name: /15 October 2026/ })).toBeDefined();
  const [day] = await thingsWithin(desk, 'hotDay', place.sculpture);
  expect(day?.body).toMatchObject({ watchMinutes: 90, clearZone: 11, inserts: [place.l2, place.l5] });
  expect(await axeFaults()).toEqual([]);
});

it('what is open before anything is lit stands on top, by the name of the insert', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  const place = await hotPlace(desk);
  const hotDay = await cardOf(desk, place, { clearZone: 6 });
  show(desk, <HotDayScreen hotDay={hotDay} />);
  expect(await screen.findAllByText(/lens L2 .zone B. has no limit set by a named expert/)).toHaveLength(2);
  expect(screen.getByText('Zone B, part B: L2 from the left figure')).toBeDefined();
  expect(screen.getByText(/The clear zone is 6 m; published rules ask for 10.7 m/)).toBeDefined();
  expect(screen.getByText(/lens L5 \(zone B\) is on the work and not on this day’s list/)).toBeDefined();
  const before = screen.getByText(/checks are still open/).textContent;
  await user.click(screen.getByRole('checkbox', { name: /^Extinguisher and water/ }));
  await waitFor(() => expect(screen.getByText(/checks are still open/).textContent).not.toBe(before));
  expect(await axeFaults()).toEqual([]);
});

it('readings are written by a few touches, and near the limit the heat is called away', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  const place = await hotPlace(desk);
  await limitOf(desk, place, place.l2);
  const hotDay = await cardOf(desk, place);
  const reading = { sculpture: place.sculpture, insert: place.l2, hotDay, spot: 'rim', by: 'Helper' };
  await done(addPlanned(desk, 'insertReading', { ...reading, time: '09:55', celsius: 40 }));
  show(desk, <HotDayScreen hotDay={hotDay} />);
  await user.click(await screen.findByRole('button', { name: `+10 degrees, ${lens}` }));
  await user.click(screen.getByRole('button', { name: `−1 degrees, ${lens}` }));
  await user.click(screen.getByRole('button', { name: `Write down 49\u00a0°C: ${lens}` }));
  await waitFor(async () => expect(await thingsWithin(desk, 'insertReading', place.sculpture)).toHaveLength(2));
  expect(screen.queryByText(`Heat away from ${lens}`)).toBeNull();
  await user.click(screen.getByRole('button', { name: `+1 degrees, ${lens}` }));
  await user.click(screen.getByRole('button', { name: `Write down 50\u00a0°C: ${lens}` }));
  expect((await screen.findByRole('alert')).textContent).toContain(`Heat away from ${lens}`);
  const kept = await thingsWithin(desk, 'insertReading', place.sculpture);
  expect(kept.map(({ body }) => [body.spot, body.celsius, body.by])).toEqual([
    ['rim', 40, 'Helper'],
    ['rim', 49, 'Helper'],
    ['rim', 50, 'Helper'],
  ]);
});

it('a reading of a frosty morning and one of another spot can be typed', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  const place = await hotPlace(desk);
  const hotDay = await cardOf(desk, place);
  show(desk, <HotDayScreen hotDay={hotDay} />);
  await user.click(await screen.findByRole('button', { name: 'Type a reading' }));
  await user.type(screen.getByRole('textbox', { name: /^Where on the insert/ }), 'far side');
  await user.click(screen.getByRole('button', { name: 'Another spot' }));
  await user.type(screen.getByRole('textbox', { name: 'Time' }), '7:05');
  await user.type(screen.getByRole('textbox', { name: 'Degrees' }), '-3,5');
  await user.click(screen.getByRole('button', { name: 'Write it down' }));
  await waitFor(async () => expect(await thingsWithin(desk, 'insertReading', place.sculpture)).toHaveLength(1));
  const [kept] = await thingsWithin(desk, 'insertReading', place.sculpture);
  expect(kept?.body).toMatchObject({ spot: 'far side', time: '07:05', celsius: -3.5 });
});

it('the day is refused its close until the flame is out, the watch is kept and the insert is photographed', async () => {
  const user = userEvent.setup();
  const desk = withoutBytes(await freshDesk());
  const place = await hotPlace(desk);
  await limitOf(desk, place, place.l2);
  const hotDay = await cardOf(desk, place);
  show(desk, <HotDayScreen hotDay={hotDay} />);
  const close = async () => user.click(screen.getByRole('button', { name: 'Close the day' }));
  await screen.findByRole('heading', { name: 'Close the day' });
  await close();
  expect((await screen.findByRole('alert')).textContent).toContain('The work is not said to be over');
  await user.click(screen.getByRole('button', { name: 'The flame is out: begin the watch' }));
  expect((await screen.findByRole('timer')).textContent).toBe('60 minutes still to watch');
  await close();
  await waitFor(() => expect(screen.getByRole('alert').textContent).toContain('has not given their word'));
  expect(screen.getByRole('alert').textContent).toContain(`${lens} has no photo after the heat.`);
  const watchKept = { at: '2026-10-15T11:30:00.000+00:00', by: 'Helper', counted: 60 };
  await done(editPlanned(desk, 'hotDay', hotDay, { watchKept }));
  await user.upload(
    screen.getByLabelText(`Choose a photo: ${lens}, after`, { selector: 'input' }),
    cameraFile(jpeg({ exif: tiff(true, { taken: '2026:10:15 11:40:00' }), xmp: 'x' }), 'x.jpg'),
  );
  await user.click(await screen.findByRole('radio', { name: 'Unchanged' }));
  await screen.findByText('Nothing stands against it.');
  expect(await axeFaults()).toEqual([]);
  await close();
  expect(await screen.findByText(/Closed at .* by Helper\./)).toBeDefined();
  expect(screen.queryByRole('button', { name: /Write down/ })).toBeNull();
});

it('a tablet that cannot vouch for its count asks for the watcher’s own watch', async () => {
  const user = userEvent.setup();
  const desk = await freshDesk();
  const place = await hotPlace(desk);
  const workEnded = '2020-01-01T10:00:00.000+00:00';
  const hotDay = await cardOf(desk, place, { date: '2020-01-01', workEnded, inserts: [] });
  show(desk, <HotDayScreen hotDay={hotDay} />);
  await screen.findByText(/The clock of this tablet and its own count do not agree/);
  await user.click(screen.getByRole('button', { name: 'The watch was kept to its end' }));
  expect(screen.getAllByText('Give a time of the day, such as 14:05.')).toHaveLength(2);
  await user.type(screen.getByRole('textbox', { name: 'From' }), '10:00');
  await user.type(screen.getByRole('textbox', { name: 'Until' }), '10:30');
  await user.click(screen.getByRole('button', { name: 'The watch was kept to its end' }));
  expect((await screen.findByRole('alert')).textContent).toContain(
    'The watch was kept for 30 minutes; 60 are asked for.',
  );
  await user.clear(screen.getByRole('textbox', { name: 'Until' }));
  await user.type(screen.getByRole('textbox', { name: 'Until' }), '11:00');
  await user.click(screen.getByRole('button', { name: 'The watch was kept to its end' }));
  expect(await screen.findByText(/Kept to its end: 60 min, the word of Helper/)).toBeDefined();
});

it('a log with a gap says from when to when nothing is known, and what it could have come to', async () => {
  const desk = await freshDesk();
  const place = await hotPlace(desk);
  await limitOf(desk, place, place.l2);
  const hotDay = await cardOf(desk, place);
  const reading = { sculpture: place.sculpture, insert: place.l2, hotDay, spot: 'rim', by: 'Helper' };
  for (const [time, celsius] of [
    ['10:00', 20],
    ['10:05', 25],
    ['10:40', 26],
  ] as const)
    await done(addPlanned(desk, 'insertReading', { ...reading, time, celsius }));
  show(desk, <HotDayScreen hotDay={hotDay} />);
  const said =
    'Nothing is known of “rim” from 10:05 to 10:40, 35 minutes. At the fastest rise of the day it could have come to 60 °C.';
  expect(await screen.findByText(said)).toBeDefined();
  expect(screen.getByRole('img', { name: `${lens}: 3 readings of the day, at most 26\u00a0°C` })).toBeDefined();
});
