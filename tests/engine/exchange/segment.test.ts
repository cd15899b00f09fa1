import { describe, expect, it } from 'vitest';
import {
  fitTogether,
  idsSpokenOf,
  readSegment,
  readSurvey,
  writeSegment,
  writeSurvey,
} from '../../../src/engine/exchange';
import type { Entry } from '../../../src/engine/record';
import { collection, first, sculpture, uuid } from '../../files/entries';
import { erasure } from '../../files/erasures';
import { smallSurvey } from '../../files/smallSurvey';

const small = smallSurvey().entries;
const titled = (n: number, title: string, replaces: string[] = []): Entry =>
  first(n, sculpture, 'sculpture', { number: '1', title }, { within: sculpture, replaces });
const [one, two, three] = [titled(500, 'One'), titled(501, 'Two', [uuid(500)]), titled(502, 'Three', [uuid(501)])];
const here = (...entries: Entry[]) => new Map(entries.map((entry) => [entry.id, entry]));
const paths = (of: readonly { path: string }[]) => of.map(({ path }) => path);

describe('A file of a shared folder', () => {
  it('comes back as it went, and is the same bytes in whatever order its entries came', () => {
    const bytes = writeSegment(collection, small);
    expect(readSegment(bytes)).toEqual({
      ok: true,
      collection,
      entries: [...small].sort((a, b) => (a.id < b.id ? -1 : 1)),
    });
    expect(writeSegment(collection, [...small].reverse())).toEqual(bytes);
  });

  it('is no survey, and a survey is no such file: one is never opened for the other', () => {
    expect(readSurvey(writeSegment(collection, small))).toMatchObject({
      ok: false,
      problems: [{ code: 'not a survey' }],
    });
    expect(readSegment(writeSurvey(collection, small)).ok).toBe(false);
  });

  it('may build on entries that are in another file', () => {
    expect(readSegment(writeSegment(collection, [three!])).ok).toBe(true);
  });

  it('with any one byte changed, or cut anywhere, is refused, or says exactly the same', () => {
    const whole = writeSegment(collection, [one!, two!]);
    const same = JSON.stringify(readSegment(whole));
    let refused = 0;
    for (let at = 0; at < whole.length; at++)
      for (const changed of [whole.slice(0, at), whole.with(at, (whole[at] ?? 0) ^ 1), whole.with(at, 0x20)]) {
        const read = readSegment(changed as Uint8Array<ArrayBuffer>);
        if (read.ok) expect(JSON.stringify(read), `byte ${at}`).toBe(same);
        else refused++;
      }
    expect(refused).toBeGreaterThan(whole.length * 2.9);
  });
});

describe('Files that are to be united with what is here', () => {
  it('each is taken whole where all it replaces is here or in another of them, in any order', () => {
    const segments = [
      { path: 'c', entries: [three!] },
      { path: 'b', entries: [two!] },
    ];
    const { fitting, fresh, notFitting } = fitTogether(segments, here(one!));
    expect([paths(fitting), fresh.map(({ id }) => id), notFitting]).toEqual([['c', 'b'], [three!.id, two!.id], []]);
  });

  it('one that builds on what is missing waits, and so does what builds on it', () => {
    const segments = [
      { path: 'c', entries: [three!, titled(510, 'Apart')] },
      { path: 'b', entries: [two!] },
      { path: 'd', entries: [titled(511, 'Alone')] },
    ];
    const { fitting, notFitting } = fitTogether(segments, here());
    expect(paths(fitting)).toEqual(['d']);
    expect(notFitting.map(({ path, waits }) => [path, waits]).sort()).toEqual([
      ['b', true],
      ['c', true],
    ]);
  });

  it('an entry that replaces an erased one waits for nothing', () => {
    const gone = erasure(520, { of: 'name', entries: [uuid(500)] });
    expect(fitTogether([{ path: 'b', entries: [two!] }], here(gone)).notFitting).toEqual([]);
    expect(fitTogether([{ path: 'b', entries: [two!, gone] }], here()).notFitting).toEqual([]);
  });

  it('the same entry in two files is taken once; with another content the file is left, and what is here stays', () => {
    const other = titled(500, 'Else');
    const twice = fitTogether(
      [
        { path: 'a', entries: [one!] },
        { path: 'b', entries: [one!, two!] },
      ],
      here(),
    );
    expect([twice.fresh.length, paths(twice.fitting)]).toEqual([2, ['a', 'b']]);
    for (const found of [
      fitTogether([{ path: 'b', entries: [other] }], here(one!)),
      fitTogether(
        [
          { path: 'a', entries: [one!] },
          { path: 'b', entries: [other] },
        ],
        here(),
      ),
    ]) {
      expect(found.notFitting).toMatchObject([{ path: 'b', waits: false, problem: { code: 'one id, two contents' } }]);
      expect(found.fresh).not.toContain(other);
    }
  });

  it('replacing in a circle, or across things, is never united, however the entries are spread over files', () => {
    const [x, y] = [titled(530, 'X', [uuid(531)]), titled(531, 'Y', [uuid(530)])];
    const circle = fitTogether(
      [
        { path: 'x', entries: [x!] },
        { path: 'y', entries: [y!] },
      ],
      here(),
    );
    expect([circle.fresh, circle.notFitting.length]).toEqual([[], 2]);
    const zone = small.find(({ kind }) => kind === 'zone')!;
    const across = fitTogether([{ path: 'a', entries: [titled(540, 'A', [zone.id])] }], here(zone));
    expect(across.notFitting).toMatchObject([{ waits: false, problem: { code: 'replaces across things' } }]);
  });

  it('asks for every entry it has to judge by', () => {
    expect(idsSpokenOf([{ path: 'c', entries: [three!] }]).sort()).toEqual([uuid(501), uuid(502)]);
  });
});
