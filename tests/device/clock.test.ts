import { expect, test } from 'vitest';
import { memoryBox } from '../../src/device/box';
import { dayOf, instantOf } from '../../src/device/clock';
import { instant } from '../../src/engine/record/schemas';

/** A moment as a device in another place of the world would hold it. */
const away = (iso: string, minutesEast: number): Date => {
  const moment = new Date(Date.parse(iso) + (minutesEast + new Date(iso).getTimezoneOffset()) * 60_000);
  moment.getTimezoneOffset = () => -minutesEast;
  return moment;
};

test.each([
  [0, '2026-05-12T23:41:07.120+00:00', '2026-05-12'],
  [60, '2026-05-13T00:41:07.120+01:00', '2026-05-13'],
  [-210, '2026-05-12T20:11:07.120-03:30', '2026-05-12'],
  [345, '2026-05-13T05:26:07.120+05:45', '2026-05-13'],
])('%i minutes east, the moment and the day are those of the place', (east, said, day) => {
  const moment = away('2026-05-12T23:41:07.120Z', east);
  expect(instantOf(moment)).toBe(said);
  expect(dayOf(moment)).toBe(day);
  expect(instant.safeParse(instantOf(moment)).success).toBe(true);
});

test('what is put in a box comes back as a copy, and what is forgotten is not there', () => {
  const box = memoryBox();
  const kept = { a: [1] };
  box.write('key', kept);
  expect(box.read('key')).toEqual(kept);
  expect(box.read('key')).not.toBe(kept);
  box.forget('key');
  expect(box.read('key')).toBeUndefined();
});
