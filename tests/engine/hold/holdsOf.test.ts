import { describe, expect, it } from 'vitest';
import { type Hold, holdsOf, type NoHold, type ZoneHolds } from '../../../src/engine/hold';
import { codes } from '../change/invented';
import { mays, type Tended, tended, today, waxed } from './garden';

const zoneOf = (work: Tended): ZoneHolds => holdsOf(tended(work), today)[0] as ZoneHolds;
const holdOf = (work: Tended): Hold => zoneOf(work).holds[0] as Hold;
const noHoldOf = (work: Tended): NoHold => zoneOf(work).noHolds[0] as NoHold;

/** Ends in months, one decimal, as the note of the demo writes them. */
const ends = ({ lower, upper }: Hold): string => `${lower.toFixed(1)} to ${upper === null ? 'open' : upper.toFixed(1)}`;

describe('the coat folds on the weather side, waxed every May', () => {
  const folds = zoneOf({
    treatments: waxed('2021-05-20', '2022-05-19', '2023-05-25', '2024-05-23', '2025-05-22', '2026-05-21'),
    rounds: mays(2021, 0.15, 0.2, 0.25, 0.3, 0.3, 0.35),
    looks: [
      { date: '2022-10-06', result: 'green' },
      { date: '2023-07-20', result: 'clear' },
      { date: '2023-09-14', result: 'green' },
      { date: '2024-07-11', result: 'clear' },
      { date: '2024-08-22', result: 'green' },
      { date: '2025-07-03', result: 'clear' },
      { date: '2025-08-14', result: 'green' },
      { date: '2026-07-02', result: 'clear' },
      { date: '2026-08-06', result: 'green' },
    ],
  });

  it('gives each year the interval that its looks and rounds leave open', () => {
    expect(folds.holds.map(ends)).toEqual([
      '0.0 to 11.7',
      '0.0 to 4.6',
      '1.8 to 3.7',
      '1.6 to 3.0',
      '1.4 to 2.8',
      '1.4 to 2.5',
    ]);
    expect(folds.holds.map(({ lastClear, firstSeen }) => [lastClear, firstSeen])).toEqual([
      [null, '2022-05-12'],
      [null, '2022-10-06'],
      ['2023-07-20', '2023-09-14'],
      ['2024-07-11', '2024-08-22'],
      ['2025-07-03', '2025-08-14'],
      ['2026-07-02', '2026-08-06'],
    ]);
  });

  it('says that they look shorter, and that it is not proven', () => {
    expect(folds.shortening.word).toBe('looks shorter, not proven');
  });

  it('says that the start was assumed and that green stood there nine days before', () => {
    expect(folds.holds.every(({ clean }) => clean === 'assumed')).toBe(true);
    expect(folds.holds[2]?.reasons).toContainEqual({
      code: 'hold: green stood before',
      params: { date: '2023-05-12' },
    });
  });

  it('knows that the green is back on the coating that is on now', () => {
    expect(folds.onNow).toMatchObject({ from: '2026-05-21', state: 'back', firstSeen: '2026-08-06' });
  });
});

it('measures the bezels from the wax of the campaign to the look that saw the green', () => {
  const bezels = zoneOf({
    treatments: [
      ...waxed('2021-05-20', '2022-05-19', '2023-05-25', '2023-09-21', '2025-05-22', '2026-05-21'),
      { type: 'strip', date: '2023-09-04' },
      { type: 'repatination', date: '2023-09-18' },
    ],
    rounds: [...mays(2021, 0.1, 0.15, 0.2, 'nothing', 0.03, 0.08)],
    looks: [
      { date: '2024-03-14', result: 'clear' },
      { date: '2024-05-16', result: 'clear' },
      { date: '2024-10-10', result: 'clear' },
      { date: '2024-12-05', result: 'green' },
    ],
  });
  expect(bezels.holds.map(ends)).toEqual(['0.0 to 11.7', '0.0 to 11.8', '12.6 to 14.5', '0.0 to 11.7']);
  expect(bezels.holds.map(({ span }) => span)).toEqual([0, 0, 1, 1]);
  expect(codes(bezels.holds[2]?.reasons ?? [])).toContain('hold: cleaned before');
  expect(bezels.noHolds.map(({ start, reasons }) => [start, codes(reasons)])).toEqual([
    ['2023-05-25', ['hold: broken off before a look']],
    ['2026-05-21', ['hold: nobody has looked since']],
  ]);
  expect(bezels.spans.map(({ since, causeRemoved }) => [since, causeRemoved])).toEqual([
    [null, false],
    ['2023-09-04', false],
  ]);
});

