import { describe, expect, it } from 'vitest';
import { reportIncident, setPlanned } from '../../src/actions';
import { nameOf } from '../../src/engine/record';
import { aWork, done, freshDesk } from '../screens/deskwork';

const living = async (desk: Awaited<ReturnType<typeof freshDesk>>, kind: 'incident' | 'personCheck') =>
  (await desk.store.ofKind(kind)).filter(({ gone }) => !gone).map(({ lead }) => lead.body);
const storm = { date: '2026-10-12', sort: 'storm', what: 'A branch lies on the wing' };

describe('Reporting an incident', () => {
  it('opens a person check in the same deed where people may be in danger, at the one zone it speaks of', async () => {
    const desk = await freshDesk();
    const { sculpture, zones } = await aWork(desk, { title: 'Heron', number: '1', areas: [1, 1] });
    const before = desk.store.changes();
    await done(reportIncident(desk, { ...storm, sculpture, danger: 'possible', zones: [zones[0] as string] }));
    expect(await living(desk, 'personCheck')).toEqual([
      { sculpture, what: storm.what, opened: '2026-10-12', zone: zones[0] },
    ]);
    expect(await living(desk, 'incident')).toHaveLength(1);
    expect(desk.store.changes()).not.toBe(before);
  });

  it('said anew opens a check only where danger is new', async () => {
    const desk = await freshDesk();
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    const { incident } = await done(reportIncident(desk, { ...storm, sculpture, danger: 'none' }));
    await done(reportIncident(desk, { ...storm, sculpture, danger: 'possible' }, incident));
    await done(reportIncident(desk, { ...storm, sculpture, danger: 'yes' }, incident));
    expect(await living(desk, 'incident')).toMatchObject([{ danger: 'yes' }]);
    expect(await living(desk, 'personCheck')).toHaveLength(1);
  });

  it('opens none where nobody is in danger, nor for the garden as a whole', async () => {
    const desk = await freshDesk();
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    await done(reportIncident(desk, { ...storm, sculpture, danger: 'none' }));
    await done(reportIncident(desk, { ...storm, danger: 'yes' }));
    expect(await living(desk, 'incident')).toHaveLength(2);
    expect(await living(desk, 'personCheck')).toEqual([]);
  });

  it('that says nothing is refused whole: no check without its incident', async () => {
    const desk = await freshDesk();
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    const came = await reportIncident(desk, { ...storm, what: ' ', sculpture, danger: 'yes' });
    expect(came).toEqual({ ok: false, reason: { code: 'year: text missing', params: {} } });
    expect(await living(desk, 'personCheck')).toEqual([]);
  });
});

it('a plan whose lift days are in two currencies is refused, whoever keeps it', async () => {
  const desk = await freshDesk();
  const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  const came = await setPlanned(desk, 'yearPlan', nameOf.yearPlan(desk.collection, 2026), {
    year: 2026,
    works: [{ work: sculpture, survey: 'full', waxes: 1 }],
    liftDays: [
      { day: '2026-05-12', cost: { minor: 38000, currency: 'EUR' } },
      { day: '2026-05-13', cost: { minor: 38000, currency: 'CHF' } },
    ],
  });
  expect(came).toMatchObject({ ok: false, reason: { code: 'money: currencies mixed' } });
});
