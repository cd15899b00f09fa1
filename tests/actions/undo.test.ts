import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  addInsert,
  addZone,
  type Desk,
  deskOn,
  editSculpture,
  editZone,
  joinZones,
  lastDeed,
  type Outcome,
  openPersonCheck,
  orderZones,
  recordTreatment,
  removeSculpture,
  setHoldRules,
  setPlace,
  setScale,
  splitZone,
  undoLast,
} from '../../src/actions';
import { defaultScale } from '../../src/engine/trade';
import { open, openFresh } from '../device/store/around';
import { aWork, done, freshDesk, type Work } from '../screens/deskwork';

/** The living things as a screen would read them: who is there, and what is said of each. */
const present = async (desk: Desk): Promise<Record<string, unknown>> => {
  const kinds = [...new Set((await desk.store.allEntries()).map((e) => e.kind))];
  const all = (await Promise.all(kinds.map((kind) => desk.store.ofKind(kind)))).flat().filter((c) => !c.gone);
  return Object.fromEntries(all.map((c) => [c.thing, c.lead.body]).sort());
};

const typed = { m2: 2, low: 1.8, high: 2.2, method: 'typed' as const };
const zone = { name: 'added', exposure: ['open'], reach: 'ground', substrate: 'bronze', area: typed };

type Deed = (desk: Desk, work: Work) => Promise<Outcome<object>>;

/** Every family of deeds; one that is refused changes nothing and is no step. */
const deeds: Readonly<Record<string, Deed>> = {
  'edit a sculpture': (desk, { sculpture }) => editSculpture(desk, sculpture, { title: `T ${desk.newId()}` }),
  'edit a sculpture, its place and its access at once': (desk, { sculpture }) =>
    editSculpture(desk, sculpture, { title: `T ${desk.newId()}` }, { place: 'by the quay', access: 'step ladder' }),
  'take a sculpture away': (desk, { sculpture }) => removeSculpture(desk, sculpture),
  'set its place': (desk, { sculpture }) => setPlace(desk, sculpture, `here ${desk.newId()}`),
  'take its place away': (desk, { sculpture }) => setPlace(desk, sculpture, ''),
  'add a zone': (desk, { sculpture }) => addZone(desk, sculpture, zone),
  'rename a zone': (desk, { zones }) => editZone(desk, zones[0] ?? '', { name: `N ${desk.newId()}` }),
  'measure a zone anew': (desk, { zones }) => editZone(desk, zones[1] ?? '', { area: { ...typed, m2: 2.1 } }),
  'order the zones': (desk, { sculpture, zones }) => orderZones(desk, sculpture, [...zones].reverse()),
  'split a zone': (desk, { zones }) =>
    splitZone(desk, zones[2] ?? '', [
      { name: 'left', share: 0.4 },
      { name: 'right', share: 0.6 },
    ]),
  'join two zones': (desk, { zones }) => joinZones(desk, zones.slice(0, 2), { name: 'both' }),
  'write down a treatment': (desk, { sculpture, zones }) =>
    recordTreatment(desk, sculpture, { zones: zones.slice(0, 1), type: 'wax', date: '2026-05', coats: 2 }),
  'add an insert': (desk, { sculpture }) =>
    addInsert(desk, sculpture, { material: 'glass', count: 2, removable: 'not known' }),
  'report a danger': (desk, { sculpture }) => openPersonCheck(desk, sculpture, { what: 'loose plaque' }),
  'set when green counts as back': (desk) => setHoldRules(desk, { returnLevel: 0.01, chance: 0.5 }),
  'change the weights': (desk) => setScale(desk, { hazards: { tarnish: 0.2 }, actionLevel: defaultScale.actionLevel }),
};

test.each(Object.keys(deeds))('%s, then Undo: everything is as it was, and Undo had named it', async (name) => {
  const desk = await freshDesk(3);
  const work = await aWork(desk, { title: 'Work', number: '1', areas: [1, 2, 3] });
  if (name === 'take its place away') await done(setPlace(desk, work.sculpture, 'here'));
  const before = await present(desk);
  const entries = (await desk.store.allEntries()).length;
  const deed = deeds[name] as Deed;
  await done(deed(desk, work));
  expect(await present(desk)).not.toEqual(before);
  const question = lastDeed(desk);
  question.subscribe(() => undefined);
  await expect.poll(() => question.get()?.name.code).toMatch(/^deed: /);
  await done(undoLast(desk));
  expect(await present(desk)).toEqual(before);
  expect((await desk.store.allEntries()).length, 'undo adds, it never removes').toBeGreaterThan(entries);
  expect(await desk.store.checkCounts()).toBeGreaterThan(0);
  desk.store.close();
});

test('any run of deeds taken back one by one, over a restart in the middle, leaves what stood before', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.constantFrom(...Object.keys(deeds)), { minLength: 1, maxLength: 7 }),
      fc.nat(1000),
      async (names, seed) => {
        const { store, around, name } = await openFresh(seed + 1);
        let second = 0;
        const on = (s: typeof store): Desk =>
          deskOn(s, {
            newId: around.newId,
            now: () => new Date(Date.UTC(2026, 9, 15, 8, 0, second++)).toISOString().replace('Z', '+00:00'),
            today: () => '2026-10-15',
            surveyor: () => '',
          });
        let desk = on(store);
        const work = await aWork(desk, { title: 'Work', number: '1', areas: [1, 2, 3] });
        const before = await present(desk);
        let steps = 0;
        for (const which of names) {
          const was = (await desk.store.allEntries()).length;
          await (deeds[which] as Deed)(desk, work);
          if ((await desk.store.allEntries()).length > was) steps += 1;
        }
        for (let i = 0; i < steps; i++) {
          if (i === Math.floor(steps / 2)) {
            desk.store.close();
            desk = on(await open(name, around));
          }
          await done(undoLast(desk));
        }
        expect(await present(desk)).toEqual(before);
        await desk.store.checkCounts();
        desk.store.close();
      },
    ),
    { numRuns: 60, seed: 20261125 },
  );
});

test('with nothing left to take back, Undo says so', async () => {
  const desk = await freshDesk(4);
  expect(await undoLast(desk)).toEqual({ ok: false, reason: { code: 'nothing to undo', params: {} } });
  desk.store.close();
});
