import { describe, expect, test } from 'vitest';
import {
  addSculpture,
  addStation,
  type Change,
  commitChanges,
  type Desk,
  deskOn,
  photoSeriesOf,
  removePhotoFit,
  setPhotoFit,
  undoLast,
} from '../../src/actions';
import { fitBetween, pairsBetween } from '../../src/engine/photo';
import { type BodyOf, nameOf } from '../../src/engine/record';
import { openFresh } from '../device/store/around';
import { pairsOf, similar } from '../published/knownPairs';

const answer = async <T>(question: {
  subscribe(changed: () => void): () => void;
  get(): T | undefined;
}): Promise<T> => {
  let stop = () => {};
  const got = await new Promise<T>((resolve) => {
    const look = () => {
      const now = question.get();
      if (now !== undefined) resolve(now);
    };
    stop = question.subscribe(look);
    look();
  });
  stop();
  return got;
};

/** As the store holds them at this moment. */
const fitsOf = async (desk: Desk, sculpture: string) =>
  (await desk.store.within(sculpture, ['photoFit']))
    .filter(({ gone }) => !gone)
    .map(({ lead }) => ({ body: lead.body as BodyOf<'photoFit'> }));

const here = async () => {
  const { store, around } = await openFresh(3);
  let minute = 0;
  const desk: Desk = deskOn(store, {
    newId: around.newId,
    now: () => `2026-10-15T10:${String(minute++ % 60).padStart(2, '0')}:00.000+00:00`,
    today: () => '2026-10-15',
    surveyor: () => '',
  });
  const added = await addSculpture(desk, { number: '1', title: 'Grey heron' });
  if (!added.ok) throw new Error(added.reason.code);
  const { sculpture } = added;
  const photo = async (letter: string, body: Partial<BodyOf<'photo'>>) => {
    const sha256 = letter.repeat(64);
    const thing = nameOf.photo(sha256);
    const whole: BodyOf<'photo'> = { sculpture, sha256, mime: 'image/jpeg', bytes: 9, role: 'station', ...body };
    const change: Change = { thing, kind: 'photo', within: sculpture, body: whole };
    await commitChanges(desk, { code: 'deed: photo kept', params: {} }, [change]);
    return thing;
  };
  const one = await photo('a', { width: 4000, height: 3000, taken: '2025-05-01T10:00:00' });
  const other = await photo('b', { width: 3000, height: 4000, taken: '2026-05-01T10:00:00' });
  return { desk, sculpture, photo, one, other };
};
const pairs = pairsOf(similar, 5);
const why = (came: { ok: boolean; reason?: { code: string } }) => (came.ok ? 'done' : came.reason?.code);

describe('pairs of two photos', () => {
  test('are kept from the first on, and say how one lies on the other as soon as there are enough', async () => {
    const { desk, sculpture, one, other } = await here();
    await setPhotoFit(desk, { photo: one, onto: other, kind: 'similarity', pairs: pairs.slice(0, 1) });
    const [first] = await fitsOf(desk, sculpture);
    expect(first?.body.pairs).toHaveLength(1);
    await setPhotoFit(desk, { photo: one, onto: other, kind: 'similarity', pairs });
    const fits = await fitsOf(desk, sculpture);
    expect(fits[0]?.body).toMatchObject({
      size: { width: 4000, height: 3000 },
      ontoSize: { width: 3000, height: 4000 },
    });
    const there = fitBetween(fits, one, other);
    const back = fitBetween(fits, other, one);
    expect(there?.verdict).toBe('same');
    const [x = 0, y = 0] = back?.through(there?.through([0.3, 0.4]) ?? [0, 0]) ?? [];
    expect([x, y].map((n) => Number(n.toFixed(9)))).toEqual([0.3, 0.4]);
  });

  test('tapped the other way round take the place of the first: two photos have one fit', async () => {
    const { desk, sculpture, one, other } = await here();
    await setPhotoFit(desk, { photo: one, onto: other, kind: 'similarity', pairs });
    const turned = pairs.map(({ from, onto }) => ({ from: onto, onto: from }));
    await setPhotoFit(desk, { photo: other, onto: one, kind: 'affine', pairs: turned });
    const fits = await fitsOf(desk, sculpture);
    expect(fits).toHaveLength(1);
    expect(pairsBetween(fits, one, other)).toEqual({ kind: 'affine', pairs });
  });

  test('can be taken away, by the last pair or all at once, and brought back by Undo', async () => {
    const { desk, sculpture, one, other } = await here();
    await setPhotoFit(desk, { photo: one, onto: other, kind: 'similarity', pairs });
    await setPhotoFit(desk, { photo: one, onto: other, kind: 'similarity', pairs: [] });
    expect(await fitsOf(desk, sculpture)).toEqual([]);
    await undoLast(desk);
    expect(await fitsOf(desk, sculpture)).toHaveLength(1);
    expect(why(await removePhotoFit(desk, other, one))).toBe('done');
    expect(why(await removePhotoFit(desk, one, other))).toBe('nothing changed');
  });

  test('are refused of a photo on itself, of unknown size, or of another work', async () => {
    const { desk, photo, one, other } = await here();
    const laid = (a: string, b: string) => setPhotoFit(desk, { photo: a, onto: b, kind: 'similarity', pairs });
    expect(why(await laid(one, one))).toBe('photo laid on itself');
    expect(why(await laid(one, await photo('c', {})))).toBe('photo size not known');
    const added = await addSculpture(desk, { number: '2', title: 'Rope' });
    const strange = await photo('d', { sculpture: added.ok ? added.sculpture : '', width: 10, height: 10 });
    expect(why(await laid(other, strange))).toBe('not here');
  });
});

test('the photo of a side counts to the station it was taken from, oldest first', async () => {
  const { desk, sculpture, photo, other } = await here();
  const set = await addStation(desk, sculpture, { letter: 'A', aim: 'the beak' });
  const station = set.ok ? set.station : '';
  const taken = await photo('e', { station, width: 3000, height: 4000, taken: '2021-05-01T10:00:00' });
  const side: Change = {
    thing: nameOf.elevation('one'),
    kind: 'elevation',
    within: sculpture,
    body: { sculpture, side: 'west', photo: other, order: 1, station },
  };
  await commitChanges(desk, { code: 'deed: elevation added', params: { side: 'west' } }, [side]);
  const work = await answer(photoSeriesOf(desk, sculpture));
  expect(work?.series.map(({ photos }) => photos.map((row) => row.photo.thing))).toEqual([[taken, other]]);
  expect(await answer(photoSeriesOf(desk, nameOf.sculpture('gone')))).toBeNull();
});
