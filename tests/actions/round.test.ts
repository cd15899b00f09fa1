import { describe, expect, it } from 'vitest';
import {
  addSurveyor,
  closeRound,
  type Desk,
  deskOn,
  leaveZone,
  noteZone,
  type RoundView,
  rateAgain,
  roundsUnderWay,
  roundView,
  skipAskingAgain,
  startRound,
  touchZone,
  undoInRound,
  type ZoneView,
  zoneView,
} from '../../src/actions';
import { memoryOf } from '../../src/actions/round/roundMemory';
import { findingsOf, type Leaving, nameOf, visitOf, type ZoneTouch } from '../../src/engine/record';
import { ladder } from '../../src/engine/trade';
import { open, openFresh } from '../device/store/around';
import { aWork, done } from '../screens/deskwork';

const cover = (label: string): ZoneTouch => {
  const step = ladder.find((s) => s.label === label);
  if (!step) throw new Error(`no step ${label}`);
  return { do: 'cover', coverage: { value: step.value, low: step.low, high: step.high, method: 'ladder' } };
};
const kind = (id: string, measure: 'area' | 'count' = 'area'): ZoneTouch => ({ do: 'kind', kind: id, measure });
const green = (label: string): ZoneTouch[] => [
  kind('green-spots'),
  { do: 'origin', origin: 'metal' },
  cover(label),
  { do: 'severity', severity: 'slight' },
];

/** A tablet on which time goes on, and which can be switched off and on again. */
const tablet = async () => {
  const { store, around, name } = await openFresh(7);
  let second = 0;
  let day = '2025-05-13';
  const on = (s: typeof store): Desk =>
    deskOn(s, {
      newId: around.newId,
      now: () => new Date(Date.UTC(2026, 4, 12, 8, 0, second++)).toISOString().replace('Z', '+00:00'),
      today: () => day,
      surveyor: () => '',
    });
  return {
    desk: on(store),
    setDay: (to: string) => {
      day = to;
    },
    /** The browser is killed: nothing is closed politely, and everything in memory is gone. */
    restart: async (desk: Desk): Promise<Desk> => {
      desk.store.close();
      return on(await open(name, around));
    },
  };
};

const begin = async (desk: Desk, sculpture: string, date: string, ownEye = false) =>
  (await done(startRound(desk, sculpture, { type: 'annual', date, wet: 'dry', washed: 'before wash', ownEye }))).round;

const ready = async (desk: Desk, round: string) => {
  await memoryOf(desk, round).ready();
};
const zoneNow = (desk: Desk, round: string, zone: string): ZoneView => zoneView(desk, round, zone).get() as ZoneView;
const roundNow = (desk: Desk, round: string): RoundView => roundView(desk, round).get() as RoundView;
const touches = async (desk: Desk, round: string, zone: string, list: readonly ZoneTouch[]) => {
  for (const touch of list) await done(touchZone(desk, round, zone, touch));
};
const leave = (desk: Desk, round: string, zone: string, leaving: Leaving) => leaveZone(desk, round, zone, leaving);
const recordNow = (desk: Desk, round: string) => {
  const atHand = memoryOf(desk, round).get();
  if (!atHand) throw new Error('no round');
  return atHand.record;
};

/** Three zones, and last year's round: green in A and B, nothing in C. */
const secondYear = async (ownEye = false) => {
  const { desk, setDay, restart } = await tablet();
  const { sculpture, zones } = await aWork(desk, { number: 'T-01', title: 'Test figure', areas: [1, 1, 1] });
  const [a, b, c] = zones as [string, string, string];
  const first = await begin(desk, sculpture, '2025-05-13');
  for (const zone of [a, b]) {
    await touches(desk, first, zone, green('10'));
    await done(leave(desk, first, zone, { how: 'next' }));
  }
  await done(leave(desk, first, c, { how: 'nothing' }));
  await done(closeRound(desk, first));
  setDay('2026-05-12');
  const round = await begin(desk, sculpture, '2026-05-12', ownEye);
  await ready(desk, round);
  return { desk, restart, sculpture, first, round, a, b, c };
};

