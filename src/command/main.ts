/** The engine at a terminal: the same doors as the app, no browser. */
import { readFileSync } from 'node:fs';
import { runCommand } from './runCommand';

const { code, out, err } = runCommand(process.argv.slice(2), (file) => readFileSync(file));
process.exitCode = code;
// Bytes go out as they are: the union of two surveys is canonical to the last one.
if (out.length > 0) process.stdout.write(out);
if (err) process.stderr.write(`${err}\n`);
