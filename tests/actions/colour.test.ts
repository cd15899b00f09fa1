import { expect, test } from 'vitest';
import type { AgreedColourFields, Desk, ReadingFields } from '../../src/actions';
import {
  addReading,
  addSentinel,
  editAgreedColour,
  editReading,
  removeAgreedColour,
  removeReading,
  setAgreedColour,
  undoLast,
} from '../../src/actions';
import { aWork, done, freshDesk } from '../screens/deskwork';

const conditions = { illuminant: 'D65', observer: '10', geometry: 'd/8 included', aperture: 8 } as const;
const read = (fields: Partial<ReadingFields> = {}): ReadingFields => ({
  date: '2026-10-14',
  values: [
    { L: 32.1, a: -4.2, b: 9.8 },
    { L: 31.8, a: -4.4, b: 9.1 },
  ],
  ...conditions,
  ...fields,
});
const card = (fields: Partial<AgreedColourFields> = {}): AgreedColourFields => ({
  name: 'Brown of the panel',
  date: '2024-06-12',
  by: 'Estate and owner',
  value: { L: 30, a: 5, b: 9 },
  ...conditions,
  ...fields,
});
const kept = async (desk: Desk, kind: 'reading' | 'agreedColour', sculpture: string) =>
  (await desk.store.within(sculpture, [kind])).filter(({ gone }) => !gone).map(({ lead }) => lead.body);

test('a reading is kept as it was read, with what it was read by, and undo takes it away', async () => {
  const desk = await freshDesk(1);
  const { sculpture, zones } = await aWork(desk, { title: 'W', number: '1', areas: [1, 2] });
  const { sentinel } = await done(
    addSentinel(desk, sculpture, { zone: zones[0] ?? '', which: 'worst', find: 'second fold', since: '2024-05-01' }),
  );
  await done(addReading(desk, sculpture, read({ sentinel, zone: zones[0], position: 'third hole', surface: 'dry' })));
  expect(await kept(desk, 'reading', sculpture)).toEqual([
    {
      sculpture,
      quantity: 'colour',
      zone: zones[0],
      sentinel,
      position: 'third hole',
      surface: 'dry',
      ...read(),
    },
  ]);
  await done(undoLast(desk));
  expect(await kept(desk, 'reading', sculpture)).toEqual([]);
  desk.store.close();
});

test('a slip is put right without losing the rest, and a field can be emptied', async () => {
  const desk = await freshDesk(2);
  const { sculpture } = await aWork(desk, { title: 'W', number: '1', areas: [1] });
  const { reading } = await done(addReading(desk, sculpture, read({ instrument: 'Sphere no. 3' })));
  await done(editReading(desk, reading, { date: '2026-10-13', instrument: undefined }));
  expect(await kept(desk, 'reading', sculpture)).toEqual([
    { sculpture, quantity: 'colour', ...read({ date: '2026-10-13' }) },
  ]);
  await done(removeReading(desk, reading));
  expect(await kept(desk, 'reading', sculpture)).toEqual([]);
  desk.store.close();
});

test('figures no surface has are refused, and nothing is stored: a comma lost, a sign too many, no placing, an opening of a metre', async () => {
  const desk = await freshDesk(3);
  const { sculpture } = await aWork(desk, { title: 'W', number: '1', areas: [1] });
  const code = async (fields: Partial<ReadingFields>) => {
    const outcome = await addReading(desk, sculpture, read(fields));
    return outcome.ok ? 'kept' : outcome.reason.code;
  };
  expect(await code({ values: [{ L: 321, a: -4.2, b: 9.8 }] })).toBe('colour not possible');
  expect(await code({ values: [{ L: -32.1, a: -4.2, b: 9.8 }] })).toBe('colour not possible');
  expect(await code({ values: [{ L: 32.1, a: Number.NaN, b: 9.8 }] })).toBe('colour not possible');
  expect(await code({ values: [] })).toBe('colour missing');
  expect(await code({ aperture: 1000 })).toBe('aperture not possible');
  expect(await code({ date: '2026-02-30' })).toBe('day not valid');
  expect(await kept(desk, 'reading', sculpture)).toEqual([]);
  desk.store.close();
});

test('a zone of another work is refused, for a reading and for an agreed colour', async () => {
  const desk = await freshDesk(4);
  const { sculpture } = await aWork(desk, { title: 'W', number: '1', areas: [1] });
  const other = await aWork(desk, { title: 'V', number: '2', areas: [1] });
  const zone = other.zones[0] ?? '';
  expect(await addReading(desk, sculpture, read({ zone }))).toMatchObject({ ok: false, reason: { code: 'not here' } });
  expect(await setAgreedColour(desk, sculpture, card({ zone }))).toMatchObject({
    ok: false,
    reason: { code: 'not here' },
  });
  expect(await addReading(desk, zone, read())).toMatchObject({ ok: false, reason: { code: 'not here' } });
  desk.store.close();
});

test('an agreed colour names who agreed; it can be changed and taken away, and undo brings it back', async () => {
  const desk = await freshDesk(5);
  const { sculpture, zones } = await aWork(desk, { title: 'W', number: '1', areas: [1] });
  expect(await setAgreedColour(desk, sculpture, card({ by: '  ' }))).toMatchObject({
    ok: false,
    reason: { code: 'agreed by missing' },
  });
  expect(await setAgreedColour(desk, sculpture, card({ name: '' }))).toMatchObject({
    ok: false,
    reason: { code: 'name missing' },
  });
  const { agreedColour } = await done(setAgreedColour(desk, sculpture, card({ zone: zones[0], kept: 'Plan chest 4' })));
  await done(editAgreedColour(desk, agreedColour, { kept: 'Plan chest 5' }));
  const now = [{ sculpture, ...card({ zone: zones[0], kept: 'Plan chest 5' }) }];
  expect(await kept(desk, 'agreedColour', sculpture)).toEqual(now);
  await done(removeAgreedColour(desk, agreedColour));
  expect(await kept(desk, 'agreedColour', sculpture)).toEqual([]);
  await done(undoLast(desk));
  expect(await kept(desk, 'agreedColour', sculpture)).toEqual(now);
  desk.store.close();
});
