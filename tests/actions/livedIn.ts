import {
  acceptImport,
  addElevation,
  addInsert,
  addInterpretation,
  addReading,
  addSentinel,
  addStation,
  addSurveyor,
  type Desk,
  deskOn,
  keepPhoto,
  leaveZone,
  openPersonCheck,
  openSurveyFile,
  photoForStation,
  recordLook,
  recordTreatment,
  setAccess,
  setAgreedColour,
  setClass,
  setOutline,
  setPhotoFit,
  setPlace,
  setRunOff,
  startEyeCheck,
  startRound,
  touchZone,
} from '../../src/actions';
import type { Store } from '../../src/device/store';
import { writeSurvey } from '../../src/engine/exchange';
import type { Outline } from '../../src/engine/photo';
import { type Entry, nameOf } from '../../src/engine/record';
import { jpeg } from '../device/photo/camera';
import { freshName, open, surroundings } from '../device/store/around';
import { seeded } from '../files/seeded';
import { type StoredDatabase, storeAgain, storedOf } from '../files/storedDatabase';
import { aRound, aWork, done } from '../screens/deskwork';

export const picture = (name: string): File => new File([jpeg({ xmp: name })], `${name}.jpg`, { type: 'image/jpeg' });

export const square = (x: number): Outline => [
  [
    [x, 0.2],
    [x + 0.2, 0.2],
    [x + 0.2, 0.5],
    [x, 0.5],
  ],
];

export const onLadder = { value: 0.1, low: 0.075, high: 0.15, method: 'ladder' } as const;

/** A tablet with one thing at least of every sort a deed is done to, by name. */
export interface LivedIn {
  readonly desk: Desk;
  readonly store: Store;
  /** Closes the tablet and opens it again, as after a kill. */
  again(): Promise<Store>;
  readonly is: Things;
}

type Things = Awaited<ReturnType<typeof live>>;

const on = (store: Store, seed: number): Desk => {
  const draw = seeded(seed);
  let second = 0;
  return deskOn(store, {
    newId: () => draw.id(Date.UTC(2026, 9, 15, 10, 0, second)),
    now: () => new Date(Date.UTC(2026, 9, 15, 10, 0, second++)).toISOString().replace('Z', '+00:00'),
    today: () => '2026-10-15',
    surveyor: () => '',
  });
};

/** As another tablet said it. */
export const elsewhere = (over: Partial<Entry> & Pick<Entry, 'id' | 'thing' | 'kind' | 'within' | 'body'>): Entry => ({
  v: 1,
  at: '2026-10-14T10:00:00.000+00:00',
  by: '',
  device: 'elsewhere',
  n: 1,
  deed: '01a00000-0000-7000-8000-00000000beef',
  replaces: [],
  ...over,
});

export const carryIn = async (desk: Desk, entries: readonly Entry[]): Promise<string> => {
  const read = await openSurveyFile(desk, new File([writeSurvey(desk.collection, entries)], 'other.survey.json'));
  if (!read.ok) throw new Error(read.problems.map(({ problem }) => JSON.stringify(problem)).join());
  return (await done(acceptImport(desk, read.preview))).deed;
};

