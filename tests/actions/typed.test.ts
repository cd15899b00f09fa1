import { afterEach, describe, expect, test, vi } from 'vitest';
import {
  acceptImport,
  addSurveyor,
  type Desk,
  eraseName,
  forgetTyped,
  holdTyped,
  openSurveyFile,
  prepareSurvey,
  typedAt,
  typedNotKept,
} from '../../src/actions';
import { failAt } from '../device/store/failAt';
import { aWork, done, freshDesk } from '../screens/deskwork';

afterEach(() => vi.restoreAllMocks());

const typed = (note: string, at = '2026-11-26T14:05:00.000+00:00') => ({
  at,
  where: '/works',
  title: 'A sheet',
  values: { note, rows: [{ name: 'Ann Lee' }], day: '2026-11-26', chosen: undefined },
});

describe('What is typed and not kept', () => {
  test('is there again as it was, by form and thing, and gone once it was kept', async () => {
    const desk = await freshDesk();
    await done(holdTyped(desk, 'bid new campaign/1', typed('Lift by crane')));
    expect(await typedAt(desk, 'bid new campaign/1')).toEqual(typed('Lift by crane'));
    expect(await typedAt(desk, 'bid new campaign/2')).toBeUndefined();
    await done(forgetTyped(desk, 'bid new campaign/1'));
    expect(await typedAt(desk, 'bid new campaign/1')).toBeUndefined();
    expect(await desk.store.metas('typed ')).toEqual([]);
  });

  test('ends with the last letter, however quickly they come, and a keeping right behind them is not undone by them', async () => {
    const desk = await freshDesk();
    const letters = [...'A long sentence'].map((_, i) => 'A long sentence'.slice(0, i + 1));
    await Promise.all(letters.map((text) => holdTyped(desk, 'a', typed(text))));
    expect((await typedAt(desk, 'a'))?.values.note).toBe('A long sentence');
    void holdTyped(desk, 'a', typed('And more'));
    await forgetTyped(desk, 'a');
    expect(await typedAt(desk, 'a')).toBeUndefined();
  });

  test('is no entry, moves no figure and leaves in no file', async () => {
    const desk = await freshDesk();
    await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    const before = [(await desk.store.allEntries()).length, [...desk.store.allHeads()]];
    await done(holdTyped(desk, 'a', typed('Nobody else reads this')));
    expect([(await desk.store.allEntries()).length, [...desk.store.allHeads()]]).toEqual(before);
    const { prepared } = await done(prepareSurvey(desk));
    expect(new TextDecoder().decode(prepared.bytes)).not.toContain('Nobody else');
  });

  test('is listed, the latest first, and no longer once it is discarded', async () => {
    const desk = await freshDesk();
    await done(holdTyped(desk, 'a', typed('one')));
    await done(holdTyped(desk, 'b', typed('two', '2026-11-27T09:00:00.000+00:00')));
    const list = typedNotKept(desk);
    const places = () => list.get()?.map(({ place }) => place);
    list.subscribe(() => undefined);
    await vi.waitFor(() => expect(places()).toEqual(['b', 'a']));
    await done(forgetTyped(desk, 'b'));
    await vi.waitFor(() => expect(places()).toEqual(['a']));
  });

  test('that the device has no room for is told, and nothing breaks', async () => {
    const desk = await freshDesk();
    failAt(1);
    expect(await holdTyped(desk, 'a', typed('Too much'))).toMatchObject({
      ok: false,
      reason: { code: 'store failed' },
    });
  });

  test('in a tab that only reads is not held, and that is told', async () => {
    const desk = await freshDesk();
    desk.store.close();
    expect(await holdTyped(desk, 'a', typed('x'))).toMatchObject({ ok: false, reason: { code: 'reload needed' } });
    expect(await typedAt(desk, 'a')).toBeUndefined();
  });
});

describe('A name erased for good', () => {
  const named = async (seed: number): Promise<{ desk: Desk; surveyor: string }> => {
    const desk = await freshDesk(seed);
    const { surveyor } = await done(addSurveyor(desk, { role: 'Steward', name: 'Ann Lee' }));
    return { desk, surveyor };
  };
  const fileOf = async (desk: Desk) => {
    const { prepared } = await done(prepareSurvey(desk));
    return new File([prepared.bytes], prepared.name);
  };
  const carryIn = async (desk: Desk, file: File) => {
    const opened = await openSurveyFile(desk, file);
    if (!opened.ok) throw new Error(JSON.stringify(opened));
    return done(acceptImport(desk, opened.preview));
  };

  test('goes from what was typed and not kept too, whatever else of it is left standing', async () => {
    const { desk, surveyor } = await named(11);
    await done(holdTyped(desk, 'a', typed('As ann  lee says; Anneleen does not')));
    await done(eraseName(desk, surveyor, { reason: 'Asked for', alsoIn: [] }));
    expect((await typedAt(desk, 'a'))?.values).toMatchObject({
      note: 'As Steward says; Anneleen does not',
      rows: [{ name: 'Steward' }],
      day: '2026-11-26',
    });
  });

  test('goes there on the other tablet as well, when the erasure comes in', async () => {
    const { desk, surveyor } = await named(12);
    const other = await freshDesk(13);
    await carryIn(other, await fileOf(desk));
    await done(holdTyped(other, 'a', typed('Ann Lee again')));
    await done(eraseName(desk, surveyor, { reason: 'Asked for', alsoIn: [] }));
    await carryIn(other, await fileOf(desk));
    expect(JSON.stringify(await other.store.metas(''))).not.toContain('Ann Lee');
    expect((await typedAt(other, 'a'))?.values.note).toBe('Steward again');
  });
});