describe('starting a round', () => {
  it('refuses a work without zones and a day that is none', async () => {
    const { desk } = await tablet();
    const { sculpture } = await aWork(desk, { number: 'T-02', title: 'No zones', areas: [] });
    const start = { type: 'annual', wet: 'dry', washed: 'before wash', ownEye: true } as const;
    expect(await startRound(desk, sculpture, { ...start, date: '2026-05-12' })).toMatchObject({
      ok: false,
      reason: { code: 'round: sculpture has no zones' },
    });
    expect(await startRound(desk, sculpture, { ...start, date: '2026-02-30' })).toMatchObject({
      ok: false,
      reason: { code: 'day not valid' },
    });
  });
});

describe('a round entered from pencil cards', () => {
  const fromCards = async () => {
    const lived = await secondYear();
    const { desk, sculpture } = lived;
    const { surveyor } = await done(addSurveyor(desk, { role: 'Helper' }));
    const { round } = await done(
      startRound(desk, sculpture, {
        ...{ type: 'annual', date: '2026-05-10', wet: 'dry', washed: 'before wash', ownEye: true },
        fromPaper: { looked: surveyor },
      }),
    );
    await ready(desk, round);
    return { ...lived, round, surveyor };
  };

  it('says on which day it was seen and by whom, when it was entered, and every visit that it came from paper', async () => {
    const { desk, round, surveyor, a } = await fromCards();
    expect(roundNow(desk, round).round.body).toMatchObject({
      date: '2026-05-10',
      surveyor,
      fromPaper: { entered: '2026-05-12', surveyor: '' },
    });
    await touches(desk, round, a, [{ do: 'open', key: 'green-spots/metal' }, cover('30')]);
    await done(leave(desk, round, a, { how: 'next' }));
    expect(visitOf(recordNow(desk, round), round, a)?.body.fromPaper).toBe(true);
  });

  it('asks nobody how a share differs from before: that was for the eye before the surface', async () => {
    const { desk, round, a } = await fromCards();
    await touches(desk, round, a, [{ do: 'open', key: 'green-spots/metal' }, cover('30')]);
    expect(zoneNow(desk, round, a).asks.what).not.toBe('against');
    await done(leave(desk, round, a, { how: 'next' }));
    expect(findingsOf(recordNow(desk, round), round, a)[0]?.body).not.toHaveProperty('against');
  });

  it('takes a kind left blank on the card for no answer, not for as before', async () => {
    const { desk, round, a } = await fromCards();
    await touches(desk, round, a, [{ do: 'kind', kind: 'black-crust', measure: 'area' }, cover('5')]);
    expect(await leave(desk, round, a, { how: 'next' })).toMatchObject({ ok: false });
  });

  it('is not asked again at its end: nobody stands before the work', async () => {
    const { desk, round, a, b, c } = await fromCards();
    for (const zone of [a, b]) {
      await touches(desk, round, zone, [{ do: 'open', key: 'green-spots/metal' }, cover('10')]);
      await done(leave(desk, round, zone, { how: 'next' }));
    }
    await done(leave(desk, round, c, { how: 'nothing' }));
    expect(roundNow(desk, round).again).toBeUndefined();
  });
});

