// node scripts/run.mjs ENTRY.ts [arguments]: runs a TypeScript entry of src/ in Node, bundled when its bundle is
// missing or older than the sources. Arguments, standard input and output and the exit code are the entry's own.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const house = dirname(dirname(fileURLToPath(import.meta.url)));
const [entry, ...rest] = process.argv.slice(2);
const bundle = join(house, 'build', bundleName(entry));

if (stale(bundle)) {
  const here = process.cwd();
  process.chdir(house);
  const { bundleForNode } = await import('./bundle.mjs');
  await bundleForNode(entry, bundle);
  process.chdir(here);
}
const ran = spawnSync(process.execPath, [bundle, ...rest], { stdio: 'inherit', cwd: callersFolder() });
process.exitCode = ran.status ?? 1;

/** src/command/main.ts becomes survey.mjs, the name its users know; others keep folder and file. */
function bundleName(path) {
  return path === 'src/command/main.ts'
    ? 'survey.mjs'
    : `${path
        .replace(/^src\//, '')
        .replace(/\.ts$/, '')
        .replaceAll('/', '-')}.mjs`;
}

/** npm runs scripts in the folder of package.json; a file named on the command line is meant from where the caller stood. */
function callersFolder() {
  return resolve(process.env.INIT_CWD ?? process.cwd());
}

function stale(file) {
  if (!existsSync(file)) return true;
  const made = statSync(file).mtimeMs;
  return [join(house, 'package-lock.json'), ...filesUnder(join(house, 'src'))].some((f) => statSync(f).mtimeMs > made);
}

function filesUnder(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((f) => f.isFile())
    .map((f) => join(f.parentPath, f.name));
}
