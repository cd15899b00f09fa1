import { expect, test, vi } from 'vitest';
import type { Store } from '../../../src/device/store';
import { figuresInSteps, type Step } from '../../../src/device/workers/figures';
import { rowOf, type Standing } from '../../../src/device/workers/kept';
import { redrawsInSteps } from '../../../src/device/workers/redraws';
import { trendsInSteps } from '../../../src/device/workers/trends';
import { type BodyOf, type Entry, type KindOfThing, nameOf } from '../../../src/engine/record';
import { seededSurvey } from '../../files/seededSurvey';
import { openFresh } from '../store/around';
import { at } from '../store/batches';

const today = '2026-11-25';
const size = { works: 3, zonesEach: 6, rounds: 4, photos: 0, seed: 9, care: true as const };

const filled = async (seed: number) => {
  const { store } = await openFresh(seed);
  const { collection, entries } = seededSurvey(size);
  await store.takeIn(entries, { id: 'in', name: { code: 'in', params: {} }, at }, { collection });
  const works = [...new Set(entries.filter(({ kind }) => kind === 'sculpture').map(({ thing }) => thing))].sort();
  return { store, entries, works };
};

/** Runs the work as the page does, keeping each row before the next step. Gives what was told. */
const run = async (store: Store, steps: AsyncGenerator<Step, void>) => {
  const told: Step[] = [];
  const keys: string[] = [];
  for await (const step of steps) {
    told.push(step);
    if (!('rows' in step)) continue;
    await store.keepWorkedOut(step.rows);
    keys.push(...step.rows.map(([key]) => key));
  }
  return { told, keys };
};
const figures = (store: Store, day = today) =>
  run(store, figuresInSteps(store, { do: 'figures', collection: store.collection, today: day }));

const said = <K extends KindOfThing>(
  id: string,
  thing: string,
  kind: K,
  within: string,
  body: BodyOf<K>,
  over?: Entry,
) => ({
  entries: [
    {
      id,
      thing,
      kind,
      within,
      v: 1,
      at,
      by: '',
      deed: id,
      replaces: over ? [over.id] : [],
      body: body as Entry['body'],
    },
  ],
  deed: { id, name: { code: 'said', params: {} }, at },
});

test('figures of every work are worked out once; a second time nothing is read of any work and nothing comes', async () => {
  const { store, works } = await filled(1);
  const { told, keys } = await figures(store);
  expect(keys.filter((key) => key.startsWith('summary '))).toEqual(works.map((work) => rowOf.summary(work)));
  expect(told.filter((step) => 'all' in step)).toEqual(works.map((_, done) => ({ done, all: works.length })));
  expect((await store.meta<Standing>(rowOf.standing))?.words).toEqual(
    told.flatMap((step) => ('words' in step ? [step.words] : []))[0],
  );
  const reading = vi.spyOn(store, 'standing');
  expect((await figures(store)).keys).toEqual([rowOf.standing]);
  expect(reading).not.toHaveBeenCalled();
  store.close();
});

test('a change in one work makes only its own figures anew, as long as its holds stay as they were', async () => {
  const { store, entries, works } = await filled(2);
  await figures(store);
  const title = entries.find(({ thing }) => thing === works[1]) as Entry;
  await store.commit(said('n1', title.thing, 'sculpture', title.thing, { number: 'X', title: 'New' }, title));
  const reading = vi.spyOn(store, 'standing');
  const { keys } = await figures(store);
  expect(reading.mock.calls).toEqual([[works[1]]]);
  expect(new Set(keys.map((key) => key.slice(key.indexOf(' ') + 1)))).toEqual(new Set([works[1], rowOf.standing]));
  store.close();
});

test('another hold teaches all works something: their first passes stay, what rests on the lives is made anew', async () => {
  const { store, works } = await filled(3);
  await figures(store);
  const zone = (await store.within(works[0] as string, ['zone']))[0]?.thing as string;
  const look: BodyOf<'look'> = {
    sculpture: works[0] as string,
    zone,
    date: '2026-05-25',
    result: 'green',
    planned: true,
    wet: 'dry',
  };
  await store.commit(said('n2', nameOf.look('n2'), 'look', works[0] as string, look));
  const reading = vi.spyOn(store, 'standing');
  const { keys } = await figures(store);
  expect(reading.mock.calls).toEqual([[works[0]]]);
  expect(keys).toContain(rowOf.lives);
  expect(keys.filter((key) => key.startsWith('summary ')).length).toBe(works.length);
  expect(keys.filter((key) => key.startsWith('first '))).toEqual([rowOf.first(works[0] as string)]);
  const advice = await Promise.all(works.map((work) => store.meta<{ stamp: string }>(rowOf.advice(work))));
  const summaries = await Promise.all(works.map((work) => store.meta<{ content: string }>(rowOf.summary(work))));
  expect(
    advice.map((row, i) => row?.stamp.endsWith(` ${summaries[i]?.content}`)),
    'larger rows still belong to the row of the list',
  ).toEqual(works.map(() => true));
  store.close();
});

