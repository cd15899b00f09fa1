import { addPlanned, editPlanned, keepPhoto, setPlanned } from '../../actions';
import { sameIn } from '../../engine/heat';
import { asThing, nameOf, type Thing } from '../../engine/record';
import { hotChecks } from '../../engine/trade';
import { paintLens } from '../drawing/lens';
import { done } from '../walkRound';
import { type Access, laid, limits, readings, stairAccess, tableAccess, timeOf } from './heatTables';
import { type DemoEvent, madeBefore, type PlantedGarden, type PlantedWork } from './plantedGarden';

/** Layers, days of hot work, inserts near heat, access. */
export const heatEvents = (garden: PlantedGarden): DemoEvent[] => {
  const table = garden.works.get('SW-03');
  const stair = garden.works.get('SW-02');
  if (!table || !stair) return [];
  return [
    { day: '2023-08-21', run: () => access(garden, table, tableAccess) },
    { day: '2023-08-30', run: () => whatTheLensesBear(garden, table) },
    { day: '2023-09-12', run: () => theHotDay(garden, table) },
    { day: '2023-09-18', run: () => layersOnTheTable(garden, table) },
    { day: '2026-02-10', run: () => access(garden, stair, stairAccess) },
  ];
};

const access = async ({ desk }: PlantedGarden, { sculpture }: PlantedWork, sheet: Access): Promise<void> =>
  void (await done(setPlanned(desk, 'accessSheet', nameOf.accessSheet(sculpture), { sculpture, ...sheet })));

/** The lens of that number, as the garden has it in its own table. */
const lens = async ({ desk }: PlantedGarden, { sculpture }: PlantedWork, name: string): Promise<string> => {
  const inserts = await desk.store.within(sculpture, ['insert']);
  const found = inserts.find(({ lead }) => String(lead.body.material).endsWith(name));
  if (!found) throw new Error(`The garden has no lens ${name}.`);
  return found.thing;
};

const photoOf = async (
  { desk, draw }: PlantedGarden,
  { sculpture, zones }: PlantedWork,
  {
    file,
    chip,
    light,
    taken,
  }: { readonly file: string; readonly chip: boolean; readonly light: number; readonly taken: string },
): Promise<string> => {
  const bytes = await draw(`${file}.webp`, paintLens({ chip, light }), 1);
  const zone = zones.get('B');
  const facts = { taken, light: 'open shade' as const, wet: 'dry' as const, ...(zone ? { zone } : {}) };
  return (await done(keepPhoto(desk, sculpture, bytes, 'other', facts))).photo;
};

const whatTheLensesBear = async (garden: PlantedGarden, work: PlantedWork): Promise<void> => {
  const { sculpture } = work;
  for (const [name, said] of Object.entries(limits)) {
    const insert = await lens(garden, work, name);
    const chip = { file: 'SW-03-lens-L5-before', chip: true, light: 1, taken: '2023-08-30T11:10:00' };
    const photos = name === 'L5' ? { photos: [await photoOf(garden, work, chip)] } : {};
    await done(
      setPlanned(garden.desk, 'insertCare', nameOf.insertCare(insert), { sculpture, insert, ...said, ...photos }),
    );
  }
};

const theHotDay = async (garden: PlantedGarden, work: PlantedWork): Promise<void> => {
  const { desk, things } = garden;
  const { sculpture } = work;
  const campaign = madeBefore(garden, 'campaign SW-03');
  const near = { L2: await lens(garden, work, 'L2'), L5: await lens(garden, work, 'L5') };
  const { thing: hotDay } = await done(
    addPlanned(desk, 'hotDay', {
      ...{ sculpture, campaign, date: '2023-09-12', permit: 'Hot work 7 of 2023, harbour fire office' },
      ...{ authorisedBy: { role: 'Fire office of the harbour' }, clearZone: 11, watchMinutes: 60 },
      ...{ watcher: { role: 'Helper' }, checked: hotChecks.map(({ id }) => id), inserts: Object.values(near) },
    }),
  );
  things.set('hotDay SW-03', hotDay);
  for (const [name, degrees] of Object.entries(readings)) {
    const insert = near[name as keyof typeof near];
    for (const [i, celsius] of degrees.entries()) {
      const body = { sculpture, insert, hotDay, time: timeOf(i, name), spot: 'rim, towards the flame', celsius };
      await done(addPlanned(desk, 'insertReading', { ...body, by: 'Helper' }));
    }
  }
  await done(
    editPlanned(desk, 'hotDay', hotDay, {
      workEnded: '2023-09-12T11:48:00.000+00:00',
      watchKept: { at: '2023-09-12T12:55:00.000+00:00', by: 'Helper', counted: 65, seen: 'Nothing smoked.' },
    }),
  );
  for (const [i, [name, insert]] of Object.entries(near).entries()) {
    const taken = `2023-09-12T16:0${i}:00`;
    const photo = await photoOf(garden, work, {
      file: `SW-03-lens-${name}-after`,
      chip: name === 'L5',
      light: 2 + i,
      taken,
    });
    const body = { sculpture, insert, hotDay, state: 'unchanged' as const, photos: [photo], by: 'Helper' };
    await done(
      setPlanned(desk, 'insertAfter', nameOf.insertAfter(hotDay, insert), { ...body, at: `${taken}.000+00:00` }),
    );
  }
  const closed = { at: '2023-09-12T16:20:00.000+00:00', by: 'Steward' };
  await done(editPlanned(desk, 'hotDay', hotDay, { closed }));
};

/** Each layer on the table top first; on the other zones the same as there. */
const layersOnTheTable = async (garden: PlantedGarden, { sculpture, zones }: PlantedWork): Promise<void> => {
  const { desk } = garden;
  const campaign = madeBefore(garden, 'campaign SW-03');
  const [first, ...others] = zones;
  for (const [i, { time, ...layer }] of laid.entries()) {
    const zone = first?.[1] ?? '';
    const body = { sculpture, campaign, zone, order: i + 1, date: '2023-09-18', time, by: 'Foundry team', ...layer };
    const { thing } = await done(addPlanned(desk, 'layer', body));
    const kept = await desk.store.current(thing);
    const source: Thing<'layer'> | undefined = kept && asThing(kept, 'layer');
    if (!source) throw new Error('A layer was not kept.');
    for (const [, other] of others)
      await done(addPlanned(desk, 'layer', sameIn(source, other, { date: '2023-09-18', time })));
  }
};
