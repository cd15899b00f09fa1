import { describe, expect, it } from 'vitest';
import type { PaperSource } from '../../../src/engine/reckoning';
import { type Current, type Entry, type KindOfThing, nameOf } from '../../../src/engine/record';
import { successorLetter } from '../../../src/papers/collection/successorLetter';
import { textOf } from '../../../src/papers/layout';
import { entry } from '../../files/entries';
import { gardenSurvey, sourceOf } from '../../files/gardenSource';

const garden = sourceOf(gardenSurvey());
const letter = (source: PaperSource = garden) => successorLetter.make(source, source.collection)!;
const text = (source?: PaperSource) => textOf(letter(source).body);
const stair = garden.works.find(({ record }) => record.sculpture.body.number === 'SW-02')!;

const current = (kind: KindOfThing, thing: string, within: string, body: Entry['body']): Current => {
  const lead = entry(900, { thing, kind, within, body });
  return { thing, kind, within, lead, line: 1, heads: [lead.id], gone: false };
};
/** The garden with something more known of the stair, or of the collection. */
const withThing = (kind: KindOfThing, thing: string, body: Entry['body'], ofStair = true): PaperSource => {
  const within = ofStair ? stair.record.sculpture.thing : garden.collection;
  const one = current(kind, thing, within, body);
  return ofStair
    ? { ...garden, works: garden.works.map((w) => (w === stair ? { ...w, within: [...w.within, one] } : w)) }
    : { ...garden, around: [...garden.around, one] };
};
const sculpture = stair.record.sculpture.thing;

describe('The letter to the successor', () => {
  it('says first what the last rounds left out, before any worry', () => {
    const said = text();
    const first = said.indexOf('Not looked at');
    expect(first).toBeGreaterThan(-1);
    expect(first).toBeLessThan(said.indexOf('Open worries'));
  });

  it('tells what was decided, what was not done and why, and who was against it', () => {
    const said = text();
    expect(said).toContain('Wax, mend or strip the stair');
    expect(said).toContain('Not done: Yearly wax only. Why: The cheapest in money and the dearest a good month');
    expect(said).toContain('Against it stood: Head of grounds');
    expect(said).toMatch(/To be looked at again on 20 November 2026/);
  });

  it('never says that all is at rest where nobody could tell whether it is', () => {
    const { collection, entries } = gardenSurvey();
    const unclear = entries.map((entry) =>
      entry.kind === 'finding' ? { ...entry, body: { ...entry.body, activity: 'unclear' } } : entry,
    );
    const said = text(sourceOf({ collection, entries: unclear }));
    expect(said).toContain('Those whose activity is unclear are not listed here.');
    expect(said).not.toMatch(/not at rest at the last/i);
  });

  it('tells each tripwire with where it stands', () => {
    expect(text()).toMatch(
      /What would change our mind .*: (?:has come|perhaps has come|not so far|cannot be told yet)/,
    );
  });

  it('tells the causes that still work, and none that was removed', () => {
    const said = text();
    expect(said).toMatch(/Spray of a basin or fountain, still at work, found 21 November 2024/);
    expect(said).not.toContain('Weep hole, removed');
  });

  it('tells of a danger to people before anything of metal', () => {
    const checks = [
      { thing: nameOf.personCheck('x'), body: { sculpture, what: 'The top arc rocks', opened: '2026-10-01' } },
    ];
    const source = {
      ...garden,
      works: garden.works.map((w) => (w === stair ? { ...w, record: { ...w.record, personChecks: checks } } : w)),
    } as unknown as PaperSource;
    expect(text(source)).toContain(
      'SW-02 Half-Tide Stair: The top arc rocks. Open since 1 October 2026; a named person has to close it.',
    );
    expect(text()).toContain('The record names no danger to people that is still open.');
  });

  it('tells where things are kept, by whom known, and leaves room to write while nothing is said', () => {
    const key = { sculpture, sort: 'keys', what: 'Pump house', where: 'Hook 3 in the porch', who: 'Head gardener' };
    const said = text(withThing('keptWhere', nameOf.keptWhere('k'), key));
    expect(said).toMatch(/Keys and codes: Pump house SW-02 Half-Tide Stair Hook 3 in the porch Head gardener/);
    const bare = { ...garden, works: [], around: [] };
    expect(textOf(successorLetter.make(bare, bare.collection)!.body)).toContain('Fill in by hand');
    expect(successorLetter.make(bare, bare.collection)!.lacks.join(' ')).toContain('Where things are kept');
  });

  it('tells which papers went out and to whom', () => {
    const out = {
      paper: 'board-case',
      title: 'Board case',
      date: '2026-09-01',
      by: 'Steward',
      status: 'final',
      to: 'the board',
      state: 'x',
    };
    expect(text(withThing('paperIssued', nameOf.paperIssued('i'), out))).toContain(
      '1 September 2026: Board case, to the board.',
    );
  });

  it('begins and ends with her own words, as she typed them, and says what is missing where there are none', () => {
    const about = garden.collection;
    const name = nameOf.paperText(successorLetter.id, 'begin', about);
    const body = {
      paper: successorLetter.id,
      about,
      part: 'begin',
      text: 'Dear <b>you</b>,\nwatch the pond.',
      date: '2026-10-01',
    };
    const source = withThing('paperText', name, body, false);
    expect(text(source).startsWith('Dear <b>you</b>,watch the pond.')).toBe(true);
    expect(letter(source).own).toMatchObject([
      { part: 'begin', text: body.text },
      { part: 'end', text: '' },
    ]);
    expect(letter().lacks).toContain('Words of your own at its head or end.');
    expect(letter(source).lacks).not.toContain('Words of your own at its head or end.');
  });

  it('tells how the archive is opened without this program', () => {
    expect(text()).toContain('nothing in it needs this program');
    expect(text()).toContain('data/README.txt');
  });

  it('is of the collection only', () => {
    expect(successorLetter.make(garden, sculpture)).toBeUndefined();
    expect(successorLetter.choices(garden)).toEqual([{ about: garden.collection, label: garden.name }]);
    expect(successorLetter.choices({ ...garden, works: [] })).toEqual([]);
  });
});
