import { expect, test, vi } from 'vitest';
import {
  addSurveyor,
  commitChanges,
  type Desk,
  eyeCheckUnderWay,
  eyesOf,
  lastDeed,
  leaveEyeCheck,
  patchesInCheck,
  type Question,
  removeEyeCheck,
  sayPatch,
  sculptureRecordOf,
  startEyeCheck,
  takeBackPatch,
  undoLast,
} from '../../src/actions';
import { nameOf } from '../../src/engine/record';
import { ladderStepOf } from '../../src/engine/trade';
import { open, surroundings } from '../device/store/around';
import { aRound, aWork, done, freshDesk } from '../screens/deskwork';

const answered = async <T>(question: Question<T>, is: (value: T) => boolean = () => true): Promise<T> => {
  const leave = question.subscribe(() => undefined);
  await expect.poll(() => question.get() !== undefined && is(question.get() as T)).toBe(true);
  const value = question.get() as T;
  leave();
  return value;
};

const onLadder = (share: number) => {
  const { value, low, high } = ladderStepOf(share);
  return { value, low, high, method: 'ladder' as const };
};

const truths = [0.005, 0.02, 0.03, 0.05, 0.07, 0.09, 0.12, 0.2, 0.3, 0.4, 0.5, 0.7];

/** Says every patch, at three times what is there. */
const check = async (desk: Desk, surveyor: string, upTo = truths.length) => {
  await done(startEyeCheck(desk, surveyor));
  let made: string | undefined;
  for (const truth of truths.slice(0, upTo))
    ({ made } = await done(sayPatch(desk, surveyor, { truth, said: onLadder(Math.min(0.95, truth * 3)) })));
  return made;
};

const rerated = (
  desk: Desk,
  round: string,
  work: { sculpture: string; zones: readonly string[] },
  zone: number,
  to: number,
) =>
  done(
    commitChanges(
      desk,
      { code: 'deed: zone asked again', params: { letter: 'A', round, zone: work.zones[zone] ?? '' } },
      [
        {
          thing: nameOf.rerating(round, work.zones[zone] ?? ''),
          kind: 'rerating',
          within: work.sculpture,
          body: {
            sculpture: work.sculpture,
            round,
            zone: work.zones[zone] ?? '',
            ratings: [{ kind: 'even-green-film', origin: 'metal', first: onLadder(0.2), coverage: onLadder(to) }],
          },
        },
      ],
    ),
  );