it('gives the spray band no hold where green stands the day after waxing', () => {
  const band = zoneOf({
    treatments: waxed('2025-05-22', '2026-05-21'),
    rounds: mays(2025, 0.65, 0.75),
    looks: [
      { date: '2025-05-23', result: 'green' },
      { date: '2026-05-22', result: 'green' },
    ],
  });
  expect(band.holds).toEqual([]);
  expect(band.noHolds.map(({ reasons }) => codes(reasons))).toEqual([
    ['hold: no clean start'],
    ['hold: no clean start'],
  ]);
  expect(band.onNow?.state).toBe('not clean');
});

describe('how a hold starts', () => {
  it('is verified by a dry clear look within two weeks, on the fourteenth day still', () => {
    const at = (date: string) => holdOf({ treatments: waxed('2026-05-01'), looks: [{ date, result: 'clear' }] }).clean;
    expect(at('2026-05-15')).toBe('verified');
    expect(at('2026-05-16')).toBe('assumed');
  });

  it('is assumed where the look of the first week does not say that it was dry', () => {
    const look = { date: '2026-05-05', result: 'clear' as const, wet: null };
    expect(holdOf({ treatments: waxed('2026-05-01'), looks: [look] })).toMatchObject({
      clean: 'assumed',
      lastClear: '2026-05-05',
    });
  });

  it('is there where the first week was clear and the second green: a short hold, not an unclean start', () => {
    const looks = [
      { date: '2026-05-04', result: 'clear' as const },
      { date: '2026-05-12', result: 'green' as const },
    ];
    const hold = holdOf({ treatments: waxed('2026-05-01'), looks });
    expect(hold).toMatchObject({ clean: 'verified', end: 'returned' });
    expect(hold.lower * 30.4375).toBeCloseTo(3, 9);
    expect((hold.upper ?? 0) * 30.4375).toBeCloseTo(11, 9);
  });

  it('is unclean where green came first, whatever a later look says', () => {
    const looks = [
      { date: '2026-05-04', result: 'green' as const },
      { date: '2026-05-12', result: 'clear' as const },
    ];
    expect(zoneOf({ treatments: waxed('2026-05-01'), looks }).holds).toEqual([]);
  });

  it('is unclean where a round after the wash of the same day still shows green', () => {
    const round = { date: '2026-05-01', washed: 'after wash' as const, saw: { A: [{ cover: 0.1 }] } };
    expect(codes(noHoldOf({ treatments: waxed('2026-05-01'), rounds: [round] }).reasons)).toEqual([
      'hold: no clean start',
    ]);
  });
});

