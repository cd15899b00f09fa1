import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it } from 'vitest';
import { addSentinel, addStations, setSetting } from '../../../src/actions';
import { labOfRgb } from '../../../src/engine/colour';
import { CardsScreen } from '../../../src/screens/stations';
import { cardSize, greySteps } from '../../../src/screens/stations/cardSize';
import { linesOf } from '../../../src/screens/stations/linesOf';
import { w } from '../../../src/words';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';

const words = w.stations.cards;

afterEach(() => setSetting('paper', 'A4'));

const twoWorks = async (seed: number) => {
  const desk = await freshDesk(seed);
  const heron = await aWork(desk, { title: 'Heron', number: '2', areas: [1] });
  const bather = await aWork(desk, { title: 'Bather', number: '10', areas: [1] });
  await done(addStations(desk, heron.sculpture, [{ aim: 'beak' }, { aim: 'tail' }]));
  await done(addSentinel(desk, heron.sculpture, { zone: heron.zones[0] ?? '', which: 'worst', find: 'seam' }));
  await done(addStations(desk, bather.sculpture, [{ aim: 'knee' }]));
  return { desk, heron: heron.sculpture };
};

const names = () => screen.getAllByRole('img').map((img) => img.getAttribute('aria-label'));

describe('Cards to print', () => {
  it('are one for each station and square of a work, two on a sheet', async () => {
    const user = userEvent.setup();
    const { desk, heron } = await twoWorks(1);
    show(desk, <CardsScreen sculpture={heron} />);
    expect(await screen.findByText(words.count(3, 2))).toBeDefined();
    expect(names()).toEqual([
      words.cardOf('2', 'Heron', 'Station A, beak'),
      words.cardOf('2', 'Heron', 'Station B, tail'),
      words.cardOf('2', 'Heron', 'Worst square, zone A'),
    ]);
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('checkbox', { name: words.whats.stations }));
    expect(screen.getByText(words.count(1, 1))).toBeDefined();
    await user.click(screen.getByRole('checkbox', { name: words.whats.frame }));
    expect(screen.getByText(words.count(1, 2))).toBeDefined();
    expect(screen.getByRole('img', { name: words.frameAlt }).getAttribute('width')).toBe('148mm');
  });

  it('of all works can leave some out, and say so when none is chosen', async () => {
    const user = userEvent.setup();
    const { desk } = await twoWorks(2);
    show(desk, <CardsScreen sculpture={undefined} />);
    expect(await screen.findByText(words.count(4, 2))).toBeDefined();
    await user.click(screen.getByRole('button', { name: words.works }));
    await user.click(screen.getByRole('checkbox', { name: '2 Heron' }));
    expect(names()).toEqual([words.cardOf('10', 'Bather', 'Station A, knee')]);
    await user.click(screen.getByRole('checkbox', { name: '10 Bather' }));
    expect(screen.getByText(words.none)).toBeDefined();
    expect(screen.queryByRole('button', { name: words.print })).toBeNull();
  });

  it('are drawn in millimetres of paper, say how to print them and what the printed grey is good for', async () => {
    const { desk, heron } = await twoWorks(3);
    show(desk, <CardsScreen sculpture={heron} />);
    const card = await screen.findByRole('img', { name: /Station A/ });
    expect(card.getAttribute('width')).toBe(`${cardSize.width}mm`);
    expect(card.getAttribute('viewBox')).toBe(`0 0 ${cardSize.width} ${cardSize.height}`);
    expect(card.querySelector('.scale-whole')?.getAttribute('width')).toBe('100');
    expect(screen.getByText(words.howWhat)).toBeDefined();
    expect(screen.getByText(words.grey)).toBeDefined();
  });

  it('remember what paper the printer holds', async () => {
    const user = userEvent.setup();
    const { desk, heron } = await twoWorks(4);
    const view = show(desk, <CardsScreen sculpture={heron} />);
    await user.click(await screen.findByRole('radio', { name: words.papers.Letter }));
    expect(view.container.querySelector('.card-sheets')?.classList.contains('on-letter')).toBe(true);
    view.unmount();
    show(desk, <CardsScreen sculpture={heron} />);
    expect(await screen.findByRole('radio', { name: words.papers.Letter })).toHaveProperty('checked', true);
  });

  it('lead to the stations where there is nothing to print', async () => {
    const desk = await freshDesk(5);
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '2', areas: [1] });
    show(desk, <CardsScreen sculpture={sculpture} />);
    expect(await screen.findByText(words.emptyTitle)).toBeDefined();
    for (const link of screen.getAllByRole('link', { name: w.stations.back }))
      expect(link.getAttribute('href')).toMatch(/stations$/);
    expect(await axeFaults()).toEqual([]);
  });
});

describe('What stands on a card', () => {
  it('has greys of the lightness it says, by the conversion the colour screens use', () => {
    for (const { lightness, fill } of greySteps) {
      const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => Number.parseInt(fill.slice(at, at + 2), 16));
      const lab = labOfRgb(r, g, b);
      expect(Math.abs(lab.L - lightness), fill).toBeLessThan(0.3);
    }
  });

  it.each([
    ['a title in two lines', 'Woman Waiting for the Last Boat', 18, 2, ['Woman Waiting for', 'the Last Boat']],
    ['one that is too long', 'one two three four five', 8, 2, ['one two', 'three…']],
    ['a word longer than a line', 'Abcdefghijkl', 5, 3, ['Abcde', 'fghij', 'kl']],
    ['nothing', '   ', 10, 2, []],
  ])('breaks %s at its words and never runs over', (_, text, letters, most, lines) => {
    const broken = linesOf(text, letters, most);
    expect(broken).toEqual(lines);
    for (const line of broken) expect(line.length).toBeLessThanOrEqual(letters);
  });
});