const live = async (desk: Desk) => {
  const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1, 2, 3, 4] });
  const { sculpture } = work;
  const [a, b, c, d] = work.zones as [string, string, string, string];
  const seen = { 'green-spots': 0.1 };
  const last = await aRound(desk, work, '2025-10-01', [seen, seen, 'nothing', seen]);
  const { surveyor } = await done(addSurveyor(desk, { role: 'Steward', name: 'Ann Leigh' }));
  const { interpretation } = await done(
    addInterpretation(desk, sculpture, { statement: 'Ann Leigh says it is the pond', by: 'Other' }),
  );
  const { treatment } = await done(recordTreatment(desk, sculpture, { zones: [a], type: 'wax', date: '2024' }));
  const worth = { minor: 100, currency: 'EUR' };
  const { insert } = await done(addInsert(desk, sculpture, { material: 'glass', count: 2, removable: 'no' }, worth));
  await done(setPlace(desk, sculpture, 'By the pond'));
  await done(setAccess(desk, sculpture, 'Key at the gate'));
  await done(setClass(desk, last, a, { condition: 2, setBy: 'Other' }));
  const { personCheck } = await done(openPersonCheck(desk, sculpture, { what: 'leans' }));
  const { look } = await done(recordLook(desk, sculpture, { zone: a, result: 'clear', planned: true, wet: 'dry' }));
  const { elevation } = await done(addElevation(desk, sculpture, 'west', picture('side')));
  const { outline } = await done(setOutline(desk, elevation, a, square(0.1)));
  const { outline: second } = await done(setOutline(desk, elevation, b, square(0.6)));
  const { runOff } = await done(setRunOff(desk, a, b));
  const { station } = await done(addStation(desk, sculpture, { aim: 'the buckle' }));
  const { station: other } = await done(addStation(desk, sculpture, { aim: 'the base' }));
  const { sentinel } = await done(addSentinel(desk, sculpture, { zone: a, which: 'worst', find: 'second fold' }));
  const conditions = { illuminant: 'D65', observer: '10', geometry: 'd/8 included', aperture: 8 } as const;
  const values = [{ L: 32, a: -4, b: 10 }];
  const reading = await done(addReading(desk, sculpture, { ...conditions, date: '2026-10-14', values, zone: a }));
  const card = { ...conditions, name: 'Brown', date: '2024-06-12', by: 'Owner', value: { L: 30, a: 5, b: 9 } };
  const { agreedColour } = await done(setAgreedColour(desk, sculpture, card));
  const { photo } = await done(photoForStation(desk, sculpture, { station }, picture('one')));
  const { photo: onto } = await done(photoForStation(desk, sculpture, { station }, picture('two')));
  const { photo: loose } = await done(keepPhoto(desk, sculpture, picture('three'), 'other'));
  const pairs = [0.2, 0.4, 0.6, 0.8].map((x) => ({ from: [x, x * x], onto: [x, x * x] }) as const);
  await done(setPhotoFit(desk, { photo, onto, kind: 'similarity', pairs }));
  // The same work walked on another tablet a day earlier, and a treatment corrected there.
  const round = nameOf.round('01a00000-0000-7000-8000-000000000001');
  const there = {
    sculpture,
    type: 'annual',
    date: '2026-10-14',
    wet: 'dry',
    washed: 'before wash',
    ownEye: true,
    surveyor,
  };
  const own = await desk.store.entriesOf(treatment);
  const ofWork = await desk.store.entriesOf(sculpture);
  const note = { ...own[0]?.body, note: 'Two coats' };
  await carryIn(desk, [
    ...own,
    ...ofWork,
    elsewhere({
      id: '01a00000-0000-7000-8000-000000000002',
      thing: round,
      kind: 'round',
      within: sculpture,
      body: there,
    }),
    elsewhere({
      id: '01a00000-0000-7000-8000-000000000003',
      ...{ thing: treatment, kind: 'treatment', within: sculpture, body: note, n: 2 },
    }),
  ]);
  const { round: now } = await done(
    startRound(desk, sculpture, {
      type: 'annual',
      date: '2026-10-15',
      wet: 'dry',
      washed: 'before wash',
      ownEye: false,
    }),
  );
  await done(leaveZone(desk, now, c, { how: 'nothing' }));
  await done(touchZone(desk, now, a, { do: 'open', key: 'green-spots/metal' }));
  await done(touchZone(desk, now, a, { do: 'cover', coverage: onLadder }));
  await done(startEyeCheck(desk, surveyor));
  return {
    ...{
      sculpture,
      a,
      b,
      c,
      d,
      last,
      now,
      elsewhere: round,
      surveyor,
      interpretation,
      treatment,
      insert,
      personCheck,
      look,
    },
    ...{ elevation, outline, second, runOff, station, other, sentinel, agreedColour, photo, onto, loose },
    reading: reading.reading,
    card,
    conditions,
    values,
  };
};

let made: Promise<{ stored: StoredDatabase; is: Things }> | undefined;

const firstOne = async () => {
  const name = freshName();
  const store = await open(name, surroundings(5));
  const is = await live(on(store, 5));
  store.close();
  return { stored: await storedOf(name), is };
};

/** A copy of the same tablet each time, on a database of its own. */
export const livedIn = async (seed: number): Promise<LivedIn> => {
  made ??= firstOne();
  const { stored, is } = await made;
  const name = freshName();
  await storeAgain(name, stored);
  const around = surroundings(1000 + seed);
  const store = await open(name, around);
  return {
    desk: on(store, 2000 + seed),
    store,
    again: () => {
      store.close();
      return open(name, around);
    },
    is,
  };
};