describe('how a hold ends', () => {
  it('is censored at the last clear look where it was coated again while clear', () => {
    const work: Tended = {
      treatments: waxed('2025-05-01', '2026-05-01'),
      looks: [
        { date: '2025-11-01', result: 'clear' },
        { date: '2026-03-01', result: 'clear' },
      ],
    };
    expect(holdOf(work)).toMatchObject({ upper: null, lastClear: '2026-03-01', end: 'coated again' });
  });

  it('is open where it is still clear', () => {
    const work: Tended = { treatments: waxed('2026-05-01'), looks: [{ date: '2026-09-01', result: 'clear' }] };
    expect(holdOf(work)).toMatchObject({ upper: null, end: 'still clear' });
    expect(zoneOf(work).onNow?.state).toBe('clear');
  });

  it('is at the first look that saw it, and a later clear look does not take that back', () => {
    const work: Tended = {
      treatments: waxed('2026-02-01'),
      looks: [
        { date: '2026-07-01', result: 'green' },
        { date: '2026-08-01', result: 'clear' },
      ],
    };
    expect(holdOf(work)).toMatchObject({ lower: 0, firstSeen: '2026-07-01', lastClear: null });
    expect(codes(holdOf(work).reasons)).toContain('hold: seen clear again');
  });

  it('takes looks in the order of their days, not of their writing', () => {
    const looks = [
      { date: '2026-08-06', result: 'green' as const },
      { date: '2026-07-02', result: 'clear' as const },
    ];
    expect(holdOf({ treatments: waxed('2026-05-21'), looks })).toMatchObject({
      lastClear: '2026-07-02',
      firstSeen: '2026-08-06',
    });
  });

  it('believes the one who saw green where two looks of a day disagree, and says so', () => {
    const looks = [
      { date: '2026-07-01', result: 'clear' as const },
      { date: '2026-08-01', result: 'clear' as const },
      { date: '2026-08-01', result: 'green' as const },
    ];
    const hold = holdOf({ treatments: waxed('2026-05-01'), looks });
    expect(hold).toMatchObject({ lastClear: '2026-07-01', firstSeen: '2026-08-01' });
    expect(codes(hold.reasons)).toContain('hold: looks of one day disagree');
  });

  it('marks a hold whose end was noticed in passing', () => {
    const looks = [
      { date: '2026-07-01', result: 'clear' as const },
      { date: '2026-08-01', result: 'green' as const, planned: false },
    ];
    expect(holdOf({ treatments: waxed('2026-05-01'), looks }).inPassing).toBe(true);
    expect(holdOf({ treatments: waxed('2026-05-01'), looks: looks.slice(0, 1) }).inPassing).toBe(false);
  });

  it('is not told by what is dated after today', () => {
    const work: Tended = {
      treatments: waxed('2026-05-01', '2027-05-01'),
      looks: [{ date: '2026-12-01', result: 'green' }],
    };
    expect(zoneOf(work).holds).toEqual([]);
    expect(codes(zoneOf(work).reasons)).toContain('hold: dated after today');
  });
});

describe('what proves nothing', () => {
  const nothing = (work: Tended, why: string) => {
    const none = noHoldOf({ treatments: waxed('2025-06-01'), ...work });
    expect(none.reasons).toContainEqual({ code: 'hold: nobody has looked since', params: {} });
    expect(none.reasons).toContainEqual({ code: 'hold: proves nothing', params: { count: 1, why } });
  };

  it('a clear look on a wet or damp surface', () => {
    nothing({ looks: [{ date: '2026-06-01', result: 'clear', wet: 'wet' }] }, 'wet');
    nothing({ looks: [{ date: '2026-06-01', result: 'clear', wet: 'damp' }] }, 'wet');
  });

  it('but green seen on a wet surface was seen', () => {
    const looks = [{ date: '2026-06-01', result: 'green' as const, wet: 'wet' as const }];
    expect(holdOf({ treatments: waxed('2025-06-01'), looks }).firstSeen).toBe('2026-06-01');
  });

  it('an unsure look', () => nothing({ looks: [{ date: '2026-06-01', result: 'unsure' }] }, 'unsure'));
  it('an answer carried over', () => nothing({ rounds: mays(2026, 'carried') }, 'carried'));
  it('a finding carried over inside a zone that was looked at', () =>
    nothing(
      {
        rounds: [
          {
            date: '2026-05-12',
            saw: {
              A: [
                { cover: 0.01, carried: true },
                { kind: 'wax-worn', cover: 0.1 },
              ],
            },
          },
        ],
      },
      'carried',
    ));
  it('a round in the rain that found nothing', () =>
    nothing({ rounds: [{ date: '2026-05-12', wet: 'wet', saw: { A: 'nothing' } }] }, 'wet'));
  it('a green whose cover is not told, where cover is what counts', () =>
    nothing({ rounds: [{ date: '2026-05-12', saw: { A: [{ kind: 'green-spots' }] } }] }, 'no coverage'));

  it('a zone not looked at is no word at all', () => {
    const none = noHoldOf({ treatments: waxed('2025-06-01'), rounds: mays(2026, 'not looked') });
    expect(codes(none.reasons)).toEqual(['hold: nobody has looked since']);
  });

  it('a visit without a word on green, where green was the last word', () => {
    const other = { date: '2026-05-12', saw: { A: [{ kind: 'wax-worn', cover: 0.1 }] } };
    nothing({ rounds: [...mays(2025, 0.1), other] }, 'no word on green');
  });

  it('but other findings alone say clear where green never was, or was said to be gone', () => {
    const other = { date: '2026-05-12', saw: { A: [{ kind: 'wax-worn', cover: 0.1 }] } };
    expect(holdOf({ treatments: waxed('2025-06-01'), rounds: [other] }).lastClear).toBe('2026-05-12');
    const gone = { date: '2025-09-01', saw: { A: [{ kind: 'green-spots', cleared: true as const }] } };
    expect(holdOf({ treatments: waxed('2025-06-01'), rounds: [...mays(2025, 0.1), gone, other] }).lastClear).toBe(
      '2026-05-12',
    );
  });

  it('dirt that looks green, and a stain from above', () => {
    const round = { date: '2026-05-12', saw: { A: [{ cover: 0.2, origin: 'stain' as const }] } };
    expect(holdOf({ treatments: waxed('2025-06-01'), rounds: [round] })).toMatchObject({ end: 'still clear' });
  });
});

