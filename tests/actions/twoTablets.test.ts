import { describe, expect, test } from 'vitest';
import {
  acceptImport,
  commitChanges,
  type Desk,
  editSculpture,
  openSurveyFile,
  prepareSurvey,
  sayOne,
  settle,
} from '../../src/actions';
import { scoreRound } from '../../src/engine/condition';
import { findingsCsv } from '../../src/engine/exchange';
import { gather, nameOf, roundsThatMayBeOne } from '../../src/engine/record';
import { aRound, aWork, done, freshDesk, type SeenIn, type Work } from '../screens/deskwork';

const fileOf = async (desk: Desk): Promise<File> => {
  const { prepared } = await done(prepareSurvey(desk));
  return new File([prepared.bytes], prepared.name);
};
const carryIn = async (desk: Desk, file: File) => {
  const opened = await openSurveyFile(desk, file);
  if (!opened.ok) throw new Error(JSON.stringify(opened));
  return done(acceptImport(desk, opened.preview));
};
/** Each opens the other's file. */
const meet = async (a: Desk, b: Desk) => {
  const [fromA, fromB] = [await fileOf(a), await fileOf(b)];
  await carryIn(a, fromB);
  await carryIn(b, fromA);
  expect(await (await fileOf(a)).text()).toBe(await (await fileOf(b)).text());
};
const recordOf = async (desk: Desk, { sculpture }: Work) => {
  const record = gather(await desk.store.within(sculpture));
  if (!record) throw new Error('not here');
  return record;
};
const score = async (desk: Desk, work: Work, round: string) => scoreRound(await recordOf(desk, work), round);
const rowsOf = async (desk: Desk) =>
  new TextDecoder()
    .decode(findingsCsv(await desk.store.allEntries()))
    .trim()
    .split('\r\n')
    .slice(1);

const two = async (seed: number) => {
  const a = await freshDesk(seed);
  await done(
    commitChanges(a, { code: 'deed: collection renamed', params: {} }, [
      { thing: a.collection, kind: 'collection', within: a.collection, body: { name: 'Garden' } },
    ]),
  );
  const work = await aWork(a, { title: 'Heron', number: '1', areas: [1, 2] });
  const b = await freshDesk(seed + 1);
  await carryIn(b, await fileOf(a));
  return { a, b, work };
};

/** The visits and findings of a round that is there, as another pair of eyes has them. */
const alsoSeen = async (desk: Desk, work: Work, round: string, share: number) => {
  const zone = work.zones[0] ?? '';
  const where = { sculpture: work.sculpture, round, zone };
  const coverage = { value: share, low: share * 0.8, high: share * 1.2, method: 'ladder' as const };
  const body = {
    ...where,
    kind: 'green-spots',
    origin: 'metal' as const,
    severity: 'moderate' as const,
    activity: 'active' as const,
    coverage,
  };
  const within = work.sculpture;
  await done(
    commitChanges(desk, { code: 'deed: zone left', params: {} }, [
      { thing: nameOf.visit(round, zone), kind: 'visit', within, body: { ...where, zoneVersion: 1, state: 'found' } },
      { thing: nameOf.finding(round, zone, 'green-spots', 'metal'), kind: 'finding', within, body },
    ]),
  );
};

describe('Two tablets that record the same visits apart', () => {
  test('make two versions of one finding, never two findings: rows, areas and the score count it once', async () => {
    const { a, b, work } = await two(1);
    const round = await aRound(a, work, '2026-05-12', []);
    await carryIn(b, await fileOf(a));
    await alsoSeen(a, work, round, 0.03);
    await alsoSeen(b, work, round, 0.1);
    const alone = [await score(a, work, round), await score(b, work, round)];
    await meet(a, b);
    for (const desk of [a, b]) {
      const record = await recordOf(desk, work);
      expect(record.findings).toHaveLength(1);
      expect(record.visits).toHaveLength(1);
      expect(record.unsettled).toEqual([
        nameOf.finding(round, work.zones[0] ?? '', 'green-spots', 'metal'),
        nameOf.visit(round, work.zones[0] ?? ''),
      ]);
      expect(await rowsOf(desk)).toHaveLength(1);
      const both = await score(desk, work, round);
      // The worse of the two stands meanwhile: as on the tablet that saw more, not worse than either.
      expect(both.value).toBe(Math.min(...alone.map((one) => one.value ?? Number.NaN)));
      expect(both.active).toEqual(alone[1]?.active);
      expect(both.seenShare).toBe(alone[0]?.seenShare);
    }
    expect(await score(a, work, round)).toEqual(await score(b, work, round));
  });

  test('settled on one and carried, the number is that of the version chosen, on both', async () => {
    const { a, b, work } = await two(11);
    const round = await aRound(a, work, '2026-05-12', []);
    await carryIn(b, await fileOf(a));
    await alsoSeen(a, work, round, 0.03);
    const alone = await score(a, work, round);
    await alsoSeen(b, work, round, 0.1);
    await meet(a, b);
    for (const thing of (await recordOf(a, work)).unsettled) {
      const heads = (await a.store.current(thing))?.heads ?? [];
      const mine = (await a.store.entriesOf(thing)).find((e) => heads.includes(e.id) && e.device === a.store.device);
      await done(settle(a, thing, { version: mine?.id ?? '' }));
    }
    await carryIn(b, await fileOf(a));
    for (const desk of [a, b]) {
      expect((await recordOf(desk, work)).unsettled).toEqual([]);
      expect((await score(desk, work, round)).value).toBe(alone.value);
    }
  });
});

