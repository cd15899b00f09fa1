import { screen } from '@testing-library/react';
import { expect, it } from 'vitest';
import { MethodScreen } from '../../../src/screens/method';
import { sourcesByUse, sourcesIn } from '../../../src/screens/method/sourcedTables';
import { factSaid, w } from '../../../src/words';
import { freshDesk, show } from '../deskwork';

const doors = import.meta.glob<Record<string, unknown>>('../../../src/engine/*/index.ts', { eager: true });

it('lists the source of every table the engine gives out, so that no number stands without one', async () => {
  const listed = new Set(sourcesByUse().flatMap(({ sources }) => sources.map(({ text }) => text)));
  const missing = Object.entries(doors).flatMap(([door, given]) =>
    Object.entries(given).flatMap(([name, value]) =>
      sourcesIn(value)
        .filter(({ text }) => !listed.has(text))
        .map(({ text }) => `${door.split('/').at(-2)} ${name}: ${text}`),
    ),
  );
  expect([...new Set(missing)]).toEqual([]);
  expect(listed.size).toBeGreaterThan(40);
  show(await freshDesk(), <MethodScreen />);
  await screen.findByRole('heading', { level: 2, name: w.method.sources });
  const page = document.body.textContent ?? '';
  expect([...listed].filter((text) => !page.includes(factSaid(text)))).toEqual([]);
});

it('every table it names has a source', () => {
  expect(
    sourcesByUse()
      .filter(({ sources }) => sources.length === 0)
      .map(({ use }) => use),
  ).toEqual([]);
});
