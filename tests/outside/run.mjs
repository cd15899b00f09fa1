// npm run test:outside: what other people's programs say of what this one makes. Brings their Debian packages itself.
import { spawnSync } from 'node:child_process';
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

const missing = packages.filter((name) => spawnSync('dpkg', ['-s', name], { stdio: 'ignore' }).status !== 0);
if (missing.length > 0) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const stdio = ['ignore', 'ignore', 'inherit'];
  const brought = [['update'], ['install', '-y', '--no-install-recommends', ...missing]].every(
    (args) => spawnSync('apt-get', args, { stdio, env }).status === 0,
  );
  if (!brought) {
    console.error(
      `These tests need Debian's ${missing.join(' and ')}: install them with apt-get install ${missing.join(' ')}.`,
    );
    process.exit(1);
  }
}
await runSuites([{ name: "other people's readers", project: 'outside' }]);
