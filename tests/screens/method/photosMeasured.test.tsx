import { screen, within } from '@testing-library/react';
import { expect, it } from 'vitest';
import { colourNumbers } from '../../../src/engine/colour';
import { coverageNumbers, fitNumbers, obliquities, shareInterval } from '../../../src/engine/photo';
import { MethodScreen } from '../../../src/screens/method';
import { number } from '../../../src/words';
import { freshDesk, show } from '../deskwork';

const table = (caption: string) => screen.getByText(caption, { selector: 'caption' }).closest('table') as HTMLElement;
const rowsOf = (caption: string) =>
  [...table(caption).querySelectorAll('tbody tr')].map((row) => [...row.children].map((cell) => cell.textContent));

it('shows every number that measuring on photos and instruments rests on, with its source', async () => {
  show(await freshDesk(), <MethodScreen />);
  await screen.findByRole('heading', { name: 'Coverage measured on a photo' });
  for (const [caption, numbers] of [
    ['Numbers of coverage on photos', coverageNumbers],
    ['Numbers of laying one photo on another', fitNumbers],
    ['Numbers of colour', colourNumbers],
  ] as const)
    expect(rowsOf(caption)).toEqual(
      Object.values(numbers).map(({ what, value, source }) => [what, number(value, 4), source.text]),
    );
  for (const { factor } of obliquities)
    expect(within(table('Surface over what shows flat')).getByText(number(factor, 2))).toBeDefined();
});

it('says what so many dots tell by the sum that scores them, and what none green is worth', async () => {
  show(await freshDesk(), <MethodScreen />);
  await screen.findByRole('heading', { name: 'Coverage measured on a photo' });
  const row = rowsOf('What so many dots tell (95 %)').find(([dots]) => dots === '49');
  const [low, high] = shareInterval(10, 49);
  const ends = `${number(low * 100, 1)} % to ${number(high * 100, 1)} %`;
  expect(row?.[2]).toBe(ends);
  expect(row?.at(-1)).toBe('up to 7.3 %');
});

it('says that colour comes from an instrument only, and names the source of its formula', async () => {
  show(await freshDesk(), <MethodScreen />);
  expect(
    await screen.findByText(/comes from an instrument put down on the surface, and from nothing else/),
  ).toBeDefined();
  expect(screen.getByText(/Sharma, Wu and Dalal 2005/)).toBeDefined();
  expect(screen.getByText(/Guidelines for the Technical Examination of Bronze Sculpture, II\.2/)).toBeDefined();
});
