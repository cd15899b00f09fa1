import {
  addInsert,
  addInterpretation,
  addSculpture,
  addSurveyor,
  addZone,
  closeRound,
  commitChanges,
  type Desk,
  dayOfGarden,
  leaveZone,
  recordLook,
  recordTreatment,
  setClimate,
  setUpCollection,
  skipAskingAgain,
  startRound,
  touchZone,
} from '../actions';
import { askAgain, checkEye, roundTwice } from './eyesInUse';
import { type DemoWork, garden, roundDays } from './garden';
import { askedAgainFrom, doneTwice, eyeChecks } from './garden/eyes';
import { photosOfGarden } from './garden/photos';
import type { GardenClock } from './gardenClock';
import { type Drawing, type Photographed, photographRound, setUpPhotos } from './photograph';
import { planEvents } from './plan';
import { colourEvents } from './readColour';
import { treatmentFields } from './treatmentFields';
import { done, walkZone } from './walkRound';

interface Planted {
  readonly work: DemoWork;
  readonly sculpture: string;
  readonly zones: ReadonlyMap<string, string>;
  readonly seen: Map<string, ReadonlyMap<string, number>>;
  readonly photographed: Photographed;
}

interface Event {
  readonly day: string;
  run(): Promise<void>;
}

/** Makes the invented garden by the deeds a user has: six works, six years, in the order things happened. */
export const plantGarden = async (
  desk: Desk,
  clock: GardenClock,
  setSurveyor: (surveyor: string) => void,
  drawing: Drawing,
): Promise<void> => {
  const { surveyor: steward } = await done(
    setUpCollection(desk, { name: 'Saltlamp Walk (invented)', role: 'Steward' }),
  );
  await done(
    commitChanges(desk, { code: 'deed: collection renamed', params: {} }, [
      { thing: desk.collection, patch: { invented: true } },
    ]),
  );
  const { surveyor: standIn } = await done(addSurveyor(desk, { role: 'Stand-in' }));
  const { surveyor: helper } = await done(addSurveyor(desk, { role: 'Helper' }));
  setSurveyor(steward);
  const works: Planted[] = [];
  for (const work of garden) works.push(await plant(desk, work));
  const things = new Map<string, string>();
  const turn: Turn = { n: 0, pass: (seconds) => clock.pass(seconds) };
  const people = { steward, helper, standIn };
  const events = [
    ...eyeChecks.map((check) => ({
      day: check.day,
      run: async () => {
        const who = check.who === 'steward' ? steward : standIn;
        setSurveyor(who);
        await checkEye(desk, who, check);
        setSurveyor(steward);
      },
    })),
    ...works.flatMap((planted) => eventsOf(desk, planted, drawing, (name) => setSurveyor(name), people, turn, things)),
    ...planEvents({
      ...{ desk, things, draw: drawing },
      works: new Map(works.map((planted) => [planted.work.number, planted])),
    }),
  ];
  // Sorting is stable: on one day, what the tables list first happened first.
  for (const { day, run } of events.sort((a, b) => a.day.localeCompare(b.day))) {
    clock.turnTo(day);
    await run();
  }
  await done(setClimate(desk, airOfTheQuay));
  clock.turnTo(dayOfGarden);
};

/** Made up for a brackish quay in a cool climate. */
const airOfTheQuay = { temperature: 9.5, humidity: 81, so2: 3, chloride: 60, from: 'Made up for this demo' };

/** Whose turn it is to be asked again, and the time a zone takes. */
interface Turn {
  n: number;
  pass(seconds: number): void;
}

interface People {
  readonly steward: string;
  readonly helper: string;
  readonly standIn: string;
}

const plant = async (desk: Desk, work: DemoWork): Promise<Planted> => {
  const { number, title, maker, date, materials, dimensions, note, place, access } = work;
  const { sculpture } = await done(
    addSculpture(desk, { number, title, maker, date, materials, dimensions, note }, { place, access }),
  );
  const zones = new Map<string, string>();
  for (const zone of work.zones) {
    const { letter, name, m2, exposure, reach, substrate = 'bronze', significance = 1 } = zone;
    const area = { m2, low: round2(m2 * 0.9), high: round2(m2 * 1.1), method: 'strips' as const };
    const added = await done(
      addZone(desk, sculpture, { letter, name, exposure, reach, substrate, significance, area, since: '2021-04-12' }),
    );
    zones.set(letter, added.zone);
  }
  for (const { zone, note: said, ...insert } of work.inserts ?? []) {
    const of = zones.get(zone);
    await done(addInsert(desk, sculpture, { ...insert, count: 1, note: said, ...(of ? { zone: of } : {}) }));
  }
  const photographed = await setUpPhotos(desk, { sculpture, zones, plan: photosOfGarden[number] });
  return { work, sculpture, zones, seen: new Map(), photographed };
};

