// node src/build/run.mjs ENTRY.ts [arguments]: runs a TypeScript entry in Node, bundled anew when its bundle is missing
// or older than the sources. Arguments, standard input and output and the exit code are the entry's own.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const house = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
process.chdir(house);
const [entry, ...rest] = process.argv.slice(2);
const isCommand = entry === 'src/command/main.ts';
const bundle = isCommand ? 'build/survey.mjs' : `build/${entry.replace(/\.ts$/, '').replaceAll('/', '-')}.mjs`;

if (stale(bundle)) {
  const { bundleForNode } = await import('./bundle.mjs');
  await bundleForNode(entry, bundle, { alone: isCommand });
}
// npm runs scripts in the folder of package.json; a file named by the caller is meant from where the caller stood.
const cwd = isCommand ? resolve(process.env.INIT_CWD ?? house) : house;
process.exitCode = spawnSync(process.execPath, [join(house, bundle), ...rest], { stdio: 'inherit', cwd }).status ?? 1;

function stale(file) {
  if (!existsSync(file)) return true;
  const made = statSync(file).mtimeMs;
  const sources = [...filesUnder('src'), ...filesUnder(dirname(entry)), 'package-lock.json'];
  return sources.some((source) => statSync(source).mtimeMs > made);
}

function filesUnder(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((f) => f.isFile())
    .map((f) => join(f.parentPath, f.name));
}
