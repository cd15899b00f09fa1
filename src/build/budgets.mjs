// What a cold tablet must load before the first screen, and what it must keep to work without a network.
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';

const startBudget = 170_000; // bytes, gzip
// Bytes, as they lie on the tablet. 2 MB were set when the app had twenty screens; eighty of them and twenty papers do the whole job. One round's photos weigh a hundred times as much.
const keptBudget = 2_900_000;
// Each further language, whole: read at the start of the app, so it is one piece, and without a network too.
const languageBudget = 700_000;

/** @param {string} dist @returns {{ sizes: string[], faults: string[] }} Sizes in words; a build with faults has failed. */
export function budgetsOf(dist) {
  const size = (file) => readFileSync(join(dist, file)).length;
  const zipped = (file) => gzipSync(readFileSync(join(dist, file)), { level: 9 }).length;
  const emitted = filesUnder(dist).filter((f) => f !== 'sw.js');
  const kept = [...readFileSync(join(dist, 'sw.js'), 'utf8').matchAll(/"url":"([^"]+)"/g)].map((m) => m[1]);
  const start = startFiles(dist);
  const startSize = sum(start.map(zipped));
  const ofLanguage = kept.filter((file) => /^assets\/de-/.test(file));
  const languageSize = sum(ofLanguage.map(size));
  const keptSize = sum(kept.map(size)) - languageSize;

  const faults = [];
  if (startSize > startBudget) faults.push(`start code is over its budget: ${start.join(', ')}`);
  if (keptSize > keptBudget) faults.push('what the tablet keeps offline is over its budget');
  if (languageSize > languageBudget) faults.push('the German is over its budget');
  for (const file of emitted.filter((f) => !kept.includes(f))) faults.push(`${file} is built but not kept offline`);
  // Checking of files needs Zod, and no file is read before somebody opens one: 25 kB the first screen can do without.
  for (const file of start.filter((f) => holds(dist, f, 'ZodError')))
    faults.push(`${file} brings Zod into the start code`);
  return {
    sizes: [
      `start code   ${kB(startSize)} of ${kB(startBudget)} gzip, ${start.length} files`,
      `kept offline ${kB(keptSize)} of ${kB(keptBudget)}, ${kept.length} files`,
      `and German   ${kB(languageSize)} of ${kB(languageBudget)}`,
    ],
    faults,
  };
}

/** The page, its scripts, styles and preloads, and all they import before they can run. */
function startFiles(dist) {
  const page = readFileSync(join(dist, 'index.html'), 'utf8');
  const found = new Set(['index.html']);
  const named = [...page.matchAll(/(?:src|href)="\.\/([^"]+\.(?:js|css))"/g)].map((m) => m[1]);
  for (const file of named) follow(dist, file, found);
  return [...found];
}

function follow(dist, file, found) {
  if (found.has(file)) return;
  found.add(file);
  if (!file.endsWith('.js')) return;
  const code = readFileSync(join(dist, file), 'utf8');
  for (const m of code.matchAll(/(?:from|import)\s*["'`](\.{1,2}\/[^"'`]+\.js)["'`]/g)) {
    follow(dist, join(file, '..', m[1]), found);
  }
}

function filesUnder(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((f) => f.isFile())
    .map((f) => relative(folder, join(f.parentPath, f.name)));
}

const holds = (dist, file, text) => file.endsWith('.js') && readFileSync(join(dist, file), 'utf8').includes(text);
const sum = (sizes) => sizes.reduce((total, size) => total + size, 0);
const kB = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;