test('what the collection sets for itself makes every figure anew, and an import taken back brings the kept ones back', async () => {
  const { store, works } = await filled(4);
  await figures(store);
  const before = await store.metas(rowOf.summary(''));
  const rules = said('n3', nameOf.holdRules(store.collection), 'holdRules', store.collection, {
    version: 1,
    returnLevel: 0.1,
    chance: 0.5,
  });
  const [entry] = rules.entries;
  await store.takeIn([{ ...entry, device: 'elsewhere', n: 1 } as Entry], { ...rules.deed, id: 'arrived' });
  expect((await figures(store)).keys.filter((key) => key.startsWith('first ')).length).toBe(works.length);
  await store.takeOut('arrived');
  await figures(store);
  expect(await store.metas(rowOf.summary(''))).toEqual(before);
  store.close();
});

test('worked out by halves and left off, what was done is not done again', async () => {
  const { store, works } = await filled(5);
  const steps = figuresInSteps(store, { do: 'figures', collection: store.collection, today });
  let firsts = 0;
  for await (const step of steps) {
    if (!('rows' in step)) continue;
    await store.keepWorkedOut(step.rows);
    firsts++;
    if (firsts === 2) break;
  }
  const reading = vi.spyOn(store, 'standing');
  await figures(store);
  expect(reading.mock.calls).toEqual(works.slice(2).map((work) => [work]));
  store.close();
});

test('figures hold until the day that is said, and are the same on every day before it', async () => {
  const { store, works } = await filled(6);
  await figures(store);
  const key = rowOf.advice(works[0] as string);
  type Row = { readonly until: string | null; readonly value: unknown };
  const advice = (await store.meta<Row>(key))?.value;
  const kept = (await store.meta<Row>(rowOf.summary(works[0] as string))) as Row;
  expect(kept.until === null || kept.until > today).toBe(true);
  const days = ['2026-11-26', '2026-12-24', '2027-02-11', '2027-05-16', '2027-05-17', '2027-05-18', '2027-08-01'];
  for (const day of days) {
    const { store: fresh } = await filled(100 + days.indexOf(day));
    await figures(fresh, day);
    if (kept.until === null || day < kept.until) expect((await fresh.meta<Row>(key))?.value, day).toEqual(advice);
    fresh.close();
  }
  store.close();
});

test('the order is redrawn only from the figures it was asked for', async () => {
  const { store, works } = await filled(7);
  await figures(store);
  const stamps = await Promise.all(
    works.map(async (work) => [work, (await store.meta<{ stamp: string }>(rowOf.need(work)))?.stamp ?? ''] as const),
  );
  const asked = { do: 'firmness' as const, stamp: 'here', today };
  const { told, keys } = await run(store, redrawsInSteps(store, { ...asked, works: stamps }));
  expect(keys).toEqual([rowOf.firmness]);
  expect(told[0]).toMatchObject({ all: 1000 });
  const other = stamps.map(([work]) => [work, 'another'] as const);
  expect((await run(store, redrawsInSteps(store, { ...asked, works: other }))).told).toEqual([]);
  store.close();
});

test('the series of a work are kept under what they rest on', async () => {
  const { store, works } = await filled(8);
  await figures(store);
  const sculpture = works[0] as string;
  const { keys } = await run(
    store,
    trendsInSteps(store, { do: 'trends', collection: store.collection, sculpture, today }),
  );
  expect(keys).toEqual([rowOf.trends(sculpture)]);
  const [first, trends] = await Promise.all(
    [rowOf.first(sculpture), keys[0] ?? ''].map((key) => store.meta<{ stamp: string }>(key)),
  );
  expect(trends?.stamp).toBe(first?.stamp);
  store.close();
});
