import { describe, expect, it } from 'vitest';
import { type DraftStart, type EarlierFinding, startDraft, type ZoneDraft } from '../../../src/engine/record/zoneDraft';
import { asking } from '../../../src/engine/record/zoneDraftAsks';
import { bodiesOf, type Leaving, refusal } from '../../../src/engine/record/zoneDraftBodies';
import { applyTouch, draftFrom, type ZoneTouch } from '../../../src/engine/record/zoneDraftTouch';

const step = (value: number, low: number, high: number) => ({ value, low, high, method: 'ladder' as const });
const five = step(0.05, 0.04, 0.075);
const twenty = step(0.2, 0.175, 0.25);
const thirty = step(0.3, 0.25, 0.35);

const earlier = (
  kind: string,
  over: Partial<EarlierFinding['body']> = {},
  more: Partial<EarlierFinding> = {},
): EarlierFinding => ({
  body: {
    sculpture: 'sculpture/s',
    round: 'round/2025',
    zone: 'zone/a',
    kind,
    origin: 'metal',
    coverage: twenty,
    severity: 'moderate',
    activity: 'active',
    ...over,
  },
  measure: 'area',
  stop: false,
  judgedIn: 'round/2025',
  ...more,
});

const start = (over: Partial<DraftStart> = {}): ZoneDraft =>
  startDraft({
    sculpture: 'sculpture/s',
    round: 'round/2026',
    zone: 'zone/a',
    zoneVersion: 1,
    ownEye: false,
    earlier: [],
    before: { round: 'round/2025', judgedIn: 'round/2025', date: '2025-05-13' },
    ...over,
  });

const touched = (draft: ZoneDraft, ...touches: ZoneTouch[]) => draftFrom(draft, touches);
const leave = (draft: ZoneDraft, leaving: Leaving) => {
  expect(refusal(draft, leaving)).toBeUndefined();
  return bodiesOf(draft, leaving);
};
const newGreen: ZoneTouch[] = [
  { do: 'kind', kind: 'green-spots', measure: 'area' },
  { do: 'origin', origin: 'metal' },
  { do: 'cover', coverage: five },
  { do: 'severity', severity: 'slight' },
];

describe('As last year', () => {
  it('is written as carried, and never as judged', () => {
    const { visit, findings } = leave(start({ earlier: [earlier('even-green-film')] }), { how: 'as last year' });
    expect(visit.state).toBe('carried');
    expect(visit.carriedFrom).toBe('round/2025');
    expect(findings).toEqual([
      expect.objectContaining({
        kind: 'even-green-film',
        round: 'round/2026',
        carriedFrom: 'round/2025',
        coverage: twenty,
      }),
    ]);
  });

  it('names the round in which somebody really looked, also when carried twice', () => {
    const carried = earlier(
      'even-green-film',
      { round: 'round/2025', carriedFrom: 'round/2023' },
      { judgedIn: 'round/2023' },
    );
    expect(leave(start({ earlier: [carried] }), { how: 'as last year' }).findings[0]?.carriedFrom).toBe('round/2023');
  });

  it('does not take last year’s photos and notes as this year’s', () => {
    const draft = start({
      earlier: [earlier('even-green-film', { photos: ['photo/x'], note: 'by the seam', against: 'same' })],
    });
    const body = leave(draft, { how: 'as last year' }).findings[0];
    expect(body).not.toHaveProperty('photos');
    expect(body).not.toHaveProperty('note');
    expect(body).not.toHaveProperty('against');
  });

  it('is refused for a stop word, naming it', () => {
    const draft = start({
      earlier: [
        earlier('pale-powdery-mounds', { count: 'one', coverage: undefined }, { measure: 'count', stop: true }),
      ],
    });
    expect(refusal(draft, { how: 'as last year' })).toEqual({
      code: 'round: stop word is not carried',
      params: { kind: 'pale-powdery-mounds' },
    });
  });

  it('is refused where no earlier round has an answer', () => {
    expect(refusal(start({ before: undefined }), { how: 'as last year' })?.code).toBe('round: no earlier round');
  });

  it('keeps a beading check made this year', () => {
    const draft = touched(start({ earlier: [earlier('even-green-film')] }), { do: 'beading', beading: 'sheets' });
    expect(leave(draft, { how: 'as last year' }).visit).toMatchObject({ state: 'carried', beading: 'sheets' });
  });
});

