import { describe, expect, it } from 'vitest';
import { nameOf } from '../../../src/engine/record';
import { paperSortOf } from '../../../src/papers';
import { paperHtml, textOf } from '../../../src/papers/layout';
import { wordsIn } from '../../../src/papers/work/visitorPanel';
import { first, uuid } from '../../files/entries';
import {
  allOf,
  everyText,
  garden,
  hostile,
  ofClass,
  ownWords,
  paperOf,
  sculpture,
  smallWith,
  wordsOf,
  workNamed,
  workOfZones,
} from './paperOf';

const issue = { author: 'Steward', status: 'draft', day: '2026-11-26', size: 'A4', invented: true } as const;

describe('the season log', () => {
  const log = (number: string, year: number) => paperOf('season-log', garden(), `${workNamed(number)} ${year}`);

  it('is offered for each work and year in which something was written down, the last year first', () => {
    const stair = workNamed('SW-02');
    const offered = (paperSortOf('season-log')?.choices(garden()) ?? []).filter(({ about }) => about.startsWith(stair));
    expect(offered.map(({ label }) => label)).toEqual(
      [2026, 2025, 2024, 2023, 2022, 2021].map((year) => `SW-02 Half-Tide Stair, ${year}`),
    );
  });

  it('says first what was not washed and not coated', () => {
    expect(wordsOf(log('SW-02', 2024))).toMatch(/^Not done Not washed: The whole work. Not coated: The whole work. /);
  });

  it('tells day, method, product and batch, people with hours, what the air said, and where', () => {
    const text = wordsOf(log('SW-02', 2025));
    expect(text).toContain('22 May 2025 Cold wax, 2 coats Cold paste wax, batch W-25A');
    expect(text).toMatch(/Steward [\d.]+\s?h, Helper [\d.]+\s?h/);
    expect(text).toContain('Wait at 11:20');
    expect(text).toContain('The whole work');
    expect(text).toContain('Gone on by Steward: The lift goes back tonight, and the wind dries it.');
  });

  it('names the zones left out of a coat', () => {
    const paper = paperOf('season-log', smallWith(), `${sculpture} 2026`);
    expect(textOf(paper.body[0])).toContain('Not washed: The whole work.');
    expect(textOf(paper.body[0])).toContain('Not coated: B Base.');
  });

  it('says of a coat without a reading that there is none, and beside the paper what else is not said', () => {
    const paper = paperOf('season-log', smallWith(), `${sculpture} 2026`);
    expect(wordsOf(paper)).toContain('no reading');
    expect(paper.lacks).toEqual([
      '1 entry does not say who worked and how long.',
      '1 coating names no batch.',
      '1 coating has no reading of air and surface.',
    ]);
  });

  it('of a year in which nothing was written says that, and nothing else', () => {
    expect(wordsOf(paperOf('season-log', smallWith(), `${sculpture} 1999`)).trim()).toBe(
      'Not done Nothing is written down for 1999.',
    );
  });

  it('of a year that is none is no paper', () => {
    expect(paperSortOf('season-log')?.make(smallWith(), `${sculpture} soon`)).toBeUndefined();
  });
});

describe('the note to the insurer', () => {
  const note = (number: string) => paperOf('insurer-note', garden(), workNamed(number));

  it('says first what was not looked at, then what was there before with the first day it is known', () => {
    const paper = note('SW-02');
    expect(textOf(paper.body.find(Boolean))).toContain('All 9 zones were looked at');
    expect(wordsOf(paper)).toMatch(/Pale powdery mounds, in the metal I 9 October 2025/);
  });

  it('holds proof of upkeep year by year, and says where a year had none', () => {
    const text = wordsOf(note('SW-02'));
    expect(text).toMatch(/2026 12 May 2026 1 21 May 2026 21 May 2026 –/);
    expect(text).toMatch(/2024 14 May 2024 – – – Other, May 2024/);
  });

  it('tells contractors and every day of hot work with its permit and watch', () => {
    const text = wordsOf(note('SW-03'));
    expect(text).toContain('Colour anew; 4 September 2023 to 22 September 2023; by Foundry team');
    expect(text).toMatch(/12 September 2023 Hot work 7 of 2023.* 11 m 60 min asked for; kept, by Helper/);
    expect(text.split('Repatination').length).toBe(2);
  });

  it('gives values where they are recorded, and says of every other insert that none is', () => {
    expect(wordsOf(paperOf('insurer-note', smallWith()))).toMatch(/glass A, Shoulder 2 EUR 125/);
    expect(wordsOf(note('SW-03'))).toContain('No value is recorded for: 1 × Cast glass, lens L1;');
    expect(note('SW-03').lacks).toContain('5 inserts have no value.');
  });

  it('says who carries the risk as it was written, and where nobody wrote it that nobody did', () => {
    expect(wordsOf(note('SW-03'))).toContain('Foundry team answers for the work until 22 November 2026');
    expect(wordsOf(note('SW-01'))).toContain('The record does not say who carries the risk');
    const own = ownWords('insurer-note', 'risk', sculpture, 'The lender carries it until unpacking.');
    expect(wordsOf(paperOf('insurer-note', smallWith(own)))).toContain('The lender carries it until unpacking.');
  });

  it('holds nothing anybody thought of a cause', () => {
    expect(wordsOf(note('SW-02'))).not.toMatch(/chloride|desalting/);
    expect(wordsOf(paperOf('insurer-note', smallWith()))).not.toContain('The pond keeps it damp');
  });

  it('tells incidents as they were written down, with whether they are closed', () => {
    expect(wordsOf(paperOf('insurer-note', smallWith()))).toMatch(
      /12 January 2026\. Storm, or a branch on it: A branch lies on it Closed on 13 January 2026\./,
    );
  });
});