describe('one event for a zone', () => {
  const rounds = mays(2025, 0.01, 0.01);
  it('is cover at the return level where nobody makes looks: one percent is not back', () => {
    const zone = zoneOf({ treatments: waxed('2025-06-01'), rounds });
    expect(zone.event).toBe('cover');
    expect(zone.holds[0]?.end).toBe('still clear');
  });

  it('is a first spot where looks are made, in the rounds too', () => {
    const zone = zoneOf({ treatments: waxed('2025-06-01'), rounds, looks: [{ date: '2025-09-01', result: 'clear' }] });
    expect(zone.event).toBe('spot');
    expect(zone.holds[0]).toMatchObject({ lastClear: '2025-09-01', firstSeen: '2026-05-12' });
  });

  it('follows the level the collection has set', () => {
    const rules = { version: 2, returnLevel: 0.01, chance: 0.25 };
    expect(holdOf({ treatments: waxed('2025-06-01'), rounds, rules }).end).toBe('returned');
  });

  it('adds the greens of a zone up to their level', () => {
    const both = [
      { kind: 'green-spots', cover: 0.01 },
      { kind: 'even-green-film', cover: 0.02 },
    ];
    expect(holdOf({ treatments: waxed('2025-06-01'), rounds: [{ date: '2026-05-12', saw: { A: both } }] }).end).toBe(
      'returned',
    );
  });
});

describe('looks and work on one day', () => {
  const looks = [
    { date: '2025-08-01', result: 'clear' as const },
    { date: '2025-09-10', result: 'green' as const },
    { date: '2026-03-10', result: 'clear' as const },
  ];
  it('takes the look before the work: green ends the hold before and does not soil the new start', () => {
    const zone = zoneOf({ treatments: waxed('2025-05-01', '2025-09-10'), looks });
    expect(zone.holds).toMatchObject([
      { start: '2025-05-01', end: 'returned', firstSeen: '2025-09-10' },
      { start: '2025-09-10', end: 'still clear', lastClear: '2026-03-10' },
    ]);
  });

  it('counts several coatings of one day as one', () => {
    const zone = zoneOf({
      treatments: [...waxed('2025-05-01', '2025-05-01'), { type: 'hot wax', date: '2025-05-01' }],
      looks,
    });
    expect(zone.holds).toHaveLength(1);
    expect(zone.noHolds).toEqual([]);
    expect(zone.holds[0]?.reasons).toContainEqual({ code: 'hold: coatings counted as one', params: { count: 3 } });
  });

  it('takes what strips the surface before what coats it on the same day', () => {
    const zone = zoneOf({ treatments: [...waxed('2025-06-01'), { type: 'local colour', date: '2025-06-01' }], looks });
    expect(zone.holds).toMatchObject([{ start: '2025-06-01', firstSeen: '2025-09-10' }]);
    expect(zone.spans).toHaveLength(1);
  });
});

