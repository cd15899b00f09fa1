import {
  acceptImport,
  addInterpretation,
  addSurveyor,
  addZone,
  carriedOut,
  closeRound,
  type Desk,
  deskOn,
  editSculpture,
  eraseName,
  erasePhoto,
  keepPhoto,
  leaveZone,
  type Outcome,
  openDesk,
  openSurveyFile,
  photoForZone,
  recordAllClear,
  recordTreatment,
  settle,
  startRound,
  touchZone,
  undoImport,
  undoLast,
  whatNames,
} from '../../src/actions';
import type { Batch, Store, TouchRow } from '../../src/device/store';
import { writeSurvey } from '../../src/engine/exchange';
import { type Current, type Entry, erasedBy, idPart, withoutErased } from '../../src/engine/record';
import { jpeg } from '../device/photo/camera';
import { type Seeded, seeded } from '../files/seeded';
import { yearlyRound } from '../files/yearlyRound';

/** What one call to the store is to change, said before it is made: all of it or nothing must be there after a kill. */
export interface Planned {
  readonly n: number;
  /** Method of the store. */
  readonly call: string;
  readonly adds: readonly string[];
  readonly removes: readonly string[];
  readonly photosAdded: readonly string[];
  readonly photosRemoved: readonly string[];
  /** Change of the number of touches kept, and of those among them that are settled. */
  readonly touches: number;
  readonly settled: number;
  /** The import, where it is one: what it added goes when it is taken out. */
  readonly arrived?: string;
}

/** What lies on the tablet, and what looking through all of it said. */
export interface Lying {
  readonly entries: readonly string[];
  readonly photos: readonly string[];
  readonly touches: number;
  readonly settled: number;
  /** Sentences' codes; none where all is well. */
  readonly faults: readonly string[];
  /** Photos kept whole of which nothing was said yet. */
  readonly orphans: readonly string[];
}

interface Told {
  /** Answered by the test before the call is made. */
  planned(plan: Planned): Promise<void>;
  stored(n: number): Promise<void>;
  /** What an import added, in whatever life of the tablet. */
  addedBy(deed: string): Promise<Pick<Planned, 'adds' | 'photosAdded'>>;
  /** A bag of another tablet with a work and some photos, in base64. */
  bagFor(collection: string): Promise<string>;
}

const told = globalThis as unknown as Told;

const opened = async (): Promise<Store> => {
  // The lock of a tab that was killed is let go by the browser a moment later.
  for (let tries = 0; tries < 100; tries++) {
    const opening = await openDesk();
    if (opening.state !== 'open')
      throw new Error(`${opening.state}: ${opening.reason.code} ${JSON.stringify(opening.reason.params)}`);
    if (opening.desk.store.mode === 'writing') return opening.desk.store;
    opening.desk.store.close();
    await new Promise((go) => setTimeout(go, 50));
  }
  throw new Error('the store is not written by this tab');
};

