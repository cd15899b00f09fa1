import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { writeSurvey } from '../../src/engine/exchange';
import type { Entry } from '../../src/engine/record';
import { erasure } from '../files/erasures';
import { seeded } from '../files/seeded';
import { smallSurvey } from '../files/smallSurvey';

const { collection, entries } = smallSurvey();
const odd = ['İstanbul', 'ılık', 'Ångström', 'ärger', 'zebra', 'Zürich', 'žluť', '한글', '\u0130i\u0131I'];
const all: Entry[] = [
  ...entries,
  ...odd.map((word, i) => ({
    ...(entries[0] as Entry),
    id: `019e7044-8800-7000-8000-0000000fff${String(i).padStart(2, '0')}`,
    thing: `lantern/${word}`,
    kind: 'lantern',
    body: { [word]: word },
  })),
  erasure(990, { entries: [(entries[3] as Entry).id] }),
];

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'patina-round-anywhere-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const places = [
  { LC_ALL: 'C.UTF-8', LANG: 'C.UTF-8', TZ: 'UTC' },
  { LC_ALL: 'tr_TR.UTF-8', LANG: 'tr_TR.UTF-8', TZ: 'Pacific/Kiritimati' },
  { LC_ALL: 'sv_SE.UTF-8', LANG: 'sv_SE.UTF-8', TZ: 'America/St_Johns' },
];

test('a joined survey is the same bytes in every language, time zone and order its entries came in', () => {
  const draw = seeded(5);
  const hashes = places.map((place, i) => {
    const shuffled = all.map((entry) => ({ entry, key: draw.next() })).sort((a, b) => a.key - b.key);
    const file = join(folder, `${i}.json`);
    // Written by another program: in the order they lie, fields turned round, without a check sum.
    const fields = shuffled.map(({ entry }) => Object.fromEntries(Object.entries(entry).reverse()));
    writeFileSync(file, JSON.stringify({ version: '1.0', entries: fields, format: 'patina-round-survey', collection }));
    const call = ['run', '--silent', 'survey', '--', 'join', file, file];
    const ran = spawnSync('npm', call, { env: { ...process.env, ...place }, maxBuffer: 10_000_000 });
    expect([ran.status, ran.stderr.toString()]).toEqual([0, '']);
    return createHash('sha256').update(ran.stdout).digest('hex');
  });
  const here = createHash('sha256').update(writeSurvey(collection, all)).digest('hex');
  expect(hashes).toEqual(places.map(() => here));
}, 120_000);