describe('Two tablets that begin the same round apart', () => {
  const apart = async (seed: number, onA: readonly SeenIn[], onB: readonly SeenIn[]) => {
    const { a, b, work } = await two(seed);
    const rounds = [await aRound(a, work, '2026-05-12', onA), await aRound(b, work, '2026-05-13', onB)] as const;
    const alone = [await score(a, work, rounds[0]), await score(b, work, rounds[1])] as const;
    await meet(a, b);
    return { a, b, work, rounds, alone };
  };

  test('are asked whether it is one round; until then each round stands for itself, and none is added to the other', async () => {
    const { a, b, work, rounds, alone } = await apart(
      21,
      [{ 'green-spots': 0.03 }, 'nothing'],
      [{ 'green-spots': 0.1 }, 'nothing'],
    );
    for (const desk of [a, b]) {
      expect(roundsThatMayBeOne(await recordOf(desk, work))).toHaveLength(1);
      expect((await recordOf(desk, work)).rounds.map((r) => r.thing)).toEqual([...rounds]);
      for (const [i, round] of rounds.entries()) expect((await score(desk, work, round)).value).toBe(alone[i]?.value);
    }
  });

  test('and say it is one: each zone, each finding and each square metre counts once, on both tablets', async () => {
    const { a, b, work, rounds, alone } = await apart(
      31,
      [{ 'green-spots': 0.03 }, 'nothing'],
      [{ 'green-spots': 0.1 }, 'nothing'],
    );
    await done(sayOne(a, rounds[0], rounds[1]));
    await carryIn(b, await fileOf(a));
    for (const desk of [a, b]) {
      const record = await recordOf(desk, work);
      expect(record.rounds).toHaveLength(1);
      expect(record.visits).toHaveLength(2);
      expect(record.findings).toHaveLength(1);
      expect(await rowsOf(desk)).toHaveLength(1);
      const one = await score(desk, work, record.rounds[0]?.thing ?? '');
      expect(one.value).toBe(alone[1].value);
      expect(one.active).toEqual(alone[1].active);
      expect(one.seenShare).toBe(1);
    }
  });

  test('each having walked one half: together they have seen the whole, and what each saw stands', async () => {
    const { a, work, rounds } = await apart(
      41,
      [{ 'green-spots': 0.03 }],
      [undefined as never, { 'black-crust': 0.05 }],
    );
    await done(sayOne(a, rounds[0], rounds[1]));
    const record = await recordOf(a, work);
    expect([record.visits.length, record.findings.length, record.unsettled.length]).toEqual([2, 2, 0]);
    const together = await score(a, work, record.rounds[0]?.thing ?? '');
    expect(together.seenShare).toBe(1);
    const whole = await freshDesk(43);
    const same = await aWork(whole, { title: 'Heron', number: '1', areas: [1, 2] });
    const walked = await aRound(whole, same, '2026-05-12', [{ 'green-spots': 0.03 }, { 'black-crust': 0.05 }]);
    expect(together.value).toBe((await score(whole, same, walked)).value);
  });
});

describe('A copied tablet', () => {
  test('is found out when the two meet: it gets a name of its own, is told, and both records stay', async () => {
    const { a, b, work } = await two(51);
    // The copy: the same store under the same device name, as a backup laid back on a second tablet makes it.
    const copy = await freshDesk(53);
    await carryIn(copy, await fileOf(a));
    const original = a.store.device;
    const twin = { ...(await copy.store.meta<Record<string, unknown>>('self')), device: original, n: a.store.made };
    await copy.store.setMeta('self', twin);
    await done(editSculpture(a, work.sculpture, { note: 'as the one says' }));
    await done(editSculpture(copy, work.sculpture, { note: 'as the other says' }));
    const written = await copy.store.entriesOf(work.sculpture);
    expect(written.some((e) => e.device === original && e.body.note === 'as the other says')).toBe(true);
    expect(await carryIn(a, await fileOf(copy))).toMatchObject({ copiedTablet: true });
    expect(a.store.device).not.toBe(original);
    expect(a.store.notes.map((n) => n.code)).toContain('copied tablet');
    expect((await a.store.current(work.sculpture))?.heads).toHaveLength(2);
    await done(editSculpture(a, work.sculpture, { note: 'after' }));
    const last = (await a.store.entriesOf(work.sculpture)).find((e) => e.body.note === 'after');
    expect([last?.device, last?.n]).toEqual([a.store.device, 1]);
    await carryIn(b, await fileOf(a));
    expect(await (await fileOf(b)).text()).toBe(await (await fileOf(a)).text());
  });
});