test('twelve patches make one check in one deed, and Undo takes the whole of it back', async () => {
  const desk = await freshDesk(41);
  const { surveyor } = await done(addSurveyor(desk, { role: 'Steward' }));
  const made = await check(desk, surveyor);
  expect(made).toMatch(/^eyeCheck\//);
  const { checks, eyes } = await answered(eyesOf(desk), (known) => known.checks.length === 1);
  expect(checks[0]?.body).toMatchObject({ surveyor, date: '2026-10-15' });
  expect(checks[0]?.body.patches).toHaveLength(patchesInCheck);
  expect(eyes[surveyor]?.curve?.shown).toBe(true);
  expect((await answered(lastDeed(desk)))?.name.code).toBe('deed: eye check made');
  await done(undoLast(desk));
  expect((await answered(eyesOf(desk), (known) => known.checks.length === 0)).eyes).toEqual({});
  desk.store.close();
});

test('what was said so far lies on the device after a restart, and is gone once the check is made or begun anew', async () => {
  const desk = await freshDesk(42);
  const { surveyor } = await done(addSurveyor(desk, { role: 'Steward' }));
  await check(desk, surveyor, 5);
  const at = await answered(eyeCheckUnderWay(desk, surveyor), (v) => v?.patches.length === 5);
  expect(await desk.store.meta(`eye check ${surveyor}`)).toEqual(at);
  await done(takeBackPatch(desk, surveyor));
  expect((await answered(eyeCheckUnderWay(desk, surveyor), (v) => v?.patches.length === 4))?.seed).toBe(at?.seed);
  await done(startEyeCheck(desk, surveyor));
  const anew = await answered(eyeCheckUnderWay(desk, surveyor), (v) => v?.patches.length === 0);
  expect(anew?.seed).not.toBe(at?.seed);
  await done(leaveEyeCheck(desk, surveyor));
  expect(await answered(eyeCheckUnderWay(desk, surveyor), (v) => v === null)).toBeNull();
  expect((await answered(eyesOf(desk))).checks).toEqual([]);
  desk.store.close();
});

test('nobody can judge a patch of a check that was not begun, nor begin one for somebody who is not here', async () => {
  const desk = await freshDesk(43);
  const { surveyor } = await done(addSurveyor(desk, { role: 'Steward' }));
  const outcome = await sayPatch(desk, surveyor, { truth: 0.2, said: onLadder(0.2) });
  expect(outcome).toMatchObject({ ok: false, reason: { code: 'no eye check under way' } });
  expect(await startEyeCheck(desk, 'surveyor/gone')).toMatchObject({ ok: false, reason: { code: 'not here' } });
  expect(await takeBackPatch(desk, surveyor)).toMatchObject({ ok: false, reason: { code: 'nothing to undo' } });
  desk.store.close();
});

test('a check that does not count is removed, and the eye is as little known as before', async () => {
  const desk = await freshDesk(44);
  const { surveyor } = await done(addSurveyor(desk, { role: 'Steward' }));
  const made = (await check(desk, surveyor)) ?? '';
  await answered(eyesOf(desk), (known) => known.checks.length === 1);
  await done(removeEyeCheck(desk, made));
  expect((await answered(eyesOf(desk), (known) => known.checks.length === 0)).eyes).toEqual({});
  desk.store.close();
});

test('a zone asked again in one work makes the eye known in the records of all works of that surveyor', async () => {
  const desk = await freshDesk(45);
  const { surveyor } = await done(addSurveyor(desk, { role: 'Steward' }));
  const one = await aWork(desk, { title: 'One', number: '1', areas: [1, 1] });
  const two = await aWork(desk, { title: 'Two', number: '2', areas: [1] });
  const seen = [{ 'even-green-film': 0.2 }, { 'even-green-film': 0.2 }];
  const round = await aRound(desk, one, '2026-05-12', seen, { round: { surveyor } });
  await aRound(desk, two, '2026-05-13', seen.slice(0, 1), { round: { surveyor } });
  const before = await answered(sculptureRecordOf(desk, two.sculpture));
  expect(before?.eyes).toEqual({});
  await rerated(desk, round, one, 0, 0.7);
  const after = await answered(sculptureRecordOf(desk, two.sculpture), (r) => r !== before);
  expect(after?.eyes[surveyor]?.pairs).toBe(1);
  expect(after?.eyes[surveyor]?.sd).toBeGreaterThan(0.3);
  desk.store.close();
});

test('a round is walked without the collection being read for eyes: only what was asked again in the work that changed', async () => {
  const desk = await freshDesk(46);
  const { surveyor } = await done(addSurveyor(desk, { role: 'Steward' }));
  const one = await aWork(desk, { title: 'One', number: '1', areas: [1, 1] });
  const two = await aWork(desk, { title: 'Two', number: '2', areas: [1] });
  const round = await aRound(desk, one, '2026-05-12', [{ 'even-green-film': 0.2 }], { round: { surveyor } });
  await rerated(desk, round, one, 0, 0.3);
  await answered(eyesOf(desk), (known) => Object.keys(known.eyes).length === 1);
  const [ofKind, within] = [vi.spyOn(desk.store, 'ofKind'), vi.spyOn(desk.store, 'within')];
  const known = await answered(eyesOf(desk));
  await aRound(desk, two, '2026-05-13', [{ 'even-green-film': 0.3 }], { round: { surveyor: '' } });
  await answered(eyesOf(desk), () => within.mock.calls.length > 0);
  expect(ofKind).not.toHaveBeenCalled();
  expect(within.mock.calls.map(([name]) => name)).toEqual([two.sculpture]);
  expect((await answered(eyesOf(desk))).eyes[surveyor]).toEqual(known.eyes[surveyor]);
  desk.store.close();
});

test('an eye is known again after a restart, from the record alone', async () => {
  const desk = await freshDesk(47);
  const { surveyor } = await done(addSurveyor(desk, { role: 'Steward' }));
  await check(desk, surveyor);
  const { eyes } = await answered(eyesOf(desk), (known) => known.checks.length === 1);
  const { name } = desk.store;
  desk.store.close();
  const store = await open(name, surroundings(470));
  const again = { ...desk, store };
  expect((await answered(eyesOf(again))).eyes).toEqual(eyes);
  store.close();
});
