import { beforeAll, describe, expect, it } from 'vitest';
import { runCommand } from '../../src/command/runCommand';
import { scoredSurvey } from '../../src/command/scoredSurvey';
import { firstComparable, previousComparable, thenAndNow } from '../../src/engine/change';
import { writeSurvey } from '../../src/engine/exchange';
import { holdsOf } from '../../src/engine/hold';
import { nameOf, type SculptureRecord } from '../../src/engine/record';
import { trendsOf } from '../../src/engine/trend';
import { invented } from '../engine/change/invented';
import { demoDay, saltlamp } from '../engine/hold/saltlamp';
import { collection, first } from '../files/entries';
import { seededSurvey } from '../files/seededSurvey';
import { surveyOf } from './surveyOf';

const survey = surveyOf(saltlamp);
const asJson = (value: unknown) => JSON.parse(JSON.stringify(value));

/** Everything in it that is no JSON, or no sentence where one should stand, by where it is. */
const faultsIn = (value: unknown, at = ''): string[] => {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${at}: ${value}`];
  if (typeof value === 'string') return /\bNaN\b|Infinity|undefined|\[object/.test(value) ? [`${at}: ${value}`] : [];
  if (value === null || typeof value !== 'object') return [];
  if (value instanceof Map || value instanceof Set) return [`${at}: JSON has no ${value.constructor.name}`];
  const said = 'code' in value && 'params' in value ? (value as { says?: unknown }).says : 'no reason';
  const fault = typeof said === 'string' && said !== (value as { code?: string }).code ? [] : [`${at}: nothing said`];
  return [...fault, ...Object.entries(value).flatMap(([key, inner]) => faultsIn(inner, `${at}/${key}`))];
};

describe('what a survey comes to at a terminal', () => {
  let scored: ReturnType<typeof scoredSurvey>;
  beforeAll(() => {
    scored = scoredSurvey(survey, demoDay);
  });

  it('says for which day and with which seed, and what it found, in numbers and sentences JSON can hold', () => {
    expect(scored).toMatchObject({ today: demoDay, seed: scored.firmness.seed });
    for (const field of ['holds', 'lives', 'trends', 'changes'] as const) expect(scored[field]).not.toHaveLength(0);
    expect(scored.firmness.zones).not.toHaveLength(0);
    expect(faultsIn(scored)).toEqual([]);
  });

  it('is the same whatever order the entries come in', () => {
    expect(asJson(scoredSurvey({ ...survey, entries: [...survey.entries].reverse() }, demoDay))).toEqual(
      asJson(scored),
    );
  });

  it('tells the holds of every zone of every work, as the engine does', () => {
    const expected = saltlamp.flatMap((record) =>
      holdsOf(record, demoDay).map(({ zone, holds }) => [
        record.sculpture.thing,
        zone,
        holds.map(({ lower, upper, end }) => [lower, upper, end]),
      ]),
    );
    const told = scored.holds.map(({ sculpture, zone, holds }) => [
      sculpture,
      zone,
      holds.map(({ lower, upper, end }) => [lower, upper, end]),
    ]);
    const byZone = (a: unknown[], b: unknown[]) => String(a[1]).localeCompare(String(b[1]));
    expect(told.sort(byZone)).toEqual(expected.sort(byZone));
    expect(scored.lives.map(({ group }) => group)).toContain('all');
  });

  it('sets the latest round of each work against the last before it and against the first', () => {
    expect(scored.changes.map(({ sculpture }) => sculpture)).toEqual(scored.sculptures.map(({ id }) => id));
    for (const [i, { sculpture, sinceLast, sinceFirst }] of scored.changes.entries()) {
      const record = saltlamp.find((one) => one.sculpture.thing === sculpture) as SculptureRecord;
      const latest = record.rounds.at(-1)?.thing ?? '';
      const [last, start] = [previousComparable(record, latest).round, firstComparable(record, latest)];
      if (!last || !start) throw new Error('nothing to compare with');
      const verdicts = (earlier: string) =>
        thenAndNow(record, earlier, latest).zones.map(({ verdict, z }) => [verdict, z]);
      expect(sinceLast?.zones.map(({ verdict, z }) => [verdict, z])).toEqual(verdicts(last.thing));
      expect(sinceFirst?.zones.map(({ verdict, z }) => [verdict, z])).toEqual(verdicts(start.thing));
      expect(sinceFirst?.earlier.date).toBe(start.body.date);
      expect(scored.sculptures[i]?.change).toBe(sinceLast);
    }
  });

  it('follows each work and each of its zones over the rounds', () => {
    expect(scored.trends.map(({ sculpture }) => sculpture)).toEqual(scored.sculptures.map(({ id }) => id));
    for (const { sculpture, work, zones } of scored.trends) {
      const record = saltlamp.find((one) => one.sculpture.thing === sculpture) as SculptureRecord;
      const known = trendsOf(record);
      expect([work.index.trend.word, work.index.trend.p]).toEqual([
        known.work.index.trend.word,
        known.work.index.trend.p,
      ]);
      expect(work.index.points.map(({ day, value }) => [day, value])).toEqual(
        known.work.index.series.points.map(({ day, figure }) => [day, figure.value]),
      );
      expect(zones.map(({ zone }) => zone)).toEqual(known.zones.map(({ zone }) => zone));
    }
  });

  it('asks of each zone in the order how firm its place is', () => {
    expect(scored.firmness.zones.map(({ zone, place }) => [zone, place.value]).sort()).toEqual(
      scored.needs.zones.map(({ zone, rank }) => [zone, rank]).sort(),
    );
  });

  it.each(['1990-01-01', '2023-05-20', '9999-12-31'])('stands for any day, as odd as %s', (today) => {
    expect(faultsIn(scoredSurvey(survey, today))).toEqual([]);
  });

  it('speaks of the last day the survey tells of where no day is given', () => {
    const days = saltlamp.flatMap(({ rounds, looks, treatments }) =>
      [...rounds, ...looks, ...treatments].map(({ body }) => body.date),
    );
    expect(scoredSurvey(survey).today).toBe(days.sort().at(-1));
  });
});

describe('a work with little said of it', () => {
  const seen = { A: [{ cover: 0.1 }] } as const;
  const only = (rounds: Parameters<typeof invented>[0]['rounds']) =>
    scoredSurvey(surveyOf([invented({ zones: { A: {} }, rounds })]));

  it('has nothing to compare with after one round, and that is said', () => {
    const [change] = only([{ date: '2026-05-10', saw: seen }]).changes;
    expect(change).toMatchObject({ sinceLast: null, sinceFirst: null });
    expect(change?.notCompared.map(({ says }) => says)).toEqual([expect.stringMatching(/\./)]);
  });

  it('is not set against the first round again where that is the last before it', () => {
    const [change] = only([
      { date: '2025-05-10', saw: seen },
      { date: '2026-05-10', saw: seen },
    ]).changes;
    expect(change?.sinceLast?.earlier.date).toBe('2025-05-10');
    expect(change?.sinceFirst).toBeNull();
  });

  it('has no change, hold or agreement without a round', () => {
    const scored = only([]);
    expect(scored.changes).toEqual([
      { sculpture: expect.any(String), sinceLast: null, sinceFirst: null, notCompared: [] },
    ]);
    expect([scored.agreement, scored.firmness.zones]).toEqual([[], []]);
    expect(faultsIn(scored)).toEqual([]);
    // The day on which its only entries were written.
    expect(scored.today).toBe('2026-10-15');
  });

  it('does not trip over a survey without an entry', () => {
    const scored = scoredSurvey(surveyOf([]));
    expect(scored).toMatchObject({
      today: null,
      sculptures: [],
      holds: [],
      lives: [],
      trends: [],
      changes: [],
      agreement: [],
    });
  });
});

describe('a round two people did', () => {
  it('is told with what they agreed on and what lies apart', () => {
    const saw = (cover: number) =>
      ({ A: [{ cover }], B: [{ cover: 0.05 }], C: [{ cover: 0.3 }], D: 'nothing' }) as const;
    const zones = { A: {}, B: {}, C: {}, D: {} };
    const record = invented({
      zones,
      rounds: [
        { date: '2026-05-10', surveyor: 'surveyor/1', saw: saw(0.1) },
        { date: '2026-05-11', surveyor: 'surveyor/2', saw: saw(0.5) },
      ],
    });
    const { agreement } = scoredSurvey(surveyOf([record]));
    expect(agreement).toHaveLength(1);
    expect(agreement[0]).toMatchObject({
      sculpture: record.sculpture.thing,
      one: { date: '2026-05-10', surveyor: 'surveyor/1' },
      other: { date: '2026-05-11', surveyor: 'surveyor/2' },
      days: 1,
      zonesBoth: 4,
      coverage: { n: 3 },
    });
    expect(agreement[0]?.apart[0]).toMatchObject({ why: 'coverage', zone: record.zones[0]?.thing });
    expect(faultsIn(agreement)).toEqual([]);
  });
});

describe('an eye that is known', () => {
  it('is used for every figure of that surveyor', () => {
    const record = invented({
      zones: { A: {} },
      rounds: [{ date: '2026-05-10', surveyor: 'surveyor/1', saw: { A: [{ cover: 0.2 }] } }],
    });
    const said = (value: number) => ({ value, low: value, high: value, method: 'ladder' as const });
    const unsteady = first(
      5001,
      nameOf.eyeCheck('1'),
      'eyeCheck',
      {
        surveyor: 'surveyor/1',
        date: '2026-05-01',
        seed: 1,
        patches: [0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.06, 0.12, 0.22, 0.33, 0.44, 0.55].map((truth, i) => ({
          truth,
          said: said(i % 2 === 0 ? truth / 4 : Math.min(0.95, truth * 1.7)),
        })),
      },
      { within: collection },
    );
    const width = (more: Parameters<typeof surveyOf>[1]) => {
      const index = scoredSurvey(surveyOf([record], more)).sculptures[0]?.index;
      if (index?.low == null || index.high == null) throw new Error('no index');
      return index.high - index.low;
    };
    expect(width([unsteady])).toBeGreaterThan(1.3 * width([]));
  });
});

describe('survey score --today', () => {
  const { entries, collection: of } = seededSurvey({ works: 1, zonesEach: 2, rounds: 2, photos: 0, seed: 3 });
  const file = writeSurvey(of, entries);
  const run = (...words: string[]) => runCommand(words, () => file);
  const todayOf = (...words: string[]) => JSON.parse(String(run(...words).out)).today;

  it('may stand anywhere, with a space or an equals sign', () => {
    expect(todayOf('score', 'x', '--today', '2027-01-02')).toBe('2027-01-02');
    expect(todayOf('--today=2027-01-02', 'score', 'x')).toBe('2027-01-02');
    expect(todayOf('score', 'x')).toBe('2026-05-10');
  });

  it.each([
    [['score', 'x', '--today'], /“” is none/],
    [['score', 'x', '--today', '15.10.2026'], /such as 2026-10-15, and “15\.10\.2026” is none/],
    [['score', 'x', '--today', '2026-06-31'], /“2026-06-31” is none/],
    [['score', 'x', '--today', '2026-06-30', '--today', '2026-07-30'], /Give one day/],
    [['check', 'x', '--today', '2026-06-30'], /belongs to "score" alone/],
    [['score', 'x', '--tomorrow'], /“--tomorrow” is not known/],
  ])('says what is wrong with %j, with exit code 2', (words, said) => {
    const { code, out, err } = run(...words);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(said);
    expect(err).toContain('survey score FILE');
  });
});

describe('the air of the place', () => {
  it('is told by three metals where it was entered, and is null where not', () => {
    expect(scoredSurvey(survey).place).toBeNull();
    const air = { temperature: 9.5, humidity: 79, so2: 20, chloride: 2 };
    const withAir = [
      ...survey.entries,
      first(9999, nameOf.climate(survey.collection), 'climate', air, { within: survey.collection }),
    ];
    const { place } = scoredSurvey({ ...survey, entries: withAir });
    // ISO 9223:2012, copper coefficients from memory: 1.484945 um a year, C4 (computed).
    expect(place?.rates[0]).toMatchObject({ metal: 'copper', category: 'C4' });
    expect(place?.rates[0]?.rate.value).toBeCloseTo(1.484945, 6);
  });
});