/** Read past the store: touches of rounds that were taken back are there too. */
const touchesIn = async (name: string): Promise<readonly TouchRow[]> => {
  const done = <T>(request: IDBRequest<T>) =>
    new Promise<T>((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const database = await done(indexedDB.open(name));
  const rows = await done(database.transaction('touches').objectStore('touches').getAll());
  database.close();
  return rows as TouchRow[];
};

/** All that lies in the store, looked through as the app does it. */
export const lying = async (): Promise<Lying> => {
  const store = await opened();
  // That entries are missing, above all: nothing went that was not taken out.
  const faults: string[] = store.notes.map(({ code }) => code);
  let orphans: readonly string[] = [];
  await store.checkCounts().catch((error: { reason?: { code: string }; message: string }) => {
    faults.push(error.reason?.code ?? error.message);
  });
  const journals = await store.metas('arriving ');
  if (journals.length > 0) faults.push('a journal of an import is left');
  for await (const step of store.lookThrough()) {
    if (!('looked' in step)) continue;
    const { looked } = step;
    faults.push(...looked.faults.map(({ code }) => code), ...looked.altered.map((name) => `altered ${name}`));
    if (looked.presentWrong > 0) faults.push(`${looked.presentWrong} present states wrong`);
    orphans = looked.orphans;
  }
  const touches = await touchesIn(store.name);
  const entries = (await store.allEntries()).map(({ id }) => id);
  const photos = await store.photosHere();
  store.close();
  const settled = touches.filter(({ deed }) => deed !== undefined).length;
  return { entries, photos, touches: touches.length, settled, faults, orphans };
};

/** The store with each call that writes entries, photos or touches announced before and told after it. */
const announced = (store: Store): Store => {
  let n = 0;
  const nothing = { adds: [], removes: [], photosAdded: [], photosRemoved: [], touches: 0, settled: 0 };
  const say = async <T>(call: string, change: Partial<Planned>, made: () => Promise<T>): Promise<T> => {
    n += 1;
    const plan = { ...nothing, ...change, call, n };
    await told.planned(plan);
    const result = await made();
    void told.stored(plan.n);
    return result;
  };
  /** By the rule of joining alone, not by what the store would do. */
  const joined = async (coming: readonly Entry[]): Promise<Partial<Planned>> => {
    const here = await store.allEntries();
    const before = new Set(here.map(({ id }) => id));
    const all = [...here, ...coming.filter(({ id }) => !before.has(id))];
    const after = new Set(withoutErased(all).map(({ id }) => id));
    const gone = erasedBy(all).hashes;
    return {
      adds: [...after].filter((id) => !before.has(id)),
      removes: [...before].filter((id) => !after.has(id)),
      photosRemoved: (await store.photosHere()).filter((name) => gone.has(name)),
    };
  };
  const calls: Partial<Store> = {
    commit: async (batch: Batch) => {
      const [settles, reopens, drops] = [batch.settlesTouches, batch.reopensTouches, batch.dropsTouches].map(
        (ns) => ns?.length ?? 0,
      ) as [number, number, number];
      const change = await joined(batch.entries as readonly Entry[]);
      return say('commit', { ...change, touches: -drops, settled: settles - reopens }, () => store.commit(batch));
    },
    takeIn: async (entries, deed, options) => {
      const photosAdded = options?.ends?.photos ?? [];
      const change = { ...(await joined(entries)), photosAdded, arrived: deed.id };
      return say('takeIn', change, () => store.takeIn(entries, deed, options));
    },
    takeOut: async (deed) => {
      const { adds, photosAdded } = await told.addedBy(deed);
      return say('takeOut', { removes: adds, photosRemoved: photosAdded }, () => store.takeOut(deed));
    },
    touch: (row) => say('touch', { touches: 1 }, () => store.touch(row)),
    dropTouches: (ns) => say('dropTouches', { touches: -ns.length }, () => store.dropTouches(ns)),
    keepPhoto: async (photo) => {
      // Photos of a bag count with its entries: until then they lie under a journal, and go at the next start.
      if ((await store.metas('arriving ')).length > 0) return store.keepPhoto(photo);
      const here = (await store.photosHere()).includes(photo.sha256);
      return say('keepPhoto', { photosAdded: here ? [] : [photo.sha256] }, () => store.keepPhoto(photo));
    },
  };
  return new Proxy(store, {
    get: (whole, key) => calls[key as keyof Store] ?? Reflect.get(whole, key, whole),
  });
};

const must = <T extends object>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(`a deed was refused: ${outcome.reason.code}`);
  return outcome;
};

const survey = yearlyRound();

/** One deed after the other, drawn by the seed, until the life is taken. Erasing and imports among them. */
export const live = async (seed: number): Promise<never> => {
  const desk = deskOn(announced(await opened()), { surveyor: () => '' });
  const draw = seeded(seed);
  if ((await desk.store.allEntries()).length === 0) await carryIn(desk, survey.collection, survey.entries);
  for (;;) {
    // What other deeds have done or undone can stand against one: then the next is drawn.
    const outcome = await draw.pick(deeds)(desk, draw);
    const code = outcome && !outcome.ok ? outcome.reason.code : undefined;
    if (code?.startsWith('store') || code === 'connection lost') throw new Error(code);
  }
};

const carryIn = async (desk: Desk, collection: string, entries: readonly Entry[]): Promise<string> => {
  return takeIn(desk, new File([writeSurvey(collection, entries)], 'other.survey.json'));
};

const takeIn = async (desk: Desk, file: File): Promise<string> => {
  const read = await openSurveyFile(desk, file);
  if (!read.ok)
    throw new Error([read.reason, ...read.problems.map(({ problem }) => problem)].map(({ code }) => code).join());
  return must(await acceptImport(desk, read.preview)).deed;
};

const picture = (draw: Seeded): File => {
  const grain = Array.from({ length: 2_000 + draw.below(60_000) }, () => draw.below(256));
  // Beyond the picture's end, where any grain may lie.
  return new File([jpeg({ xmp: draw.id(Date.now()) }), new Uint8Array(grain)], 'one.jpg', { type: 'image/jpeg' });
};

/** As another tablet would have said it: a version beside the one here. */
const versionElsewhere = (desk: Desk, draw: Seeded, { lead }: Current): Entry => ({
  ...lead,
  id: draw.id(Date.now()),
  device: 'elsewhere',
  n: Date.now() * 1000 + draw.below(1000),
  deed: desk.newId(),
  body: { ...lead.body, note: `Seen from the other side, ${draw.below(1e6)}` },
});

const underWay = async (desk: Desk): Promise<Current | undefined> =>
  (await desk.store.ofKind('round')).find(({ gone, lead }) => !gone && lead.body.ended === undefined);

type Deed = (desk: Desk, draw: Seeded) => Promise<Outcome<object> | undefined>;

const walk: Deed = async (desk, draw) => {
  const round = await underWay(desk);
  const start = { type: 'annual', date: survey.day, wet: 'dry', washed: 'before wash', ownEye: true } as const;
  if (!round) return startRound(desk, survey.sculpture, start);
  const visited = new Set((await desk.store.ofRound(round.thing)).map(({ lead }) => lead.body.zone));
  const zones = (await desk.store.within(survey.sculpture, ['zone'])).filter(
    ({ gone, thing }) => !gone && !visited.has(thing),
  );
  const zone = zones[0]?.thing;
  if (!zone) return closeRound(desk, round.thing);
  const coverage = { value: 0.1, low: 0.075, high: 0.15, method: 'ladder' } as const;
  const touches = [
    { do: 'kind', kind: 'green-spots', measure: 'area' },
    { do: 'origin', origin: 'metal' },
    { do: 'cover', coverage },
    { do: 'severity', severity: 'slight' },
  ] as const;
  for (const touch of touches) must(await touchZone(desk, round.thing, zone, touch));
  if (draw.below(4) === 0) must(await photoForZone(desk, round.thing, zone, 'zone', picture(draw)));
  const left = await leaveZone(desk, round.thing, zone, { how: 'next' });
  return left.ok ? left : leaveZone(desk, round.thing, zone, { how: 'not looked', reason: 'too wet' });
};

const anotherWork: Deed = async (desk, draw) => {
  const sculpture = `sculpture/${draw.id(Date.now())}`;
  const frame = {
    within: sculpture,
    v: 1,
    at: desk.now(),
    by: '',
    device: 'elsewhere',
    deed: desk.newId(),
    replaces: [],
  };
  const many = 20 + draw.below(400);
  const treatments = Array.from({ length: many }, (_, i): Entry => {
    const [id, thing] = [draw.id(Date.now()), `treatment/${draw.id(Date.now())}`];
    const body = { sculpture, zones: [], type: 'wax', date: String(1990 + (i % 30)) };
    return { ...frame, id, thing, kind: 'treatment', n: Date.now() * 1000 + i, body };
  });
  const body = { number: `E-${draw.below(1e6)}`, title: 'Of another tablet', materials: 'bronze' };
  const work = {
    ...frame,
    id: draw.id(Date.now()),
    thing: sculpture,
    kind: 'sculpture',
    n: Date.now() * 1000 + 999,
    body,
  };
  const deed = await carryIn(desk, desk.collection, [work, ...treatments]);
  return draw.below(2) === 0 ? undoImport(desk, deed) : undefined;
};

const aBag: Deed = async (desk, draw) => {
  const text = atob(await told.bagFor(desk.collection));
  const bytes = Uint8Array.from(text, (letter) => letter.charCodeAt(0));
  const deed = await takeIn(desk, new File([bytes], 'visit.survey.zip'));
  return draw.below(3) === 0 ? undoImport(desk, deed) : undefined;
};

const settleVersions: Deed = async (desk, draw) => {
  const two = draw.pick(await desk.store.within(survey.sculpture, ['treatment', 'interpretation']));
  if (!two || two.gone) return undefined;
  const erasures = (await desk.store.ofKind('erasure')).map(({ lead }) => lead);
  const own = await desk.store.entriesOf(two.thing);
  await carryIn(desk, desk.collection, [...erasures, ...own, versionElsewhere(desk, draw, two)]);
  const now = await desk.store.current(two.thing);
  if (!now || now.heads.length < 2) return undefined;
  return settle(desk, two.thing, { version: draw.pick(now.heads) });
};

const eraseAName: Deed = async (desk, draw) => {
  const name = `Person ${draw.below(1e9)}`;
  const { surveyor } = must(await addSurveyor(desk, { role: 'Steward', name }));
  must(await addInterpretation(desk, survey.sculpture, { statement: `${name} says it is the pond`, by: name }));
  const { elsewhere } = await whatNames(desk, surveyor);
  return eraseName(desk, surveyor, { reason: 'Asked for', alsoIn: elsewhere.map(({ thing }) => thing) });
};

const eraseAPhoto: Deed = async (desk, draw) => {
  const { photo } = must(await keepPhoto(desk, survey.sculpture, picture(draw), 'zone'));
  return erasePhoto(desk, photo, { reason: 'A passer-by was in it' });
};

const deeds: readonly Deed[] = [
  walk,
  walk,
  walk,
  anotherWork,
  aBag,
  aBag,
  settleVersions,
  eraseAName,
  eraseAPhoto,
  (desk, draw) => keepPhoto(desk, survey.sculpture, picture(draw), 'zone'),
  (desk) => undoLast(desk),
  (desk, draw) =>
    recordTreatment(desk, survey.sculpture, { zones: [], type: 'wax', date: String(2000 + draw.below(26)) }),
  (desk) =>
    recordAllClear(
      desk,
      survey.sculpture,
      survey.zones.slice(0, 8).map(({ thing }) => thing),
      { planned: true, wet: 'dry' },
    ),
  (desk, draw) => editSculpture(desk, survey.sculpture, { note: `Note ${draw.below(1e9)}` }),
  (desk) =>
    addZone(desk, survey.sculpture, {
      name: 'One more',
      area: { m2: 1, low: 0.8, high: 1.2, method: 'typed' },
      substrate: 'bronze',
      exposure: ['open'],
      reach: 'ground',
    }),
  async (desk, draw) => {
    await carriedOut(desk, { what: 'survey', name: idPart(draw.id(1)), entries: 1, photos: 0 });
    return undefined;
  },
];
