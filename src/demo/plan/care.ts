import { addPlanned, editTreatment, setPlanned } from '../../actions';
import { methodsOn } from '../../engine/care';
import { type BodyOf, nameOf } from '../../engine/record';
import { type AirReading, gateOf } from '../../engine/weather';
import { done } from '../walkRound';
import { type DemoEvent, madeBefore, type PlantedGarden } from './plantedGarden';

const wax = {
  name: 'Cold paste wax',
  sort: 'microcrystalline',
  solvent: 'white spirit',
  unit: 'g',
  left: 1000,
  least: 500,
  surfaceFrom: 10,
  surfaceTo: 30,
  sheet: 'Tool shed, red folder, tab 3',
} as const;

/** A tin of wax a year, in store before the season, gone before the next. */
const tins = (garden: PlantedGarden): DemoEvent[] =>
  [2021, 2022, 2023, 2024, 2025, 2026].map((year) => ({
    day: `${year}-04-20`,
    run: async () => {
      const { desk, things } = garden;
      const batch = `W-${year % 100}A`;
      const body = { ...wax, batch, counted: `${year}-04-20`, opened: `${year}-04-20`, expires: `${year + 2}-04-30` };
      const last = year < 2026 ? { ended: `${year + 1}-04-19` } : { sheetDate: '2024-01-15' };
      const { thing } = await done(addPlanned(desk, 'product', { ...body, ...last }));
      things.set(`tin ${batch}`, thing);
    },
  }));

const detergent = ({ desk }: PlantedGarden): DemoEvent => ({
  day: '2024-04-20',
  run: async () => {
    const body = { name: 'Neutral detergent', sort: 'detergent', unit: 'l', left: 2, least: 1 } as const;
    await done(addPlanned(desk, 'product', { ...body, counted: '2024-04-20', expires: '2026-11-30' }));
  },
});

/** Read in the field: what was said is the gate's word, worked out here as it was there. */
const reading = (
  garden: PlantedGarden,
  number: string,
  date: string,
  read: AirReading,
  overridden?: BodyOf<'weather'>['overridden'],
): DemoEvent => ({
  day: date,
  run: async () => {
    const sculpture = garden.works.get(number)?.sculpture ?? '';
    const said = gateOf(read, { ...wax, product: wax.name }).says;
    const body = { ...read, sculpture, date, said, ...(overridden ? { overridden } : {}) };
    const { thing } = await done(addPlanned(garden.desk, 'weather', body));
    garden.things.set(`reading ${number} ${date} ${read.time}`, thing);
  },
});

/** The wax of that day goes with the reading of that time. */
const waxedOn = (garden: PlantedGarden, number: string, date: string, time: string): DemoEvent => ({
  day: date,
  run: async () => {
    const { desk, works } = garden;
    const weather = madeBefore(garden, `reading ${number} ${date} ${time}`);
    const within = await desk.store.within(works.get(number)?.sculpture ?? '', ['treatment']);
    const waxing = within.find(({ lead }) => lead.body.type === 'wax' && lead.body.date === date);
    if (waxing) await done(editTreatment(desk, waxing.thing, { weather }));
  },
});

const sheet = (garden: PlantedGarden, number: string, day: string, setBy: string, line: string): DemoEvent => ({
  day,
  run: async () => {
    const sculpture = garden.works.get(number)?.sculpture ?? '';
    const { allowed, forbidden } = methodsOn(undefined);
    const body = {
      sculpture,
      allowed: [...allowed],
      forbidden: [...forbidden],
      alsoForbidden: [line],
      setBy,
      date: day,
    };
    await done(setPlanned(garden.desk, 'methodSheet', nameOf.methodSheet(sculpture), body));
  },
});

const before = 'wax';

/** Wash and wax days, what may be done, what is in store. */
export const careEvents = (garden: PlantedGarden): DemoEvent[] => [
  ...tins(garden),
  detergent(garden),
  sheet(
    garden,
    'SW-03',
    '2023-11-22',
    'Conservator',
    'No pressure, no hot water, no solvent near the lenses: L2 and L5 are seized in their bezels.',
  ),
  sheet(garden, 'SW-02', '2024-06-03', 'Steward', 'Nobody in the basin before the pump is locked off.'),
  reading(
    garden,
    'SW-02',
    '2025-05-22',
    { before, time: '11:20', air: 15, humidity: 82, surface: 14.1, dryHours: 24 },
    { by: 'Steward', why: 'The lift goes back tonight, and the wind dries it.' },
  ),
  waxedOn(garden, 'SW-02', '2025-05-22', '11:20'),
  reading(garden, 'SW-01', '2026-05-21', { before, time: '10:40', air: 16, humidity: 80, surface: 14, dryHours: 24 }),
  reading(garden, 'SW-01', '2026-05-21', {
    before,
    time: '15:30',
    air: 18.6,
    humidity: 68,
    surface: 17.2,
    dryHours: 24,
  }),
  waxedOn(garden, 'SW-01', '2026-05-21', '15:30'),
];