describe('leaving a zone', () => {
  it('writes the visit and its findings in one deed, and goes on in walking order', async () => {
    const { desk, round, a, b } = await secondYear();
    await touches(desk, round, a, [{ do: 'open', key: 'green-spots/metal' }, cover('30')]);
    expect(await leave(desk, round, a, { how: 'next' })).toMatchObject({ ok: true, state: 'found', next: b });
    const record = recordNow(desk, round);
    expect(visitOf(record, round, a)?.body).toMatchObject({ state: 'found', zoneVersion: 1 });
    expect(findingsOf(record, round, a).map(({ body }) => [body.kind, body.coverage?.value])).toEqual([
      ['green-spots', 0.3],
    ]);
    const last = await desk.store.lastDeed();
    expect((await desk.store.entriesOfDeed(last?.deed ?? '')).map((e) => e.kind).sort()).toEqual(['finding', 'visit']);
  });

  it('carries as last year with the round it was judged in, and never asks this of a zone without an answer', async () => {
    const { desk, round, first, a, c } = await secondYear();
    await done(leave(desk, round, a, { how: 'as last year' }));
    await done(leave(desk, round, c, { how: 'as last year' }));
    const record = recordNow(desk, round);
    expect(visitOf(record, round, a)?.body).toMatchObject({ state: 'carried', carriedFrom: first });
    expect(findingsOf(record, round, a)[0]?.body).toMatchObject({ carriedFrom: first });
    expect(visitOf(record, round, c)?.body).toMatchObject({ state: 'carried', carriedFrom: first });
  });

  it('goes on to the end only when every zone has its answer, and comes back for one left out', async () => {
    const { desk, round, a, b, c } = await secondYear();
    expect(await leave(desk, round, b, { how: 'as last year' })).toMatchObject({ next: c });
    expect(await leave(desk, round, c, { how: 'not looked', reason: 'wet' })).toMatchObject({ next: a });
    expect(await leave(desk, round, a, { how: 'as last year' })).toMatchObject({ next: undefined });
    expect(roundNow(desk, round).walk.map((z) => z.standing)).toEqual(['carried', 'carried', 'not looked']);
  });

  it('passes over a year in which the zone was not looked at', async () => {
    const { desk, sculpture, first, round, a } = await secondYear();
    await done(leave(desk, round, a, { how: 'not looked', reason: 'nest' }));
    const third = await begin(desk, sculpture, '2027-05-11');
    await ready(desk, third);
    expect(zoneNow(desk, third, a).draft.before).toMatchObject({ round: first, date: '2025-05-13' });
  });

  it('stores nothing when it is refused', async () => {
    const { desk, round, a } = await secondYear();
    const before = (await desk.store.allEntries()).length;
    expect(await leave(desk, round, a, { how: 'nothing' })).toMatchObject({
      ok: false,
      reason: { code: 'round: earlier finding not answered' },
    });
    expect((await desk.store.allEntries()).length).toBe(before);
  });

  it('refuses kinds that exclude each other and surely pass the whole zone, and says so while the pad is open', async () => {
    const { desk, round, c } = await secondYear();
    await touches(desk, round, c, [
      ...green('70'),
      kind('even-green-film'),
      { do: 'origin', origin: 'metal' },
      cover('70'),
      { do: 'severity', severity: 'slight' },
    ]);
    expect(zoneNow(desk, round, c).conflicts.map((r) => r.code)).toEqual(['coverage: more than the whole zone']);
    expect(await leave(desk, round, c, { how: 'next' })).toMatchObject({ ok: false });
  });

  it('opened again and corrected, writes a new version and takes back what is no longer there', async () => {
    const { desk, round, a } = await secondYear();
    await touches(desk, round, a, [{ do: 'open', key: 'green-spots/metal' }, cover('30')]);
    await touches(desk, round, a, [
      kind('black-crust'),
      { do: 'origin', origin: 'metal' },
      cover('5'),
      { do: 'severity', severity: 'severe' },
    ]);
    await done(leave(desk, round, a, { how: 'next' }));
    await touches(desk, round, a, [{ do: 'open', key: 'black-crust/metal' }, { do: 'remove' }]);
    await done(leave(desk, round, a, { how: 'next' }));
    expect(findingsOf(recordNow(desk, round), round, a).map(({ body }) => body.kind)).toEqual(['green-spots']);
    const crust = await desk.store.current(nameOf.finding(round, a, 'black-crust', 'metal'));
    expect(crust?.gone).toBe(true);
  });
});

