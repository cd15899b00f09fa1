import { describe, expect, it } from 'vitest';
import { proposalOf, verdictOf } from '../../../src/engine/year';
import { aZone, classed, codes, facts, months, onNow, said, thing, work } from './invented';

describe('What a year might hold for a work', () => {
  it('is a look where nothing presses, three rounds were made, and one of them last year; the usual least is said', () => {
    const { survey, reasons } = proposalOf(facts(), 2026);
    expect(survey).toBe('look');
    expect(codes(reasons.survey)).toEqual(['year: a look will do', 'year: usual least']);
  });

  it.each([
    ['nobody has looked yet', { need: null, rounds: [] }, 'year: no round yet'],
    ['something could hurt people', { need: classed({ dangers: 1 }) }, 'year: danger'],
    ['a stop word was seen', { need: classed({ stopWords: ['pale-mounds'] }) }, 'year: stop word'],
    ['it is urgent', { need: classed({ urgency: 1 }) }, 'year: urgency'],
    ['the signs are plain', { need: classed({ condition: 2 }) }, 'year: condition'],
    ['a zone was not seen', { need: classed({ unseen: ['zone/B'] }) }, 'year: zones not seen'],
    [
      'no round was made the year before',
      { rounds: ['2022-05-10', '2023-05-10', '2024-05-10'] },
      'year: no round the year before',
    ],
    ['fewer than three rounds were made', { rounds: ['2024-05-10', '2025-05-10'] }, 'year: too few rounds'],
  ] as const)('is a full round where %s', (_, given, code) => {
    const { survey, reasons } = proposalOf(facts(given), 2026);
    expect(survey).toBe('full');
    expect(codes(reasons.survey)).toEqual([code]);
  });

  it('is nothing while the work is away for the whole year, and a survey where it comes back within it', () => {
    const move = (backDue: string) =>
      thing('move', '1', { sculpture: work, sort: 'loan out', from: 'quay', to: 'hall', left: '2025-11-01', backDue });
    expect(proposalOf(facts({ away: move('2027-02-01') }), 2026)).toMatchObject({ survey: 'none', waxes: 0 });
    expect(proposalOf(facts({ away: move('2026-04-01') }), 2026).survey).toBe('look');
  });

  it('never proposes a first wax: whether to begin is not the app’s to say', () => {
    const { waxes, reasons } = proposalOf(facts({ coatings: [] }), 2026);
    expect(waxes).toBe(0);
    expect(codes(reasons.waxes)).toEqual(['year: never waxed']);
  });

  it('keeps the rhythm of a work waxed every second year while its green stays away', () => {
    const secondYear = { coatings: ['2021-05-20', '2023-05-20', '2025-05-20'] };
    expect(proposalOf(facts(secondYear), 2026).waxes).toBe(0);
    expect(proposalOf(facts(secondYear), 2027).waxes).toBe(1);
    const back = proposalOf(facts({ ...secondYear, holds: [onNow('zone/A', 'back')] }), 2026);
    expect(back.waxes).toBe(1);
    expect(codes(back.reasons.waxes)).toContain('year: green is back');
  });

  it('is a second wax where the coatings of a quarter of the area are expected to last no seven months', () => {
    const short = { advice: [said('zone/A', { expected: months(5) })] };
    expect(proposalOf(facts(short), 2026).waxes).toBe(2);
    const zones = [
      { zone: aZone('A'), m2: 1 },
      { zone: aZone('B'), m2: 3.1 },
    ];
    expect(proposalOf(facts({ ...short, zones }), 2026).waxes).toBe(1);
    expect(proposalOf(facts({ advice: [said('zone/A', { expected: months(8) })] }), 2026).waxes).toBe(1);
  });

  it('never answers wax that does not hold with more wax: it says whom to ask', () => {
    const fails = { advice: ['A', 'B'].map((l) => said(`zone/${l}`, { asksConservator: true, expected: months(2) })) };
    const { waxes, reasons } = proposalOf(facts(fails), 2026);
    expect(waxes).toBe(1);
    expect(reasons.waxes[0]).toEqual({ code: 'year: wax does not hold', params: { letters: 'A, B' } });
  });

  it('says before the wax that a stop word comes first', () => {
    const { reasons } = proposalOf(facts({ need: classed({ stopWords: ['pale-mounds'] }) }), 2026);
    expect(codes(reasons.waxes)[0]).toBe('year: no wax before the stop word');
  });

  it('books a lift only where hands go up, not for a look from the ground', () => {
    const zones = [{ zone: aZone('A', { reach: 'lift' }), m2: 1 }];
    expect(proposalOf(facts({ zones, need: classed({ urgency: 2 }) }), 2026).lift).toBe(true);
    expect(proposalOf(facts({ zones, coatings: ['2023-05-01', '2025-05-01'] }), 2026).lift).toBeUndefined();
  });
});

describe('The verdict at the end of a year', () => {
  const incident = (closed?: object) =>
    thing('incident', '1', { sculpture: work, date: '2026-09-01', sort: 'storm', what: 'x', danger: 'none', closed });
  const campaign = (given: object = {}) =>
    thing('campaign', '1', { sculpture: work, title: 'The stair', opened: '2024-11-21', step: 'money', ...given });

  it('is to hold where nothing presses', () => {
    expect(verdictOf(facts(), [], [])).toMatchObject({ verdict: 'hold' });
  });

  it('is open where nobody has looked', () => {
    expect(verdictOf(facts({ need: null }), [], [])).toMatchObject({ verdict: null });
  });

  it.each([
    ['watch', { need: classed({ urgency: 1 }) }],
    ['watch', { holds: [onNow('zone/A', 'back')] }],
    ['treat locally', { need: classed({ recommendation: 2 }) }],
    ['ask a conservator', { need: classed({ stopWords: ['pale-mounds'], recommendation: 2 }) }],
    ['ask a conservator', { need: classed({ asks: true }) }],
    ['ask a conservator', { advice: [said('zone/A', { asksConservator: true })] }],
  ] as const)('is “%s” by what the record shows', (verdict, given) => {
    const proposed = verdictOf(facts(given), [], []);
    expect(proposed.verdict).toBe(verdict);
    expect(proposed.reasons.length).toBeGreaterThan(0);
  });

  it('is a campaign only while one is under way', () => {
    const need = classed({ stopWords: ['pale-mounds'] });
    expect(verdictOf(facts({ need }), [campaign()], []).verdict).toBe('campaign');
    expect(verdictOf(facts({ need }), [campaign({ ended: '2025-09-22' })], []).verdict).toBe('ask a conservator');
    expect(verdictOf(facts({ need }), [campaign({ givenUp: 'No money' })], []).verdict).toBe('ask a conservator');
  });

  it('tells an open incident whatever else it proposes', () => {
    const proposed = verdictOf(facts({ need: classed({ asks: true }) }), [], [incident()]);
    expect(codes(proposed.reasons)).toEqual(['year: asks whether major treatment is due', 'year: incident open']);
  });

  it('watches after an incident until it is closed', () => {
    expect(verdictOf(facts(), [], [incident()]).verdict).toBe('watch');
    expect(verdictOf(facts(), [], [incident({ on: '2026-09-20' })]).verdict).toBe('hold');
  });
});
