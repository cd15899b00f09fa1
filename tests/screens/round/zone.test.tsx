import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { type Desk, startRound } from '../../../src/actions';
import { nameOf } from '../../../src/engine/record';
import { ZoneScreen } from '../../../src/screens/round';
import { pathTo } from '../../../src/screens/shell';
import { aRound, aWork, done, freshDesk, type SeenIn, show } from '../deskwork';

interface Given {
  readonly last?: readonly SeenIn[];
  readonly ownEye?: boolean;
  readonly at?: number;
}

const openZone = async ({ last, ownEye = false, at = 0 }: Given = {}) => {
  const desk = await freshDesk();
  const work = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1, 2] });
  if (last) await aRound(desk, work, '2025-05-12', last);
  const start = { type: 'annual', date: '2026-05-12', wet: 'dry', washed: 'before wash', ownEye } as const;
  const { round } = await done(startRound(desk, work.sculpture, start));
  const zone = work.zones[at] as string;
  const view = show(desk, <ZoneScreen round={round} zone={zone} />);
  await screen.findByRole('heading', { level: 1 });
  return { ...view, desk, work, round, zone, user: userEvent.setup() };
};

const press = async (user: ReturnType<typeof userEvent.setup>, ...names: (string | RegExp)[]) => {
  for (const name of names) await user.click(await screen.findByRole('button', { name }));
};
const alertSays = async (words: RegExp) => expect((await screen.findByRole('alert')).textContent).toMatch(words);
const stored = async (desk: Desk, thing: string) => (await desk.store.current(thing))?.lead.body;

describe('a zone with nothing before', () => {
  it('does not offer "as last year"', async () => {
    await openZone();
    const answers = screen.getByRole('group', { name: 'Answer for the whole zone' });
    expect(
      within(answers)
        .getAllByRole('button')
        .map((b) => b.textContent),
    ).toEqual([expect.stringContaining('Nothing found'), expect.stringContaining('Could not reach')]);
  });

  it('is answered with one touch: nothing found, and goes on to the next zone', async () => {
    const { desk, user, round, zone, work, history } = await openZone();
    await press(user, 'Nothing found');
    await waitFor(() => expect(history.at(-1)).toBe(pathTo.zoneInRound(round, work.zones[1] as string)));
    expect(await stored(desk, nameOf.visit(round, zone))).toMatchObject({ state: 'nothing' });
  });

  it('is answered with two touches: could not reach, and why', async () => {
    const { desk, user, round, zone, history } = await openZone();
    await press(user, 'Could not reach', 'Nest in use');
    await waitFor(() => expect(history.length).toBe(2));
    expect(await stored(desk, nameOf.visit(round, zone))).toMatchObject({ state: 'not looked', reason: 'nest' });
  });

  it('takes a new finding in six touches, none of them typed', async () => {
    const { desk, user, round, zone, history } = await openZone();
    await press(user, 'Green', 'Green spots', 'In the metal', 'under 1 %', 'Slight', 'Next: zone B');
    await waitFor(() => expect(history.length).toBe(2));
    expect(await stored(desk, nameOf.finding(round, zone, 'green-spots', 'metal'))).toMatchObject({
      coverage: { value: 0.005 },
      severity: 'slight',
      activity: 'unclear',
    });
  });

  it('reads its record back in one sentence', async () => {
    const { user } = await openZone();
    await press(user, 'Dark', 'Black crust or scab', 'In the metal', 'about 20 %', 'Severe');
    expect(await screen.findByText('A, part a: black crust or scab, 20 %, severe.')).toBeDefined();
  });

  it('takes a value between two steps by a touch of its own, and says it and takes it back', async () => {
    const { desk, user, round, zone, history } = await openZone();
    await press(user, 'Dark', 'Black crust or scab', 'In the metal', 'about 20 %', 'Severe', 'A little more');
    expect(await screen.findByText('A, part a: black crust or scab, 22 %, severe.')).toBeDefined();
    await press(user, 'A little more', /Undo: a little more/, 'Next: zone B');
    await waitFor(() => expect(history.length).toBe(2));
    expect(await stored(desk, nameOf.finding(round, zone, 'black-crust', 'metal'))).toMatchObject({
      coverage: { value: 0.21667, low: 0.175, high: 0.25, method: 'ladder, adjusted' },
    });
  });

  it('points a stain from above to the zone it comes from, and reads that back', async () => {
    const { desk, user, round, zone, work, history } = await openZone();
    await press(user, 'Green', 'Green spots', 'Stain from above', 'about 5 %', 'Slight', 'From zone B');
    expect(await screen.findByText('A, part a: green spots, 5 %, slight, from zone B.')).toBeDefined();
    await press(user, 'Next: zone B');
    await waitFor(() => expect(history.length).toBe(2));
    expect(await stored(desk, nameOf.finding(round, zone, 'green-spots', 'stain'))).toMatchObject({
      stainFrom: work.zones[1],
    });
  });

  it('does not offer "none there" for what is just being begun', async () => {
    const { user } = await openZone();
    await press(user, 'Green', 'Green spots', 'In the metal');
    await screen.findByRole('button', { name: 'under 1 %' });
    expect(screen.queryByRole('button', { name: /none there/ })).toBeNull();
  });
});

