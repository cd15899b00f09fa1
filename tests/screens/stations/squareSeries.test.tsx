import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { addSentinel, commitChanges } from '../../../src/actions';
import { writeSelector } from '../../../src/engine/photo';
import { nameOf } from '../../../src/engine/record';
import { StationsScreen } from '../../../src/screens/stations';
import { w } from '../../../src/words';
import { aWork, done, freshDesk, show } from '../deskwork';

const words = w.stations.squares;
const whole = writeSelector([
  [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ],
]);

/** A square with one dot count a year: so many of 49 dots on green. */
const counted = async (seed: number, years: readonly (readonly [taken: string, green: number])[]) => {
  const desk = await freshDesk(seed);
  const { sculpture, zones } = await aWork(desk, { title: 'Heron', number: '2', areas: [1] });
  const { sentinel } = await done(addSentinel(desk, sculpture, { zone: zones[0] ?? '', which: 'worst', find: 'seam' }));
  for (const [i, [taken, green]] of years.entries()) {
    const sha256 = String(i).repeat(64);
    const photo = nameOf.photo(sha256);
    const value = green / 49;
    await done(
      commitChanges(desk, { code: 'deed: photo kept', params: {} }, [
        {
          thing: photo,
          kind: 'photo',
          within: sculpture,
          body: {
            sculpture,
            sha256,
            mime: 'image/png',
            bytes: 9,
            role: 'sentinel',
            sentinel,
            taken: `${taken}T10:00:00`,
          },
        },
        {
          thing: nameOf.measure(photo, sentinel, 'green-spots', 'dots'),
          kind: 'measure',
          within: sculpture,
          body: {
            ...{ sculpture, photo, about: sentinel, kind: 'green-spots', date: '2026-06-01' },
            selector: { type: 'SvgSelector', value: whole },
            coverage: { value, low: value - 0.02, high: value + 0.02, method: 'dots' },
            working: {},
          },
        },
      ]),
    );
  }
  show(desk, <StationsScreen sculpture={sculpture} />);
};

test('the dots of a square are drawn year by year, on the days its photos were taken, with their range', async () => {
  await counted(31, [
    ['2025-05-13', 20],
    ['2024-05-14', 10],
  ]);
  const drawing = await screen.findByRole('img', { name: /Worst square.*from 20 % to 41 %/ });
  expect(drawing).toBeDefined();
  await userEvent.click(screen.getByRole('button', { name: w.charts.numbers }));
  const rows = screen.getAllByRole('row').map((row) => row.textContent);
  expect(rows[1]).toContain('14 May 2024');
  expect(rows[2]).toContain('13 May 2025');
  expect(rows[2]).toContain('41 %');
});

test('one figure makes no line, and none says what would', async () => {
  await counted(32, [['2025-05-13', 20]]);
  expect(await screen.findByText(words.seriesFew)).toBeDefined();
});

test('a square nothing was measured on says what to do', async () => {
  await counted(33, []);
  expect(await screen.findByText(words.seriesNone)).toBeDefined();
});