describe('something that could hurt someone', () => {
  const loose: ZoneTouch[] = [
    { do: 'kind', kind: 'part-loose', measure: 'count', origin: 'metal' },
    { do: 'count', count: 'one' },
    { do: 'severity', severity: 'severe' },
  ];

  it('opens one person check, which stands over the round and is not doubled by leaving the zone twice', async () => {
    const { desk, round, c } = await secondYear();
    await touches(desk, round, c, loose);
    expect(zoneNow(desk, round, c).personChecks.map((f) => f.kind)).toEqual(['part-loose']);
    await done(leave(desk, round, c, { how: 'next' }));
    await touches(desk, round, c, [{ do: 'beading', beading: 'beads' }]);
    await done(leave(desk, round, c, { how: 'next' }));
    expect(roundNow(desk, round).personChecks.map((check) => check.body.what)).toEqual([
      'C, part C: Loose part or plaque',
    ]);
  });

  it('taken back as a slip takes its check back too', async () => {
    const { desk, round, c } = await secondYear();
    await touches(desk, round, c, loose);
    await done(leave(desk, round, c, { how: 'next' }));
    await done(undoInRound(desk, round));
    expect(roundNow(desk, round).personChecks).toEqual([]);
  });

  it('seen again next year keeps the check that stands', async () => {
    const { desk, sculpture, round, c } = await secondYear();
    await touches(desk, round, c, loose);
    await done(leave(desk, round, c, { how: 'next' }));
    const third = await begin(desk, sculpture, '2027-05-11');
    await ready(desk, third);
    await touches(desk, third, c, [
      { do: 'open', key: 'part-loose/metal' },
      { do: 'count', count: 'one' },
    ]);
    await done(leave(desk, third, c, { how: 'next' }));
    const checks = roundNow(desk, third).personChecks;
    expect(checks).toHaveLength(1);
    expect(checks[0]?.body.finding).toBe(nameOf.finding(third, c, 'part-loose', 'metal'));
  });

  it('is a stop word next year: as last year is refused', async () => {
    const { desk, sculpture, round, c } = await secondYear();
    await touches(desk, round, c, loose);
    await done(leave(desk, round, c, { how: 'next' }));
    const third = await begin(desk, sculpture, '2027-05-11');
    await ready(desk, third);
    expect(await leave(desk, third, c, { how: 'as last year' })).toMatchObject({
      ok: false,
      reason: { code: 'round: stop word is not carried', params: { kind: 'part-loose' } },
    });
  });
});

describe('a killed browser', () => {
  it('loses no touch: the pad comes back as it was, and undo still takes back one touch', async () => {
    const { desk, restart, round, b } = await secondYear();
    await touches(desk, round, b, [kind('black-crust'), { do: 'origin', origin: 'stain' }, cover('15')]);
    await noteZone(desk, round, b);
    const before = zoneNow(desk, round, b).draft;
    const again = await restart(desk);
    await ready(again, round);
    expect(zoneNow(again, round, b).draft).toEqual(before);
    await done(undoInRound(again, round));
    expect(zoneNow(again, round, b).asks).toMatchObject({ what: 'extent', finding: { kind: 'black-crust' } });
  });

  it('is told which round and zone to go on with', async () => {
    const { desk, restart, round, b } = await secondYear();
    await noteZone(desk, round, b);
    const again = await restart(desk);
    const question = roundsUnderWay(again);
    const answer = await new Promise((resolve) => {
      const stop = question.subscribe(() => {
        if (!question.get()) return;
        stop();
        resolve(question.get());
      });
    });
    expect(answer).toMatchObject([{ title: 'Test figure', zone: b, round: { thing: round } }]);
  });

  it('that was closed behind the camera still expects the photo', async () => {
    const { desk, restart, round, a } = await secondYear();
    await touches(desk, round, a, [{ do: 'photo expected', of: 'zone' }]);
    const again = await restart(desk);
    await ready(again, round);
    expect(zoneNow(again, round, a).draft.photoExpected).toBe('zone');
  });

  it('after leaving a zone, undo opens the zone exactly as it was before it was left', async () => {
    const { desk, restart, round, a } = await secondYear();
    await touches(desk, round, a, [
      { do: 'open', key: 'green-spots/metal' },
      cover('30'),
      { do: 'severity', severity: 'severe' },
    ]);
    const before = zoneNow(desk, round, a).draft;
    await done(leave(desk, round, a, { how: 'next' }));
    const again = await restart(desk);
    await ready(again, round);
    expect(await undoInRound(again, round)).toMatchObject({ ok: true, zone: a });
    expect(zoneNow(again, round, a).draft).toEqual(before);
    expect(visitOf(recordNow(again, round), round, a)).toBeUndefined();
  });
});