describe('stop words', () => {
  it('say what to do and never what it is', async () => {
    const { user } = await openZone();
    await press(user, 'Green', 'Pale powdery mounds', 'One', 'Moderate');
    const note = await screen.findByRole('note', { name: /Pale powdery mounds/ });
    expect(note.textContent).toContain('Record, photograph, do not wash or wax this zone yet. Ask the conservator.');
    expect(document.body.textContent).not.toMatch(/disease|chloride|diagnos/i);
  });

  it('that could hurt someone say to keep people away first', async () => {
    const { user } = await openZone();
    await press(user, 'Metal', 'Loose part or plaque', 'One', 'Severe');
    expect((await screen.findByText(/Keep people away\. Tell/)).tagName).toBe('P');
  });

  it('of last year are not carried, and the refusal names them', async () => {
    const { user } = await openZone({ last: [{ 'green-under-film': 0.05 }, 'nothing'] });
    await press(user, 'As last year');
    await alertSays(/“.*under.*” is a stop word and is never carried over/i);
  });
});

describe('own eye first', () => {
  const last: SeenIn[] = [{ 'even-green-film': 0.2, 'black-crust': 0.05 }, 'nothing'];

  it('shows no earlier value before the own one is made', async () => {
    await openZone({ last, ownEye: true });
    expect(await screen.findByRole('group', { name: /How much of zone A: even green film/ })).toBeDefined();
    expect(document.body.textContent).not.toMatch(/2025|moderate/);
  });

  it('opens the next earlier finding by itself after the same step', async () => {
    const { user } = await openZone({ last, ownEye: true });
    await press(user, 'about 20 %');
    expect(await screen.findByRole('group', { name: /black crust/ })).toBeDefined();
  });

  it('after another step shows the earlier one and asks which holds', async () => {
    const { desk, user, round, zone, history } = await openZone({ last, ownEye: true });
    await press(user, 'about 40 %');
    expect(await screen.findByRole('group', { name: /You say 40 %. In 2025 it was 20 %/ })).toBeDefined();
    await press(user, 'Really changed', 'about 5 %', 'Next: zone B');
    await waitFor(() => expect(history.length).toBe(2));
    expect(await stored(desk, nameOf.finding(round, zone, 'even-green-film', 'metal'))).toMatchObject({
      against: 'changed',
    });
    expect(await stored(desk, nameOf.finding(round, zone, 'black-crust', 'metal'))).toMatchObject({ against: 'same' });
  });
});

describe('with own eye first off', () => {
  const last: SeenIn[] = [{ 'even-green-film': 0.2, 'black-crust': 0.05 }, 'nothing'];

  it('one touch carries the zone, and says it was not judged again', async () => {
    const { desk, user, round, zone, history } = await openZone({ last });
    expect((await screen.findByRole('button', { name: 'As last year' })).getAttribute('aria-description')).toBe(
      'carried, not judged again',
    );
    await press(user, 'As last year');
    await waitFor(() => expect(history.length).toBe(2));
    expect(await stored(desk, nameOf.visit(round, zone))).toMatchObject({ state: 'carried' });
  });

  it('a changed coverage is three touches: its row, the step, next; the rest is carried', async () => {
    const { desk, user, round, zone, history } = await openZone({ last });
    await press(user, /Even green film/, 'about 30 %', 'Next: zone B');
    await waitFor(() => expect(history.length).toBe(2));
    expect(await stored(desk, nameOf.finding(round, zone, 'even-green-film', 'metal'))).not.toHaveProperty(
      'carriedFrom',
    );
    expect(await stored(desk, nameOf.finding(round, zone, 'black-crust', 'metal'))).toHaveProperty('carriedFrom');
  });

  it('nothing found asks of each earlier finding whether it is gone', async () => {
    const { desk, user, round, zone, history } = await openZone({ last });
    await press(user, 'Nothing found', 'Even green film: Gone', 'Black crust or scab: Gone', 'Next: zone B');
    await waitFor(() => expect(history.length).toBe(2));
    expect(await stored(desk, nameOf.visit(round, zone))).toMatchObject({ state: 'nothing' });
    expect(await stored(desk, nameOf.finding(round, zone, 'black-crust', 'metal'))).toMatchObject({ cleared: true });
  });

  it('says at once when kinds that exclude each other pass the whole zone', async () => {
    const { user } = await openZone({ last: [{ 'even-green-film': 0.2 }, 'nothing'] });
    await press(user, /Even green film/, 'about 70 %', 'Dark', 'Black crust or scab', 'In the metal', 'about 50 %');
    await alertSays(/cover 120 % of the zone/);
  });
});

describe('undo', () => {
  it('takes back one touch and names it', async () => {
    const { user } = await openZone();
    await press(user, 'Green', 'Green spots', 'In the metal', 'about 10 %', 'Undo: coverage 10 %');
    expect(await screen.findByRole('group', { name: /How much of zone A: green spots/ })).toBeDefined();
  });
});

describe('a photo', () => {
  it('expected before a restart is asked for again, or gone on without', async () => {
    const { desk, user, round, zone } = await openZone();
    await desk.store.touch({ round, zone, at: desk.now(), by: '', touch: { do: 'photo expected', of: 'zone' } });
    const { memoryOf } = await import('../../../src/actions/round/roundMemory');
    await memoryOf(desk, round).reload();
    expect(await screen.findByRole('note', { name: /A photo was expected: the zone/ })).toBeDefined();
    await press(user, 'Go on without it');
    await waitFor(() => expect(screen.queryByRole('note', { name: /A photo was expected/ })).toBeNull());
  });
});