const round2 = (x: number): number => Math.round(x * 100) / 100;

const eventsOf = (
  desk: Desk,
  planted: Planted,
  drawing: Drawing,
  setSurveyor: (surveyor: string) => void,
  people: People,
  turn: Turn,
  things: ReadonlyMap<string, string>,
): Event[] => {
  const { steward, standIn } = people;
  const { work, sculpture, zones } = planted;
  const named = (letters: string | undefined) => [...(letters ?? '')].flatMap((letter) => zones.get(letter) ?? []);
  return [
    ...roundDays.map((day, year) => ({
      day,
      run: async () => {
        setSurveyor(work.standIn?.includes(2021 + year) ? standIn : steward);
        const round = await yearlyRound(desk, planted, year, day, turn);
        await photographRound(desk, { ...planted, year, day, round }, drawing);
        setSurveyor(steward);
      },
    })),
    ...work.treatments.map((row) => ({
      day: row.date.length === 10 ? row.date : `${row.date}-28`,
      run: async () => void (await done(recordTreatment(desk, sculpture, treatmentFields(work, row, named, things)))),
    })),
    ...work.looks.map(({ zone, date, result }) => ({
      day: date,
      run: async () => {
        for (const name of named(zone)) {
          await done(recordLook(desk, sculpture, { zone: name, result, planned: true, wet: 'dry' }));
        }
      },
    })),
    ...(work.number === doneTwice.work
      ? [{ day: doneTwice.day, run: () => roundTwice(desk, sculpture, zones, setSurveyor, people) }]
      : []),
    ...colourEvents(desk, work.number, sculpture, zones),
    ...(work.number === 'SW-02' ? moundsOnTheBaseRing(desk, planted) : []),
  ];
};

/** A zone with something to judge takes a minute and a half and more, one with nothing under one. Made up, and not all the same. */
const secondsAt = ({ letter, series }: DemoWork['zones'][number], year: number): number => {
  const found = series.filter(({ cover }) => (cover[year] ?? 0) > 0).length;
  const uneven = ((letter.charCodeAt(0) * 17 + year * 29) % 7) * 6;
  return (found > 0 ? 50 + 35 * found : 25) + uneven;
};

const yearlyRound = async (
  desk: Desk,
  { work, sculpture, zones, seen }: Planted,
  year: number,
  date: string,
  turn: Turn,
): Promise<string> => {
  const { round } = await done(
    startRound(desk, sculpture, { type: 'annual', date, wet: 'dry', washed: 'before wash', ownEye: true }),
  );
  for (const table of work.zones) {
    const zone = zones.get(table.letter);
    if (!zone) continue;
    turn.pass(secondsAt(table, year));
    seen.set(table.letter, await walkZone(desk, round, zone, table, year, seen.get(table.letter) ?? new Map()));
  }
  if (year >= askedAgainFrom) await askAgain(desk, sculpture, round, turn);
  else await done(skipAskingAgain(desk, round));
  await done(closeRound(desk, round));
  return round;
};

/** October 2025: a stop word from the ground, everything else out of reach; a month later a conservator's word on it. */
const moundsOnTheBaseRing = (desk: Desk, { sculpture, zones }: Planted): Event[] => [
  {
    day: '2025-10-09',
    run: async () => {
      const { round } = await done(
        startRound(desk, sculpture, {
          type: 'autumn',
          date: '2025-10-09',
          wet: 'dry',
          washed: 'before wash',
          ownEye: true,
        }),
      );
      for (const [letter, zone] of zones) {
        if (letter !== 'I') {
          await done(leaveZone(desk, round, zone, { how: 'not looked', reason: 'reach' }));
          continue;
        }
        await done(touchZone(desk, round, zone, { do: 'kind', kind: 'pale-powdery-mounds', measure: 'count' }));
        await done(touchZone(desk, round, zone, { do: 'origin', origin: 'metal' }));
        await done(touchZone(desk, round, zone, { do: 'count', count: 'two to five' }));
        await done(touchZone(desk, round, zone, { do: 'severity', severity: 'moderate' }));
        await done(touchZone(desk, round, zone, { do: 'activity', activity: 'active' }));
        await done(leaveZone(desk, round, zone, { how: 'next' }));
      }
      await done(closeRound(desk, round));
    },
  },
  {
    day: '2025-11-18',
    run: async () => {
      const about = zones.get('I');
      await done(
        addInterpretation(desk, sculpture, {
          ...(about ? { about } : {}),
          statement:
            'Spot test for chloride: positive in I, negative in H. A desalting step belongs before any colouring.',
          by: 'Conservator',
          date: '2025-11-18',
        }),
      );
    },
  },
];