describe('dates that are vague', () => {
  it('widen the hold at both ends', () => {
    const looks = [
      { date: '2024-07-11', result: 'clear' as const },
      { date: '2024-08-22', result: 'green' as const },
    ];
    const hold = holdOf({ treatments: waxed('2024-05'), looks });
    expect(hold.lower * 30.4375).toBeCloseTo(41, 9); // from 31 May
    expect((hold.upper ?? 0) * 30.4375).toBeCloseTo(113, 9); // from 1 May
    expect(codes(hold.reasons)).toContain('hold: coating day vague');
  });

  it('let a look inside them speak for neither side', () => {
    const looks = [
      { date: '2024-05-20', result: 'green' as const },
      { date: '2024-07-11', result: 'clear' as const },
    ];
    const zone = zoneOf({ treatments: waxed('2023-05-01', '2024-05'), looks });
    expect(zone.noHolds.map(({ reasons }) => codes(reasons))).toEqual([['hold: coated again before a look']]);
    expect(zone.holds).toMatchObject([{ start: '2024-05-01', end: 'still clear', lastClear: '2024-07-11' }]);
  });

  it('give no hold where green may have stood within two weeks', () => {
    const none = noHoldOf({ treatments: waxed('2024-05'), looks: [{ date: '2024-06-10', result: 'green' }] });
    expect(codes(none.reasons)).toContain('hold: perhaps no clean start');
  });

  it('that overlap stand for one coating, the later of the two', () => {
    const hold = holdOf({
      treatments: waxed('2024-05', '2024-05-23'),
      looks: [{ date: '2024-07-11', result: 'clear' }],
    });
    expect(hold.start).toBe('2024-05-23');
    expect(hold.lower * 30.4375).toBeCloseTo(41, 9);
  });

  it.each(['long ago', 'before 2021', '', '???'])('%j gives no hold, and says why', (date) => {
    const zone = zoneOf({ treatments: waxed(date), looks: [{ date: '2024-07-11', result: 'clear' }] });
    expect(zone.holds).toEqual([]);
    expect(codes([...zone.reasons, ...zone.noHolds.flatMap(({ reasons }) => reasons)])).toContain(
      'hold: date not readable',
    );
  });

  it('of a break that may lie on either side of a coating give no hold', () => {
    const treatments = [...waxed('2024-05-10'), { type: 'cleaning by media', date: '2024-05' }];
    const none = noHoldOf({ treatments, looks: [{ date: '2024-07-11', result: 'clear' }] });
    expect(codes(none.reasons)).toEqual(['hold: coating and break not in order']);
  });
});

