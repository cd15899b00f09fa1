/** By hand, once for each version of the tables: node src/build/run.mjs tests/files/writeStored.ts NAME writes tests/files/versions/NAME.database.json. */
import 'fake-indexeddb/auto';
import { existsSync, writeFileSync } from 'node:fs';
import { deskOn } from '../../src/actions';
import { open, surroundings } from '../device/store/around';
import { livedIn } from './livedIn';
import { storedOf } from './storedDatabase';

const file = `tests/files/versions/${process.argv[2]}.database.json`;
// What a shipped version wrote is never written again.
if (existsSync(file)) throw new Error(`${file} is there already`);
const around = surroundings(1);
const store = await open('stored', around);
let minute = 0;
const now = () => `2026-10-15T10:${String(minute++ % 60).padStart(2, '0')}:00.000+00:00`;
await livedIn(deskOn(store, { newId: around.newId, now, today: () => '2026-10-15', surveyor: () => '' }));
store.close();
writeFileSync(file, `${JSON.stringify(await storedOf('stored'), null, 1)}\n`);
