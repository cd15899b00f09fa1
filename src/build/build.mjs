// The whole build, in order: the invented collection, the app, the command, then the budgets that may fail it.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { build } from 'vite';
import { budgetsOf } from './budgets.mjs';
import { bundleForNode } from './bundle.mjs';

if (existsSync('src/demo/make.ts')) {
  const made = spawnSync(process.execPath, ['src/build/run.mjs', 'src/demo/make.ts'], { stdio: 'inherit' });
  if (made.status !== 0) process.exit(made.status ?? 1);
}
// Vite has told what is wrong by then; its stack says nothing more.
await build({ logLevel: 'warn' }).catch(() => process.exit(1));
if (existsSync('src/command/main.ts')) await bundleForNode('src/command/main.ts', 'build/survey.mjs', { alone: true });

const { sizes, faults } = budgetsOf('dist');
for (const size of sizes) console.log(size);
for (const fault of faults) console.error(`The build is refused: ${fault}.`);
process.exitCode = faults.length > 0 ? 1 : 0;