describe('Nothing found', () => {
  it('is one answer on a zone that held nothing', () => {
    expect(leave(start(), { how: 'nothing' })).toEqual({
      visit: expect.objectContaining({ state: 'nothing' }),
      findings: [],
    });
  });

  it('asks of each earlier finding whether it is gone', () => {
    const draft = touched(start({ earlier: [earlier('even-green-film'), earlier('black-crust')] }), { do: 'nothing' });
    expect(asking(draft).what).toBe('gone');
    expect(refusal(draft, { how: 'nothing' })?.params).toMatchObject({ n: 2 });
    const said = touched(draft, { do: 'gone', key: 'even-green-film/metal' }, { do: 'gone', key: 'black-crust/metal' });
    const { visit, findings } = leave(said, { how: 'next' });
    expect(visit.state).toBe('nothing');
    expect(findings.map((f) => [f.cleared, f.coverage?.value])).toEqual([
      [true, 0],
      [true, 0],
    ]);
  });

  it('is refused once something was recorded', () => {
    expect(refusal(touched(start(), ...newGreen), { how: 'nothing' })?.params).toEqual({ kind: 'green-spots' });
  });
});

describe('Could not reach', () => {
  it('is kept apart from looked, with its reason', () => {
    const draft = touched(start({ earlier: [earlier('even-green-film')] }), { do: 'could not reach' });
    expect(asking(draft).what).toBe('why');
    expect(leave(draft, { how: 'not looked', reason: 'nest' })).toEqual({
      visit: expect.objectContaining({ state: 'not looked', reason: 'nest' }),
      findings: [],
    });
  });

  it('is refused once something was recorded', () => {
    expect(refusal(touched(start(), ...newGreen), { how: 'not looked', reason: 'nest' })?.code).toBe(
      'round: not looked, yet something recorded',
    );
  });
});

describe('own eye first', () => {
  const two = { ownEye: true, earlier: [earlier('even-green-film'), earlier('black-crust', { coverage: five })] };

  it('opens the first earlier finding by itself and the next one after its answer', () => {
    const draft = start(two);
    expect(asking(draft)).toMatchObject({ what: 'extent', finding: { kind: 'even-green-film' } });
    expect(asking(touched(draft, { do: 'cover', coverage: twenty }))).toMatchObject({
      what: 'extent',
      finding: { kind: 'black-crust' },
    });
  });

  it('says "same" without a touch when the same step was chosen', () => {
    const draft = touched(start(two), { do: 'cover', coverage: twenty });
    expect(draft.findings[0]?.against).toBe('same');
  });

  it('takes an earlier value between two steps as the step that holds it', () => {
    const between = { ...step(0.22, 0.22, 0.22), method: 'ladder, adjusted' as const };
    const draft = touched(start({ ownEye: true, earlier: [earlier('even-green-film', { coverage: between })] }), {
      do: 'cover',
      coverage: twenty,
    });
    expect(draft.findings[0]?.against).toBe('same');
  });

  it('asks "same, changed, or earlier wrong" when another step was chosen, and rate again forgets the step', () => {
    const draft = touched(start(two), { do: 'cover', coverage: thirty });
    expect(asking(draft).what).toBe('against');
    expect(asking(touched(draft, { do: 'rate again' })).what).toBe('extent');
    const said = touched(draft, { do: 'against', against: 'changed' }, { do: 'cover', coverage: five });
    const { findings } = leave(said, { how: 'next' });
    expect(findings.map((f) => f.against)).toEqual(['changed', 'same']);
  });

  it('does not go on over an earlier finding nobody answered', () => {
    const draft = touched(start(two), { do: 'cover', coverage: twenty });
    expect(refusal(draft, { how: 'next' })).toMatchObject({
      code: 'round: earlier finding not answered',
      params: { n: 1 },
    });
    expect(leave(draft, { how: 'as last year' }).findings.map((f) => f.carriedFrom)).toEqual([undefined, 'round/2025']);
  });

  it('writes nothing of the comparison when it is off', () => {
    const draft = touched(
      start({ earlier: [earlier('even-green-film')] }),
      { do: 'open', key: 'even-green-film/metal' },
      { do: 'cover', coverage: thirty },
    );
    expect(leave(draft, { how: 'next' }).findings[0]).not.toHaveProperty('against');
  });
});

