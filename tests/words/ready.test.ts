import { expect, test } from 'vitest';
import { readyAbout, readyCodes } from '../../src/actions';
import { ready as german } from '../../src/words/de/ready';
import { ready } from '../../src/words/en/ready';

const marks: Readonly<Record<string, string | number>> = {
  day: '2026-05-12',
  today: '2026-05-13',
  bytes: 412_000_000,
  trial: 104_000_000,
  kept: 31,
  all: 447,
  files: 447,
};
/** As a mark stands in a sentence. */
const shown: Readonly<Record<string, RegExp>> = {
  day: /12/,
  today: /13/,
  bytes: /412/,
  trial: /104/,
  kept: /31/,
};

test.each(Object.entries({ english: ready, german }))(
  'every find of the check has a sentence that names all it was given, in %s',
  (_, words) => {
    for (const [code, names] of Object.entries(readyCodes)) {
      const params = Object.fromEntries(names.map((name: string) => [name, marks[name] ?? `<${name}>`]));
      const sentence = words.found[code as keyof typeof words.found](params);
      for (const name of names as readonly string[])
        expect(sentence, code).toMatch(shown[name] ?? new RegExp(String(params[name])));
      expect(sentence).toMatch(/\.$/);
    }
    expect(Object.keys(words.about)).toEqual([...readyAbout]);
  },
);
