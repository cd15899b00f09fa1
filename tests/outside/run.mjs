// npm run test:outside: what other people's programs say of what this one makes. Brings their Debian packages itself.
import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, openSync, readFileSync } from 'node:fs';
import { runSuites } from '../suites.mjs';

const packages = [
  'apache2',
  'firefox-esr',
  'gir1.2-webkit2-4.1',
  'libimage-exiftool-perl',
  'openssl',
  'poppler-utils',
  'python3-gi',
  'python3-icalendar',
  'python3-jsonschema',
  'python3-pil',
  'r-base-core',
  'r-cran-survival',
  'unzip',
  'webkit2gtk-driver',
  'xvfb',
];

mkdirSync('build', { recursive: true });
const missing = packages.filter((name) => spawnSync('dpkg', ['-s', name], { stdio: 'ignore' }).status !== 0);
if (missing.length > 0) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  // A file, not our own output: a service that a package starts would hold it open after we have ended.
  const said = openSync('build/debian.txt', 'w');
  const stdio = ['ignore', said, said];
  const brought = [['update'], ['install', '-y', '--no-install-recommends', ...missing]].every(
    (args) => spawnSync('apt-get', args, { stdio, env, timeout: 600_000 }).status === 0,
  );
  if (!brought) {
    console.error(readFileSync('build/debian.txt', 'utf8').slice(-2000));
    console.error(
      `These tests need Debian's ${missing.join(' and ')}: install them with apt-get install ${missing.join(' ')}.`,
    );
    process.exit(1);
  }
}

// Lighthouse and its 200 packages stand apart from the house, with a lock of their own: nothing else needs them.
const apart = 'build/lighthouse';
const lock = 'package-lock.json';
const same =
  existsSync(`${apart}/node_modules`) &&
  existsSync(`${apart}/${lock}`) &&
  readFileSync(`${apart}/${lock}`, 'utf8') === readFileSync(`tests/lighthouse/${lock}`, 'utf8');
if (!same) {
  mkdirSync(apart, { recursive: true });
  for (const name of ['package.json', lock]) cpSync(`tests/lighthouse/${name}`, `${apart}/${name}`);
  const args = ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'];
  const brought = spawnSync('npm', args, { cwd: apart, stdio: ['ignore', 'ignore', 'inherit'], timeout: 180_000 });
  if (brought.status !== 0) {
    console.error('Lighthouse could not be brought from the npm registry: its test will fail.');
  }
}

await runSuites([
  { name: "other people's readers", project: 'outside', limit: 12 },
  { name: 'Lighthouse', project: 'lighthouse', limit: 7 },
]);