describe('the conservator’s page', () => {
  const page = (number: string) => paperOf('conservator-page', garden(), workNamed(number));

  it('says why it asks: the zones of stop words and those where wax does not hold, and what was seen there', () => {
    const text = wordsOf(page('SW-02'));
    expect(text).toMatch(/I, Base ring .*Pale powdery mounds and Pits, new or bright: not washed, not waxed/);
    expect(text).toMatch(/H, Lower arcs, spray band .*Waxing does not hold here\./);
  });

  it('has room under each question, a drawing without hatches, and what was thought in a box of its own', () => {
    const { body } = page('SW-02');
    expect(allOf(body, ofClass('room-line')).length).toBeGreaterThan(20);
    expect(allOf(body, ({ tag }) => tag === 'path').every(({ at }) => at.fill === undefined)).toBe(true);
    expect(textOf(allOf(body, ofClass('thought')))).toContain('Spot test for chloride');
  });

  it('puts her own question before all reasons of a rule', () => {
    const own = ownWords('conservator-page', 'question', sculpture, 'May we wash zone A?');
    const text = wordsOf(paperOf('conservator-page', smallWith(own)));
    expect(text.indexOf('May we wash zone A?')).toBeLessThan(text.indexOf('Why we ask'));
  });

  it('is made of a work nobody has looked at, and says so', () => {
    const paper = paperOf('conservator-page', workOfZones(2, false));
    expect(textOf(paper.body[0])).toContain('No round of this work has been made yet.');
    expect(wordsOf(paper)).toContain('What must never be done to this work?');
  });
});

describe('the visitor panel', () => {
  it.each(['SW-01', 'SW-02', 'SW-03', 'SW-04', 'SW-05', 'SW-06'])(
    'of %s has 60 to 120 words, and tells how many',
    (n) => {
      const paper = paperOf('visitor-panel', garden(), workNamed(n));
      const words = wordsIn(textOf(allOf(paper.body, ofClass('panel'))));
      expect(words).toBeGreaterThanOrEqual(60);
      expect(words).toBeLessThanOrEqual(120);
      expect(wordsOf(paper)).toContain(`${words} words on the panel`);
    },
  );

  it('says why it is waxed, what green means and what to leave alone', () => {
    const text = wordsOf(paperOf('visitor-panel', garden(), workNamed('SW-02')));
    for (const told of ['thinly waxed, last in May 2026', 'Green is not dirt', 'Please do not climb on it'])
      expect(text).toContain(told);
  });

  it('of a work that was never waxed says nothing of wax', () => {
    const paper = paperOf('visitor-panel', workOfZones(2, true));
    expect(wordsOf(paper)).not.toMatch(/wax/i);
    expect(paper.lacks).toContain('No waxing is recorded of this work, so the panel says nothing of wax.');
  });

  it('counts what a person reads as a word, and tells when there are too many', () => {
    expect(wordsIn('Bronze – of 1974, in the sun')).toBe(6);
    const own = ownWords('visitor-panel', 'whole', sculpture, 'word '.repeat(130));
    expect(paperOf('visitor-panel', smallWith(own)).lacks[0]).toMatch(/^The panel has 13\d words; more than 120/);
  });
});

it.each(
  ['season-log', 'insurer-note', 'conservator-page', 'visitor-panel'].flatMap((sort) =>
    hostile.map((text) => [sort, text]),
  ),
)('in the %s what a person wrote stands as text, whatever it holds: %s', (sort, text) => {
  const about = sort === 'season-log' ? `${sculpture} 2026` : sculpture;
  const made = (words: string) => paperHtml(paperOf(sort, everyText(words), about), issue, () => undefined);
  const tags = (page: string) => [...page.matchAll(/<[a-z/!][^>]*>/gi)].map(([tag]) => tag.split(/[\s>]/)[0]);
  expect(tags(made(text))).toEqual(tags(made('Plain')));
  expect(made(text)).not.toContain(text);
});

it('a paper of a work that is not there is none', () => {
  for (const sort of ['condition-report', 'insurer-note', 'conservator-page', 'visitor-panel'])
    expect(paperSortOf(sort)?.make(garden(), nameOf.sculpture(uuid(999)))).toBeUndefined();
});

it('an insert whose zone is gone keeps its value in the note, without a zone', () => {
  const loose = first(6100, nameOf.insert(uuid(301)), 'insert', {
    ...{ sculpture, zone: nameOf.zone(uuid(998)), material: 'stone', count: 1, removable: 'no' },
  });
  const value = first(6101, nameOf.insertValue(nameOf.insert(uuid(301))), 'insertValue', {
    insert: nameOf.insert(uuid(301)),
    value: { minor: 5000, currency: 'EUR' },
  });
  expect(wordsOf(paperOf('insurer-note', smallWith(loose, value)))).toMatch(/stone – 1 EUR 50/);
});
