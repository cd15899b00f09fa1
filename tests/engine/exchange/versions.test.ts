import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readSurvey, version, writeSurvey } from '../../../src/engine/exchange';

const folder = 'tests/files/versions';
const files = readdirSync(folder).filter((file) => file.endsWith('.survey.json'));

describe('Every version of the file ever written', () => {
  it('is kept here, the present one too', () => expect(files).toContain(`${version}.survey.json`));

  it.each(files)('%s is still read whole, and written as the very same bytes', (file) => {
    const bytes = new Uint8Array(readFileSync(`${folder}/${file}`));
    const read = readSurvey(bytes);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.entries.length).toBeGreaterThan(0);
    expect(read.unknown).toEqual([]);
    expect(writeSurvey(read.collection, read.entries)).toEqual(bytes);
  });
});
