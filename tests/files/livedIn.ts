import {
  addSculpture,
  addZone,
  closeRound,
  type Desk,
  keepPhoto,
  leaveZone,
  type Outcome,
  recordTreatment,
  removeZone,
  setPlace,
  setUpCollection,
  startRound,
  touchZone,
  undoLast,
} from '../../src/actions';
import { jpeg, tiff } from '../device/photo/camera';
import { smallSurvey } from './smallSurvey';

const done = async <T extends object>(outcome: Promise<Outcome<T>>): Promise<T> => {
  const came = await outcome;
  if (!came.ok) throw new Error(came.reason.code);
  return came;
};

/**
 * Something of everything a store holds, by the deeds a person does: works, a round ended and one left in the middle with touches, a photo, a
 * deed taken back, a thing removed, and another tablet's survey carried in with one entry at least of every kind.
 */
export const livedIn = async (desk: Desk): Promise<void> => {
  await done(setUpCollection(desk, { name: 'Quay walk', role: 'Curator', personName: 'Invented Person' }));
  const { sculpture } = await done(addSculpture(desk, { number: 'QW-01', title: 'Grey heron' }));
  await done(setPlace(desk, sculpture, 'By the lock'));
  const zones: string[] = [];
  for (const letter of ['A', 'B', 'C']) {
    const area = { m2: 1, low: 0.9, high: 1.1, method: 'typed' as const };
    const fields = { letter, name: `part ${letter}`, exposure: ['open'], reach: 'ground', substrate: 'bronze' };
    zones.push((await done(addZone(desk, sculpture, { ...fields, significance: 1, area, since: '2024-01-01' }))).zone);
  }
  const [a, b, c] = zones as [string, string, string];
  await done(removeZone(desk, c));
  await done(recordTreatment(desk, sculpture, { type: 'wax-cold', date: '2025-05-01', zones: [a] }));
  const begin = async (date: string) => {
    const setting = { type: 'annual', date, wet: 'dry', washed: 'before wash', ownEye: true } as const;
    return (await done(startRound(desk, sculpture, setting))).round;
  };
  const ended = await begin('2025-10-01');
  for (const zone of [a, b]) {
    await done(leaveZone(desk, ended, zone, { how: 'nothing' }));
  }
  await done(closeRound(desk, ended));
  const open = await begin('2026-10-01');
  await done(touchZone(desk, open, a, { do: 'group', group: 'green' }));
  await done(touchZone(desk, open, a, { do: 'kind', kind: 'green-spots', measure: 'area' }));
  const picture = new File([jpeg({ exif: tiff(true, {}), xmp: 'a' })], 'a.jpg', { type: 'image/jpeg' });
  await done(keepPhoto(desk, sculpture, picture, 'other'));
  await done(setPlace(desk, sculpture, 'By the bridge'));
  await done(undoLast(desk));
  const deed = { id: desk.newId(), name: { code: 'deed: survey carried in', params: { entries: 1 } }, at: desk.now() };
  await desk.store.takeIn(smallSurvey().entries, deed);
};