describe('a finding', () => {
  it('asks where it sits, how much, and how bad, and then nothing more', () => {
    const asked = newGreen.map((_, i) => asking(touched(start(), ...newGreen.slice(0, i + 1))).what);
    expect(asked).toEqual(['origin', 'extent', 'severity', 'card']);
  });

  it('is assumed unclear in activity and nothing else is assumed', () => {
    expect(leave(touched(start(), ...newGreen), { how: 'next' }).findings).toEqual([
      {
        sculpture: 'sculpture/s',
        round: 'round/2026',
        zone: 'zone/a',
        kind: 'green-spots',
        origin: 'metal',
        coverage: five,
        severity: 'slight',
        activity: 'unclear',
      },
    ]);
    const half = touched(start(), ...newGreen.slice(0, 3));
    expect(refusal(half, { how: 'next' })).toMatchObject({ params: { kind: 'green-spots', question: 'severity' } });
  });

  it('that can only sit in the metal is not asked where it sits', () => {
    const draft = touched(start(), { do: 'kind', kind: 'pits-new', measure: 'count', origin: 'metal' });
    expect(asking(draft)).toMatchObject({ what: 'extent', finding: { key: 'pits-new/metal' } });
  });

  it('recorded twice with one origin stays one finding', () => {
    const draft = touched(start(), ...newGreen, ...newGreen.slice(0, 2));
    expect(draft.findings).toHaveLength(1);
  });

  it('of a length or presence kind is not asked how much', () => {
    const draft = touched(
      start(),
      { do: 'kind', kind: 'open-joint', measure: 'length' },
      { do: 'origin', origin: 'metal' },
    );
    expect(asking(draft).what).toBe('severity');
  });

  it('said to cover none was a slip when new, and is gone when it was there before', () => {
    const none = { do: 'cover' as const, coverage: step(0, 0, 0) };
    expect(touched(start(), ...newGreen.slice(0, 2), none).findings).toEqual([]);
    const draft = touched(
      start({ earlier: [earlier('even-green-film')] }),
      { do: 'open', key: 'even-green-film/metal' },
      none,
    );
    expect(draft.findings[0]?.gone).toBe(true);
  });

  it('left half named is dropped when the pad is closed', () => {
    expect(touched(start(), newGreen[0] as ZoneTouch, { do: 'close' }).findings).toEqual([]);
  });

  it('keeps the photos that come to it, and forgets that one was expected', () => {
    const expecting = touched(start(), ...newGreen, { do: 'photo expected', of: 'green-spots/metal' });
    expect(expecting.photoExpected).toBe('green-spots/metal');
    const draft = touched(expecting, { do: 'photo', of: 'green-spots/metal', photo: 'photo/1' });
    expect(draft.photoExpected).toBeUndefined();
    expect(leave(draft, { how: 'next' }).findings[0]?.photos).toEqual(['photo/1']);
  });
});

describe('a zone opened again in the same round', () => {
  const visit = {
    sculpture: 'sculpture/s',
    round: 'round/2026',
    zone: 'zone/a',
    zoneVersion: 1,
    state: 'found' as const,
    beading: 'beads' as const,
  };

  it('stands as it was left, with carried answers not judged', () => {
    const judged = { ...earlier('black-crust').body, round: 'round/2026', coverage: thirty };
    const carried = { ...earlier('even-green-film').body, round: 'round/2026', carriedFrom: 'round/2025' };
    const draft = start({
      earlier: [earlier('even-green-film'), earlier('black-crust')],
      present: {
        visit,
        findings: [
          { body: judged, measure: 'area' },
          { body: carried, measure: 'area' },
        ],
      },
    });
    expect(draft.already).toBe('found');
    expect(draft.beading).toBe('beads');
    expect(draft.findings.map((f) => f.coverage?.value)).toEqual([undefined, 0.3]);
  });
});

describe('the log of touches', () => {
  it('gives back, one touch shorter, exactly the pad before the last touch', () => {
    const begin = start({ ownEye: true, earlier: [earlier('even-green-film')] });
    const touches: ZoneTouch[] = [
      { do: 'cover', coverage: thirty },
      { do: 'against', against: 'changed' },
      ...newGreen,
      { do: 'beading', beading: 'wets' },
    ];
    const states = touches.map((_, i) => draftFrom(begin, touches.slice(0, i)));
    touches.forEach((touch, i) => {
      expect(applyTouch(states[i] as ZoneDraft, touch)).toEqual(draftFrom(begin, touches.slice(0, i + 1)));
    });
    expect(states[0]).toEqual(begin);
  });

  it('survives a touch of a later version and a touch that does not fit', () => {
    const draft = start();
    const later = { do: 'something new' } as unknown as ZoneTouch;
    expect(
      touched(draft, later, { do: 'severity', severity: 'severe' }, { do: 'open', key: 'nowhere/metal' }).findings,
    ).toEqual([]);
  });
});
