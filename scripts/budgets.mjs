// What a cold tablet must load before the first screen, and what it must keep to work without a network.
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';

const startBudget = 170_000; // bytes, gzip
const keptBudget = 2_000_000; // bytes, as they lie on the tablet

/** Prints sizes against budgets; gives 0 when all hold, 1 when one does not. */
export function checkBudgets(dist) {
  const emitted = filesUnder(dist).filter((f) => f !== 'sw.js');
  const kept = new Set([...readFileSync(join(dist, 'sw.js'), 'utf8').matchAll(/"url":"([^"]+)"/g)].map((m) => m[1]));
  const start = startFiles(dist);
  const startSize = sum(start, (f) => gzipSync(readFileSync(join(dist, f)), { level: 9 }).length);
  const keptSize = sum([...kept], (f) => readFileSync(join(dist, f)).length);
  const left = emitted.filter((f) => !kept.has(f));

  const faults = [];
  if (startSize > startBudget) faults.push(`start code is over its budget: ${start.join(', ')}`);
  if (keptSize > keptBudget) faults.push('what the tablet keeps offline is over its budget');
  if (left.length > 0) faults.push(`built but not kept offline: ${left.join(', ')}`);
  console.log(`start code   ${kB(startSize)} of ${kB(startBudget)} gzip, ${start.length} files`);
  console.log(`kept offline ${kB(keptSize)} of ${kB(keptBudget)}, ${kept.size} files`);
  for (const fault of faults) console.error(`build: ${fault}`);
  return faults.length > 0 ? 1 : 0;
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
  for (const m of code.matchAll(/(?:from|import)\s*["'](\.\/[^"']+\.js)["']/g))
    follow(dist, join(file, '..', m[1]), found);
}

function filesUnder(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((f) => f.isFile())
    .map((f) => relative(folder, join(f.parentPath, f.name)));
}

const sum = (items, size) => items.reduce((total, item) => total + size(item), 0);
const kB = (bytes) => `${(bytes / 1000).toFixed(1)} kB`;
