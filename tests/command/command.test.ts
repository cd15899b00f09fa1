import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { runCommand } from '../../src/command/runCommand';
import { scoreRound } from '../../src/engine/condition';
import { readSurvey, writeSurvey } from '../../src/engine/exchange';
import { assemble, type Entry, gather, latestRound } from '../../src/engine/record';
import { seededSurvey } from '../files/seededSurvey';

const { collection, entries } = seededSurvey({ works: 2, zonesEach: 6, rounds: 3, photos: 2, seed: 11 });
const bytes = writeSurvey(collection, entries);
const half = (keep: (entry: Entry) => boolean) => writeSurvey(collection, entries.filter(keep));
const files: Record<string, Uint8Array> = {
  'all.json': bytes,
  'early.json': half((e) => !(e.kind === 'finding' && e.n % 2 === 0)),
  'late.json': half((e) => !(e.kind === 'finding' && e.n % 2 === 1)),
  'cut.json': bytes.subarray(0, bytes.length - 40),
  'other.json': writeSurvey('collection/other', [
    { ...(entries[0] as Entry), thing: 'collection/other', within: 'collection/other' },
  ]),
};
const read = (file: string): Uint8Array => {
  const found = files[file];
  if (!found) throw new Error('no such file');
  return found;
};
const run = (...words: string[]) => runCommand(words, read);
const text = (out: string | Uint8Array) => (typeof out === 'string' ? out : new TextDecoder().decode(out));

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'patina-round-command-'));
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
});
afterAll(() => rmSync(folder, { recursive: true }));

test('score gives the engine’s own figures for each work, with ranges, reasons in words, findings and verdicts', () => {
  const { code, out, err } = run('score', 'all.json');
  expect([code, err]).toEqual([0, '']);
  const scored = JSON.parse(text(out));
  const works = [...assemble(entries).values()].filter((c) => c.kind === 'sculpture');
  expect(scored.sculptures).toHaveLength(works.length);
  for (const shown of scored.sculptures) {
    const record = gather([...assemble(entries).values()].filter((c) => c.within === shown.id));
    const round = record && latestRound(record);
    if (!record || !round) throw new Error('no round');
    const score = scoreRound(record, round.thing);
    expect(shown.round.id).toBe(round.thing);
    expect([shown.index.value, shown.index.low, shown.index.high]).toEqual([score.value, score.low, score.high]);
    expect(shown.index.low).toBeLessThan(shown.index.value);
    expect(shown.seenShare).toBe(1);
    expect(shown.zones).toHaveLength(6);
    expect(shown.zones.flatMap((z: { findings: unknown[] }) => z.findings).length).toBe(
      score.zones.flatMap((z) => z.findings).length,
    );
    expect(shown.change.comparable.ok).toBe(true);
    expect(shown.change.findings.length).toBeGreaterThan(0);
    for (const zone of shown.zones) {
      expect(['worse', 'better', 'no sure change', 'carried', 'not comparable']).toContain(zone.verdict);
      for (const f of zone.findings) {
        const { hazard, severity, activity, extent } = f.parts;
        expect(f.loss).toBeCloseTo(Math.min(0.98, hazard * severity * activity * extent), 10);
      }
    }
  }
  const said = JSON.stringify(scored).match(/"says":"[^"]*"/g) ?? [];
  expect(said.length).toBeGreaterThan(20);
  expect(said.filter((s) => /undefined|NaN|\[object/.test(s))).toEqual([]);
  expect(scored.needs.zones.map((z: { rank: number }) => z.rank)[0]).toBe(1);
  expect(scored.needs.zones).toHaveLength(12);
});

test('a danger on a work nobody has walked round yet stands first all the same, in words', () => {
  const early = entries.filter((e) => !['round', 'visit', 'finding'].includes(e.kind));
  const work = early.find((e) => e.kind === 'sculpture') as Entry;
  const check: Entry = {
    ...work,
    id: '019a0000-0000-7000-8000-000000000001',
    thing: 'personCheck/1',
    kind: 'personCheck',
    body: { sculpture: work.thing, what: 'the plaque is loose', opened: '2026-05-12' },
  };
  const file = writeSurvey(collection, [...early, check]);
  const { code, out } = runCommand(['score', 'x'], () => file);
  expect(code).toBe(0);
  const scored = JSON.parse(text(out));
  expect(scored.needs.people).toHaveLength(1);
  expect(scored.needs.people[0]).toMatchObject({ sculpture: work.thing, check: 'personCheck/1' });
  expect(scored.needs.people[0].reasons[0].says).toContain('the plaque is loose');
  const shown = scored.sculptures.find((s: { id: string }) => s.id === work.thing);
  expect(shown).toMatchObject({ round: null, index: null, classes: null, change: null });
  expect(shown.dangers).toHaveLength(1);
});

test('check says ok, or what is wrong and what to do, with exit code 1', () => {
  expect(run('check', 'all.json')).toMatchObject({ code: 0, err: '' });
  expect(text(run('check', 'all.json').out)).toMatch(/^ok\n/);
  const cut = run('check', 'cut.json');
  expect(cut.code).toBe(1);
  expect(text(cut.out).split('\n').filter(Boolean).length).toBeGreaterThan(1);
  expect(run('score', 'cut.json')).toMatchObject({ code: 1, out: '' });
});

test('join writes the union: the same bytes whoever comes first, and the whole where the halves make one', () => {
  const ab = run('join', 'early.json', 'late.json');
  const ba = run('join', 'late.json', 'early.json');
  expect([ab.code, ba.code]).toEqual([0, 0]);
  expect(ab.out).toEqual(ba.out);
  expect(text(ab.out)).toBe(text(bytes));
  expect(readSurvey(ab.out as Uint8Array).ok).toBe(true);
});

test('two collections are not united in silence', () => {
  const refused = run('join', 'all.json', 'other.json');
  expect(refused).toMatchObject({ code: 1, out: '' });
  expect(refused.err).toContain('two collections');
});

test.each([[[]], [['dance']], [['score']], [['join', 'all.json']], [['check', 'a', 'b']]])(
  'a call that is none says how to call it, with exit code 2: %j',
  (words) => {
    const ran = run(...words);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain('survey score FILE');
  },
);

test('a file that is not there is said in a sentence', () => {
  const ran = run('score', 'gone.json');
  expect(ran.code).toBe(1);
  expect(ran.err).toContain('gone.json could not be read');
});

test('as it is called: npm run survey prints the answer and nothing else, from wherever it is called', () => {
  const ran = spawnSync('npm', ['run', '--silent', 'survey', '--', 'check', join(folder, 'all.json')], {
    encoding: 'utf8',
  });
  expect([ran.status, ran.stdout]).toEqual([0, 'ok\n']);
  const faulty = spawnSync('npm', ['run', '--silent', 'survey', '--', 'score', join(folder, 'cut.json')], {
    encoding: 'utf8',
  });
  expect(faulty.status).toBe(1);
  expect(faulty.stdout).toBe('');
}, 60_000);
