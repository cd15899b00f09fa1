import { describe, expect, it } from 'vitest';
import { thenAndNow } from '../../src/engine/change';
import { holdsOf } from '../../src/engine/hold';
import { lives } from '../../src/engine/reckoning';
import { assemble, type Entry, gather, idPart, type SculptureRecord } from '../../src/engine/record';
import { trendsOf } from '../../src/engine/trend';
import { seededSurvey } from '../files/seededSurvey';

const today = '2026-10-15';
const { entries } = seededSurvey({ works: 1, zonesEach: 7, rounds: 7, photos: 0, seed: 31 });

const recordOf = (all: readonly Entry[]): SculptureRecord => {
  const work = all.find(({ kind }) => kind === 'sculpture')?.thing;
  const record = gather([...assemble(all).values()].filter(({ within }) => within === work));
  if (!record) throw new Error('The survey has no work.');
  return record;
};

/** The same survey with the ids of its zones exchanged, last for first: what any sum must not see. */
const relabelled = (): { readonly record: SculptureRecord; readonly was: ReadonlyMap<string, string> } => {
  const ids = [...new Set(entries.filter(({ kind }) => kind === 'zone').map(({ thing }) => idPart(thing)))].sort();
  const text = ids.reduce((all, id, i) => all.replaceAll(id, `@${i}@`), JSON.stringify(entries));
  const turned = ids.reduce((all, _, i) => all.replaceAll(`@${i}@`, ids[ids.length - 1 - i] as string), text);
  return {
    record: recordOf(JSON.parse(turned)),
    was: new Map(ids.map((id, i) => [`zone/${ids[ids.length - 1 - i]}`, `zone/${id}`])),
  };
};

describe('Exchanging the names of zones', () => {
  const here = recordOf(entries);
  const { record: there, was } = relabelled();
  const back = <T>(value: T): T => {
    let text = JSON.stringify(value);
    [...was].forEach(([now], i) => {
      text = text.replaceAll(idPart(now), `@${i}@`);
    });
    [...was].forEach(([, then], i) => {
      text = text.replaceAll(`@${i}@`, idPart(then));
    });
    return JSON.parse(text);
  };
  /** Rounding may differ where a sum is taken in another order. */
  const rounded = (value: unknown): unknown =>
    JSON.parse(JSON.stringify(value, (_, x) => (typeof x === 'number' ? Number(x.toPrecision(9)) : x)));
  const byZone = <T extends { readonly zone: string }>(rows: readonly T[]): T[] =>
    [...rows].sort((a, b) => (a.zone < b.zone ? -1 : 1));

  it('changes no trend', () => {
    const [a, b] = [trendsOf(here), back(trendsOf(there))];
    expect(rounded(b.work)).toEqual(rounded(a.work));
    expect(rounded(byZone(b.zones))).toEqual(rounded(byZone(a.zones)));
  });

  it('changes no verdict', () => {
    const verdicts = (record: SculptureRecord) => {
      const [first, last] = [record.rounds[0]?.thing ?? '', record.rounds.at(-1)?.thing ?? ''];
      const { sculpture, findings } = thenAndNow(record, first, last);
      return {
        index: sculpture.index.verdict,
        green: sculpture.active.green.verdict,
        counts: ['worse', 'better', 'no sure change'].map(
          (v) => findings.filter(({ verdict }) => verdict === v).length,
        ),
        z: Number((sculpture.index.z ?? 0).toPrecision(9)),
      };
    };
    expect(verdicts(there)).toEqual(verdicts(here));
  });

  it('changes no hold, and no life told from them', () => {
    const [a, b] = [holdsOf(here, today), holdsOf(there, today)];
    expect(rounded(byZone(back(b)))).toEqual(rounded(byZone(a)));
    // The ranges are drawn from zones anew and hang on the order of the draws; what is fitted does not.
    const fitted = (zones: typeof a) =>
      lives([zones]).map(({ group, event, holds, ends, turnbull, fit }) => ({
        group,
        event,
        holds,
        ends,
        masses: turnbull?.masses,
        fit: fit && [fit.shape.value, fit.scale.value],
      }));
    expect(rounded(fitted(b))).toEqual(rounded(fitted(a)));
  });
});
