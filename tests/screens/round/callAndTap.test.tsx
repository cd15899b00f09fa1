import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { setSetting, settings, startRound } from '../../../src/actions';
import { StartRoundScreen, ZoneScreen } from '../../../src/screens/round';
import { callAndTap as german } from '../../../src/words/de/callAndTap';
import { callAndTap as english } from '../../../src/words/en/callAndTap';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, type SeenIn, show } from '../deskwork';

beforeEach(() => setSetting('callAndTap', true));
afterEach(() => setSetting('callAndTap', false));

const called = async (sentence: string) =>
  waitFor(() => expect(screen.getByRole('status').textContent?.trim().replaceAll(/\s+/g, ' ')).toBe(sentence));

const openZone = async (last?: readonly SeenIn[], ownEye = false) => {
  const desk = await freshDesk();
  const work = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1, 2] });
  if (last) await aRound(desk, work, '2025-05-12', last);
  const start = { type: 'annual', date: '2026-05-12', wet: 'dry', washed: 'before wash', ownEye } as const;
  const { round } = await done(startRound(desk, work.sculpture, start));
  show(desk, <ZoneScreen round={round} zone={work.zones[0] as string} />);
  await screen.findByRole('heading', { level: 1 });
  const user = userEvent.setup();
  const press = async (name: string | RegExp) => user.click(await screen.findByRole('button', { name }));
  return { desk, work, round, press };
};

describe('Call and tap', () => {
  it('reads back after each touch what it took, in the words that are called', async () => {
    const { press } = await openZone();
    await called('Now A, part a.');
    await press('Green');
    await called('A, green.');
    await press('Green run-off streak');
    await called('A, green run-off streak.');
    await press('In the metal');
    await press('about 30 %');
    await called('A, green run-off streak, thirty.');
    await press('Severe');
    await called('A, green run-off streak, thirty, severe.');
    await press('Spray-bottle check');
    await press('Sheets');
    await called('A, green run-off streak, thirty, severe, sheets.');
    expect(await axeFaults()).toEqual([]);
  });

  it('reads back the finding that was touched, also where the pad goes on to the next by itself', async () => {
    const { press } = await openZone([{ 'even-green-film': 0.2, 'green-spots': 0.05 }, 'nothing'], true);
    await called('A, even green film.');
    await press('about 20 %');
    await called('A, even green film, twenty, moderate, active. Now: green spots?');
    await press(/^Undo/);
    await called('A, even green film.');
  });

  it('asks why in so many words, where a zone cannot be reached', async () => {
    const { press } = await openZone();
    await press('Could not reach');
    await called('A, could not reach: why?');
  });

  it('is large, and one touch shows all of the zone', async () => {
    const { press } = await openZone();
    expect(screen.getByRole('status').className).toContain('read-back-big');
    await press(/Now A/);
    expect(await screen.findByRole('dialog', { name: 'Read back' })).toBeDefined();
  });

  it('is switched on where a round begins', async () => {
    setSetting('callAndTap', false);
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1] });
    show(desk, <StartRoundScreen sculpture={work.sculpture} />);
    await userEvent.click(await screen.findByRole('checkbox', { name: /Call and tap/ }));
    expect(settings.get().callAndTap).toBe(true);
  });

  it('puts the sentence of the field together, in both languages', () => {
    const parts = (words: typeof english | typeof german) => [
      words.kind('green-run-off-streak'),
      words.step('30'),
      'sheets',
      words.photos(2),
    ];
    expect(english.sentence('D', parts(english))).toBe('D, green run-off streak, thirty, sheets, two photos.');
    expect(german.sentence('D', parts(german))).toMatch(/^D, .+, dreißig, sheets, zwei Fotos\.$/);
  });
});