describe('what breaks the series', () => {
  const looks = [
    { date: '2023-06-20', result: 'clear' as const },
    { date: '2023-09-20', result: 'green' as const },
    { date: '2024-07-20', result: 'clear' as const },
  ];
  it('splits it on the day a cause was removed, and what came after does not count for the coating before', () => {
    const zone = zoneOf({
      treatments: [...waxed('2023-05-01', '2024-05-01'), { type: 'cause removed', date: '2023-07-11' }],
      looks,
    });
    expect(zone.holds).toMatchObject([
      { start: '2023-05-01', upper: null, lastClear: '2023-06-20', end: 'still clear', span: 0 },
      { start: '2024-05-01', span: 1 },
    ]);
    expect(zone.spans.map(({ causeRemoved }) => causeRemoved)).toEqual([false, true]);
    expect(codes(zone.holds[0]?.reasons ?? [])).toContain('hold: broken off');
  });

  it('asks whether holds get shorter within a span only', () => {
    const dates = ['2020', '2021', '2022', '2023', '2024', '2025'];
    const shrinking = dates.flatMap((year, i) => [
      { date: `${year}-0${8 - i}-01`, result: 'clear' as const },
      { date: `${year}-0${8 - i}-20`, result: 'green' as const },
    ]);
    const work = { treatments: waxed(...dates.map((year) => `${year}-01-01`)), looks: shrinking };
    expect(zoneOf(work).shortening.word).toBe('getting shorter');
    const split = zoneOf({ ...work, treatments: [...work.treatments, { type: 'cause removed', date: '2022-12-01' }] });
    expect(split.shortening).toMatchObject({
      n: 3,
      word: 'looks shorter, not proven',
      lastPair: 'shorter than the last one',
    });
  });

  it('knows of no coating on now where it was taken off last', () => {
    const treatments = [...waxed('2024-05-01'), { type: 'coating removed', date: '2025-05-01' }];
    expect(zoneOf({ treatments, looks }).onNow).toBeNull();
  });
});

describe('zones that were split or joined', () => {
  it('end their hold at the last clear look before, and the parts start at their own coating', () => {
    const record = tended({
      zones: {
        A: {
          split: {
            on: '2025-01-01',
            into: [
              { zone: 'zone/B', share: 0.5 },
              { zone: 'zone/C', share: 0.5 },
            ],
          },
        },
        B: { since: '2025-01-01' },
        C: { since: '2025-01-01' },
      },
      treatments: waxed('2024-05-01', '2025-05-01'),
      looks: [
        { zone: 'A', date: '2024-08-01', result: 'clear' },
        { zone: 'B', date: '2025-08-01', result: 'clear' },
        { zone: 'C', date: '2025-08-01', result: 'green' },
      ],
    });
    const told = holdsOf(record, today).map(({ holds }) => holds.map(({ start, end }) => `${start} ${end}`));
    expect(told).toEqual([['2024-05-01 still clear'], ['2025-05-01 still clear'], ['2025-05-01 returned']]);
    const [whole] = holdsOf(record, today);
    expect(codes(whole?.reasons ?? [])).toContain('hold: zone ended');
    expect(whole?.onNow).toBeNull();
  });
});

describe('nothing to go by', () => {
  it('is said where there is no coating', () => {
    const zone = zoneOf({ looks: [{ date: '2026-07-02', result: 'clear' }] });
    expect(zone).toMatchObject({ holds: [], noHolds: [], onNow: null });
    expect(codes(zone.reasons)).toContain('hold: no coating recorded');
  });

  it('is said where nobody looked', () => {
    const zone = zoneOf({ treatments: waxed('2025-05-01', '2026-05-01') });
    expect(codes(zone.reasons)).toContain('hold: nobody looked at all');
    expect(zone.noHolds.map(({ reasons }) => codes(reasons))).toEqual([
      ['hold: coated again before a look'],
      ['hold: nobody has looked since'],
    ]);
  });

  it('a work without zones has no holds', () => {
    expect(holdsOf(tended({ zones: {} }), today)).toEqual([]);
  });

  it('all green and all clear are told as what they are', () => {
    const dates = ['2022-06-01', '2023-06-01', '2024-06-01'];
    const green = zoneOf({ treatments: waxed(...dates), rounds: mays(2022, 0.5, 0.5, 0.5, 0.5) });
    expect(green.holds.every(({ lower, end }) => lower === 0 && end === 'returned')).toBe(true);
    const clear = zoneOf({
      treatments: waxed(...dates),
      rounds: mays(2022, 'nothing', 'nothing', 'nothing', 'nothing'),
    });
    expect(clear.holds.map(({ end, upper }) => [end, upper])).toEqual([
      ['coated again', null],
      ['coated again', null],
      ['still clear', null],
    ]);
  });
});