describe('undo', () => {
  it('takes back the newest: the touch on the open pad before the zone left earlier', async () => {
    const { desk, round, a, b } = await secondYear();
    await done(leave(desk, round, a, { how: 'as last year' }));
    await touches(desk, round, b, [{ do: 'could not reach' }]);
    expect(roundNow(desk, round).undo).toMatchObject({ what: 'touch', zone: b });
    expect(await undoInRound(desk, round)).toMatchObject({ zone: b });
    expect(roundNow(desk, round).undo).toMatchObject({ what: 'deed', name: { code: 'deed: zone recorded' } });
    expect(await undoInRound(desk, round)).toMatchObject({ zone: a });
    expect(roundNow(desk, round).walk.map((z) => z.standing)).toEqual(['not yet', 'not yet', 'not yet']);
  });

  it('taken right after, a carried answer leaves nothing of itself', async () => {
    const { desk, round, a } = await secondYear();
    const before = zoneNow(desk, round, a).draft;
    await done(leave(desk, round, a, { how: 'as last year' }));
    await done(undoInRound(desk, round));
    expect(zoneNow(desk, round, a).draft).toEqual(before);
    expect(findingsOf(recordNow(desk, round), round, a)).toEqual([]);
  });
});

describe('asking again', () => {
  const walked = async () => {
    const year = await secondYear(true);
    const { desk, round, a, b, c } = year;
    await touches(desk, round, a, [cover('10')]);
    await done(leave(desk, round, a, { how: 'next' }));
    await touches(desk, round, b, [cover('20'), { do: 'against', against: 'changed' }]);
    await done(leave(desk, round, b, { how: 'next' }));
    expect(roundNow(desk, round).again).toBeUndefined();
    await done(leave(desk, round, c, { how: 'nothing' }));
    return year;
  };
  const five = { value: 0.05, low: 0.04, high: 0.075, method: 'ladder' as const };

  it('begins when every zone has its answer, asks zones with a judged coverage, and keeps the first value', async () => {
    const { desk, round, a } = await walked();
    expect(roundNow(desk, round).again).toMatchObject({ zone: { thing: a }, kind: 'green-spots', done: 0, all: 2 });
    await done(rateAgain(desk, round, five));
    await done(rateAgain(desk, round, five));
    expect(roundNow(desk, round).again).toBeUndefined();
    const record = recordNow(desk, round);
    expect(record.reratings.map(({ body }) => body.ratings.map((r) => [r.first.value, r.coverage.value]))).toEqual([
      [[0.1, 0.05]],
      [[0.2, 0.05]],
    ]);
    expect(findingsOf(record, round, a)[0]?.body.coverage?.value).toBe(0.1);
  });

  it('is taken back one answer at a time', async () => {
    const { desk, round, a } = await walked();
    await done(rateAgain(desk, round, five));
    await done(undoInRound(desk, round));
    expect(roundNow(desk, round).again).toMatchObject({ zone: { thing: a }, done: 0 });
    expect(recordNow(desk, round).reratings).toEqual([]);
  });

  it('may be skipped with one touch', async () => {
    const { desk, round } = await walked();
    await done(skipAskingAgain(desk, round));
    expect(roundNow(desk, round).again).toBeUndefined();
    expect(recordNow(desk, round).rounds.at(-1)?.body.askAgain).toEqual([]);
  });
});

describe('the round in memory', () => {
  it('is what the store holds: reading it anew changes nothing', async () => {
    const { desk, round, a, b } = await secondYear();
    await touches(desk, round, a, [{ do: 'open', key: 'green-spots/metal' }, cover('30')]);
    await done(leave(desk, round, a, { how: 'next' }));
    await touches(desk, round, b, [{ do: 'nothing' }]);
    const memory = memoryOf(desk, round);
    const before = { record: memory.get()?.record, draft: memory.draftOf(b), walk: roundNow(desk, round).walk };
    await memory.reload();
    expect({ record: memory.get()?.record, draft: memory.draftOf(b), walk: roundNow(desk, round).walk }).toEqual(
      before,
    );
  });

  it('is the same view until something changed', async () => {
    const { desk, round, a } = await secondYear();
    const seen = zoneNow(desk, round, a);
    expect(zoneNow(desk, round, a)).toBe(seen);
    await touches(desk, round, a, [{ do: 'beading', beading: 'wets' }]);
    expect(zoneNow(desk, round, a)).not.toBe(seen);
  });
});

describe('a reading overtaken by a touch', () => {
  it('does not forget the touch', async () => {
    const { desk, round, a } = await secondYear();
    const memory = memoryOf(desk, round);
    const reading = memory.reload();
    await touches(desk, round, a, [{ do: 'beading', beading: 'sheets' }]);
    await reading;
    expect(memory.openTouches(a)).toHaveLength(1);
    expect(memory.draftOf(a)?.beading).toBe('sheets');
  });
});
