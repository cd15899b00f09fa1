import { describe, expect, it } from 'vitest';
import {
  addPlanned,
  editPlanned,
  editTreatment,
  type Outcome,
  recordTreatment,
  sculptureRecordOf,
  setPlanned,
  undoLast,
} from '../../src/actions';
import { metalLedger } from '../../src/engine/care';
import { holdsOf } from '../../src/engine/hold';
import { type BodyOf, nameOf } from '../../src/engine/record';
import { aWork, done, freshDesk } from '../screens/deskwork';

const refusedBy = async (outcome: Promise<Outcome<object>>): Promise<string> => {
  const came = await outcome;
  return came.ok ? 'kept' : came.reason.code;
};
const stair = async () => {
  const desk = await freshDesk();
  return { desk, work: await aWork(desk, { title: 'Stair', number: '1', areas: [2, 1] }) };
};
const reading = (sculpture: string): BodyOf<'weather'> => ({
  ...{ sculpture, date: '2026-05-21', time: '10:40', before: 'wax', air: 16, humidity: 80, surface: 14 },
  ...{ dryHours: 48, said: 'wait' },
});

describe('Readings before washing or waxing', () => {
  it('are kept with what was said to them, and an override with who and why', async () => {
    const { desk, work } = await stair();
    const overridden = { by: 'Steward', why: 'The wind dries it' };
    const { thing } = await done(addPlanned(desk, 'weather', { ...reading(work.sculpture), overridden }));
    expect((await desk.store.current(thing))?.lead.body).toMatchObject({ said: 'wait', overridden });
    await done(undoLast(desk));
    expect((await desk.store.current(thing))?.gone).toBe(true);
  });

  it.each([
    [{ humidity: 0 }, 'weather: humidity not possible'],
    [{ humidity: 100.5 }, 'weather: humidity not possible'],
    [{ date: '2026-10-16' }, 'weather: after today'],
    [{ overridden: { by: '', why: 'so' } }, 'weather: gone on without a word'],
    [{ overridden: { by: 'Steward', why: ' ' } }, 'weather: gone on without a word'],
    [{ surface: 101 }, 'field not possible'],
    [{ time: '25:00' }, 'field not possible'],
  ] as const)('%j is refused: %s', async (patch, code) => {
    const { desk, work } = await stair();
    expect(await refusedBy(addPlanned(desk, 'weather', { ...reading(work.sculpture), ...patch }))).toBe(code);
    expect(await desk.store.ofKind('weather')).toEqual([]);
  });
});

describe('Products and method sheets', () => {
  it('with days out of order, or a method both allowed and forbidden, are refused', async () => {
    const { desk, work } = await stair();
    const wax = { name: 'Paste', sort: 'microcrystalline', opened: '2026-05-01' };
    const { thing } = await done(addPlanned(desk, 'product', wax));
    expect(await refusedBy(editPlanned(desk, 'product', thing, { expires: '2026-04-30' }))).toBe(
      'care: days out of order',
    );
    const sheet = { sculpture: work.sculpture, allowed: ['hose'], forbidden: ['hose'] };
    expect(await refusedBy(setPlanned(desk, 'methodSheet', nameOf.methodSheet(work.sculpture), sheet))).toBe(
      'care: allowed and forbidden',
    );
  });
});

describe('An entry of the logbook', () => {
  it('that ends before it begins, costs less than nothing or has somebody without a role is refused', async () => {
    const { desk, work } = await stair();
    const strip = { zones: [], type: 'strip', date: '2023-09-04' };
    expect(await refusedBy(recordTreatment(desk, work.sculpture, { ...strip, ended: '2023-09-01' }))).toBe(
      'care: days out of order',
    );
    const cost = { minor: -1, currency: 'EUR' };
    expect(await refusedBy(recordTreatment(desk, work.sculpture, { ...strip, cost }))).toBe('care: cost below nothing');
    const { treatment } = await done(recordTreatment(desk, work.sculpture, { ...strip, ended: '2023-09-22' }));
    expect(await refusedBy(editTreatment(desk, treatment, { ended: '2023-09-03' }))).toBe('care: days out of order');
    expect(await refusedBy(editTreatment(desk, treatment, { people: [{ role: '' }] }))).toBe(
      'care: somebody without a role',
    );
  });

  it('of a strip and a wax breaks the series, starts a hold, and stands in the metal ledger', async () => {
    const { desk, work } = await stair();
    await done(recordTreatment(desk, work.sculpture, { zones: [], type: 'wax', date: '2023-05-20' }));
    await done(recordTreatment(desk, work.sculpture, { zones: [], type: 'strip', date: '2023-09-04' }));
    await done(recordTreatment(desk, work.sculpture, { zones: [], type: 'wax', date: '2023-09-21' }));
    const question = sculptureRecordOf(desk, work.sculpture);
    await new Promise<void>((come) => {
      const stop = question.subscribe(() => {
        stop();
        come();
      });
      if (question.get()) come();
    });
    const record = question.get()!;
    const [zone] = holdsOf(record, '2023-10-01');
    const wax = record.treatments.find(({ body }) => body.date === '2023-09-21');
    expect(zone?.onNow?.coating).toBe(wax?.thing);
    expect(JSON.stringify(zone)).toContain('strip');
    expect(metalLedger(record).most).toBe(1);
  });
});
