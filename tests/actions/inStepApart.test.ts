import { expect, test } from 'vitest';
import {
  addSculpture,
  addSurveyor,
  commitChanges,
  type Desk,
  editSculpture,
  eraseName,
  erasePhoto,
  joinFolder,
  keepPhoto,
  removeSculpture,
  step,
  undoLast,
} from '../../src/actions';
import { attempt } from '../../src/actions/outcome';
import { type Folder, folderReason, memoryFolder } from '../../src/device/folder';
import { StoreProblem } from '../../src/device/storeProblem';
import { writeSurvey } from '../../src/engine/exchange';
import { jpeg, tiff } from '../device/photo/camera';
import { seeded } from '../files/seeded';
import { aWork, freshDesk } from '../screens/deskwork';

const runs = Number(process.env.STEP_RUNS ?? 12);
const surveyOf = async (desk: Desk) =>
  new TextDecoder().decode(writeSurvey(desk.collection, await desk.store.allEntries()));
const shared = { way: 'picked', name: 'shared' } as const;

/** A folder that breaks off at random, before something is done or after it was done. */
const breaking = (folder: Folder, chance: () => number, share: () => number): Folder => {
  const broken = () => Promise.reject(new StoreProblem(folderReason('folder: no answer', {})));
  const maybe = async <T>(work: () => Promise<T>): Promise<T> => {
    const at = chance();
    if (at < share() / 2) return broken();
    const came = await work();
    return at < share() ? broken() : came;
  };
  return {
    list: (...given) => maybe(() => folder.list(...given)),
    get: (...given) => maybe(() => folder.get(...given)),
    put: (...given) => maybe(() => folder.put(...given)),
    remove: (...given) => maybe(() => folder.remove(...given)),
  };
};

const oneOf = <T>(list: readonly T[], chance: () => number): T | undefined => list[Math.floor(chance() * list.length)];

const deeds: readonly ((desk: Desk, chance: () => number, n: number) => Promise<unknown>)[] = [
  (desk, _, n) => addSculpture(desk, { number: `${n}`, title: `Work ${n}` }),
  async (desk, chance, n) => {
    const work = oneOf(await desk.store.ofKind('sculpture'), chance);
    if (work) await editSculpture(desk, work.thing, { title: `Said anew ${n}` });
  },
  async (desk, chance) => {
    const work = oneOf(await desk.store.ofKind('sculpture'), chance);
    if (work && chance() < 0.2) await removeSculpture(desk, work.thing);
  },
  async (desk, chance, n) => {
    const work = oneOf(await desk.store.ofKind('sculpture'), chance);
    const file = new File([jpeg({ exif: tiff(true, {}), xmp: `${n}` })], `${n}.jpg`, { type: 'image/jpeg' });
    if (work) await keepPhoto(desk, work.thing, file, 'zone');
  },
  async (desk, chance) => {
    const photo = oneOf(await desk.store.ofKind('photo'), chance);
    if (photo && chance() < 0.5) await erasePhoto(desk, photo.thing, { reason: 'A passer-by' });
  },
  (desk, _, n) => addSurveyor(desk, { role: `Role ${n}`, name: `Person ${n}` }),
  async (desk, chance) => {
    const name = oneOf(await desk.store.ofKind('name'), chance);
    if (name && chance() < 0.5)
      await eraseName(desk, String(name.lead.body.surveyor), { reason: 'Asked for it', alsoIn: [] });
  },
  (desk) => undoLast(desk),
];

const oneHistory = async (seed: number): Promise<void> => {
  const draw = seeded(seed);
  const chance = () => draw.next();
  const whole = memoryFolder();
  let share = 0.15;
  const folder = breaking(whole, chance, () => share);
  const first = await freshDesk(seed * 10);
  await commitChanges(first, { code: 'deed: collection set up', params: { name: 'Garden' } }, [
    { thing: first.collection, kind: 'collection', within: first.collection, body: { name: 'Garden' } },
  ]);
  await aWork(first, { title: 'Heron', number: '1', areas: [1, 2] });
  await joinFolder(first, whole, shared);
  const desks = [first, await freshDesk(seed * 10 + 1), await freshDesk(seed * 10 + 2)];
  for (const desk of desks.slice(1)) await joinFolder(desk, whole, shared);
  // From here on the network comes and goes.
  for (const desk of desks) await attempt(() => joinFolder(desk, folder, shared));
  for (let n = 0; n < 40; n++) {
    const desk = oneOf(desks, chance)!;
    if (chance() < 0.35) await step(desk);
    else await oneOf(deeds, chance)!(desk, chance, n);
  }
  share = 0;
  for (let round = 0; round < 3; round++)
    for (const desk of desks) {
      const came = await attempt(() => joinFolder(desk, whole, shared));
      expect(came, `seed ${seed}`).toMatchObject({ ok: true });
    }
  const [survey, photos] = [await surveyOf(first), (await first.store.photosHere()).sort()];
  const erased = await first.store.erased();
  for (const desk of desks) {
    expect(await surveyOf(desk), `seed ${seed}`).toBe(survey);
    const living = new Set((await desk.store.ofKind('photo')).map(({ thing }) => thing));
    const here = (await desk.store.photosHere()).filter((hash) => living.has(`photo/${hash}`)).sort();
    expect(here, `seed ${seed}`).toEqual(photos.filter((hash) => living.has(`photo/${hash}`)));
    expect(here.length, `seed ${seed}: every living photo is on every tablet`).toBe(living.size);
    await desk.store.checkCounts();
  }
  for (const { name } of await whole.list('photos')) expect(erased.hashes.has(name.slice(0, 64))).toBe(false);
  for (const { name } of await whole.list(''))
    if (name !== 'photos')
      for (const file of await whole.list(name)) {
        const said = new TextDecoder().decode(await whole.get(`${name}/${file.name}`));
        for (const thing of erased.names.keys())
          expect(said.includes(`"thing":"${thing}"`), `seed ${seed}`).toBe(false);
      }
  for (const desk of desks) desk.store.close();
};

test(`three tablets with a network that breaks, ${runs} times at random: all end with the same bytes and photos, nothing erased stays`, async () => {
  const from = Number(process.env.STEP_SEED ?? 1);
  for (let seed = from; seed < from + runs; seed++) await oneHistory(seed);
}, 3_600_000);
