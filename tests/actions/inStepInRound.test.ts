import { expect, test } from 'vitest';
import {
  acceptImport,
  type Desk,
  editSculpture,
  editZone,
  joinFolder,
  leaveZone,
  openSurveyFile,
  photoForZone,
  prepareSurvey,
  startRound,
  step,
} from '../../src/actions';
import { inTurn } from '../../src/actions/inTurn';
import { memoryOf } from '../../src/actions/round/roundMemory';
import { memoryFolder } from '../../src/device/folder';
import { jpeg, tiff } from '../device/photo/camera';
import { aWork, done, freshDesk } from '../screens/deskwork';

const shared = { way: 'picked', name: 'shared' } as const;
const start = { type: 'annual', date: '2026-05-12', wet: 'dry', washed: 'before wash', ownEye: true } as const;

/** A round under way here, and another tablet that has named its zones otherwise meanwhile. */
const roundUnderWay = async (seed: number) => {
  const folder = memoryFolder();
  const a = await freshDesk(seed);
  const { sculpture, zones } = await aWork(a, { title: 'Heron', number: '1', areas: [1, 2, 3] });
  const { round } = await done(startRound(a, sculpture, start));
  await joinFolder(a, folder, shared);
  const b = await freshDesk(seed + 1);
  await joinFolder(b, folder, shared);
  await done(editSculpture(b, sculpture, { title: 'Grey heron' }));
  await done(editZone(b, zones[2]!, { name: 'crest' }));
  const memory = memoryOf(a, round);
  await memory.ready();
  const names = () => memory.get()?.record.zones.map(({ body }) => body.name);
  const states = () => memory.get()?.record.visits.map(({ body }) => body.state);
  return { a, b, zones, round, names, states };
};
const photo = new File([jpeg({ exif: tiff(true, {}), xmp: 'a' })], 'a.jpg', { type: 'image/jpeg' });
const settled = () => new Promise((go) => setTimeout(go, 20));

test('what comes by the folder in the middle of a round shows in it', async () => {
  const { a, b, zones, round, names, states } = await roundUnderWay(1);
  await done(leaveZone(a, round, zones[0]!, { how: 'nothing' }));
  for (const desk of [b, a]) await done(step(desk));
  await expect.poll(names).toContain('crest');
  expect(states()).toEqual(['nothing']);
});

test('and also where it lands while a photo is being kept: neither hides the other', async () => {
  const { a, b, zones, round, names, states } = await roundUnderWay(10);
  const preview = await fileOf(b, a);
  let go: () => void = () => undefined;
  const before = inTurn(a.store, () => new Promise<void>((end) => (go = end)));
  const arriving = acceptImport(a, preview);
  await settled();
  const keeping = photoForZone(a, round, zones[0]!, 'zone', photo);
  await settled();
  go();
  await Promise.all([before, done(arriving), done(keeping)]);
  await expect.poll(names).toContain('crest');
  await done(leaveZone(a, round, zones[1]!, { how: 'nothing' }));
  expect(states()).toEqual(['nothing']);
  expect(names()).toContain('crest');
});

const fileOf = async (from: Desk, to: Desk) => {
  const { prepared } = await done(prepareSurvey(from));
  const opened = await openSurveyFile(to, new File([prepared.bytes], prepared.name));
  if (!opened.ok) throw new Error(opened.reason.code);
  return opened.preview;
};
