import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { MeasureScreen } from '../../../src/screens/measure';
import { axeFaults } from '../axe';
import { show } from '../deskwork';
import { type OnPhoto, onPhoto, photo, touch } from './onPhoto';

beforeEach(() => {
  URL.createObjectURL = () => 'blob:picture';
  URL.revokeObjectURL = vi.fn();
});

const opened = (at: OnPhoto) => show(at.desk, <MeasureScreen photo={photo} about={at.zone} />);
const button = (name: string | RegExp) => screen.findByRole('button', { name });
/** A touch before what enables it was kept is none. */
const ready = async (name: string | RegExp) => {
  await waitFor(async () => expect((await button(name)).hasAttribute('disabled')).toBe(false));
  return button(name);
};
const rowOf = async (how: string) => (await screen.findByRole('row', { name: new RegExp(`^${how} `) })).textContent;
const measures = async ({ desk }: OnPhoto) => (await desk.store.ofKind('measure')).filter(({ gone }) => !gone);

const judge = async (user: ReturnType<typeof userEvent.setup>, answers: string, all: number, from = 0) => {
  for (const [i, answer] of [...answers].entries()) {
    const asked = await screen.findByRole('region', { name: `Dot ${from + i + 1} of ${all}` });
    await user.click(
      within(asked).getByRole('button', { name: { y: 'Green', n: 'Not green', g: 'Glare' }[answer] ?? '' }),
    );
  }
};

describe('Dots on a photo', () => {
  it('are judged with one touch each and stand with their range beside what the eye said, which stays', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(1);
    opened(at);
    await user.click(await ready('Judge dots'));
    await user.click(await ready('Lay the dots'));
    await screen.findByRole('img', { name: 'The photo around dot 1' });
    expect(await axeFaults()).toEqual([]);
    await judge(user, 'y'.repeat(5) + 'n'.repeat(44), 49);
    await screen.findByText(/5 of 49 dots lie on the finding/);
    await user.click(await ready('Back to the figures'));
    expect(await rowOf('by eye')).toMatch(/20 %.*of the zone12 May 2026/);
    expect(await rowOf('dots')).toMatch(/10 %4 % to 22 %of this photo15 October 2026/);
    expect((await at.desk.store.ofKind('finding'))[0]?.lead.body).toMatchObject({
      coverage: { value: 0.2, method: 'ladder' },
    });
    expect(await axeFaults()).toEqual([]);
  });

  it('go on where they stopped, on a screen opened anew, and one can be taken back', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(2);
    const first = opened(at);
    await user.click(await ready('Judge dots'));
    await user.click(await ready('Lay the dots'));
    await judge(user, 'yng', 49);
    await screen.findByRole('region', { name: 'Dot 4 of 49' });
    first.unmount();
    opened(at);
    await screen.findByRole('region', { name: 'Dot 4 of 49' });
    await user.click(await ready('The dot before'));
    await screen.findByRole('region', { name: 'Dot 3 of 49' });
    await user.click(await ready('Stop for now'));
    const card = await screen.findByRole('region', { name: 'Judge dots' });
    expect(within(card).getByText(/Not finished.*2 of 49 dots are judged/)).toBeDefined();
    expect(await measures(at)).toHaveLength(0);
    await user.click(within(card).getByRole('button', { name: 'Go on with the dots' }));
    await screen.findByRole('region', { name: 'Dot 3 of 49' });
  });

  it('in glare for the most part give no figure, and say why', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(3);
    opened(at);
    await user.click(await ready('Judge dots'));
    await user.click(await ready('Lay the dots'));
    await judge(user, 'g'.repeat(40) + 'n'.repeat(9), 49);
    expect(await screen.findByText(/of the dots lie in glare/)).toBeDefined();
    expect(screen.queryByRole('button', { name: 'Keep this figure' })).toBeNull();
    expect(await measures(at)).toHaveLength(0);
  });

  it('are said to tell much the same where they lie closer than the largest patch that was traced', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(15);
    opened(at);
    await user.click(await ready('Trace'));
    await button('Place a corner');
    for (const corner of [
      [0.3, 0.3],
      [0.6, 0.3],
      [0.6, 0.6],
      [0.3, 0.6],
    ] as const)
      touch(corner);
    await screen.findByText(/4 corners, not closed/);
    await user.click(await ready('Close'));
    await user.click(await ready('That is all of it'));
    await user.click(await ready('Judge dots'));
    expect(await screen.findByText(/the largest patch is 30 % wide: neighbours tell much the same/)).toBeDefined();
  });

  it('are not laid where the zone is too small on the photo, and it is said what to do', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(4, { size: { width: 160, height: 120 } });
    opened(at);
    await user.click(await ready('Judge dots'));
    expect(await screen.findByText(/Take a photo from closer/)).toBeDefined();
    expect((await button('Lay the dots')).hasAttribute('disabled')).toBe(true);
  });
});

describe('Patches traced on a photo', () => {
  it('are drawn by taps, closed, and give a figure once all are said to be there', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(5);
    opened(at);
    await user.click(await ready('Trace'));
    await button('Place a corner');
    for (const corner of [
      [0.3, 0.3],
      [0.4, 0.3],
      [0.4, 0.4],
      [0.3, 0.4],
    ] as const)
      touch(corner);
    await screen.findByText(/4 corners, not closed/);
    expect(screen.getByRole('button', { name: 'There is no green here' }).hasAttribute('disabled')).toBe(true);
    await user.click(await ready('Close'));
    await screen.findByText('So far:', { exact: false });
    expect(await axeFaults()).toEqual([]);
    await user.click(await ready('That is all of it'));
    expect(await rowOf('traced')).toMatch(/4 %/);
    const [kept] = await measures(at);
    expect(kept?.lead.body).toMatchObject({ coverage: { method: 'traced' }, kind: 'even-green-film', about: at.zone });
  });

  it('keep every corner as it is tapped, take the last one back, and open a closed patch again', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(6);
    const first = opened(at);
    await user.click(await ready('Trace'));
    await button('Place a corner');
    for (const corner of [
      [0.3, 0.3],
      [0.4, 0.3],
      [0.4, 0.4],
    ] as const)
      touch(corner);
    await user.click(await ready('Move the corner right'));
    await screen.findByText(/3 corners, not closed/);
    await user.click(await ready('Close'));
    await screen.findByText(/1 patch is closed/);
    touch([0.6, 0.6]);
    await waitFor(async () => {
      const metas = await at.desk.store.metas<{ corners?: unknown[] }>('measuring measure/');
      expect(metas[0]?.[1].corners).toHaveLength(1);
    });
    first.unmount();
    opened(at);
    expect((await screen.findByText(/1 patch is closed/)).textContent).toContain('1 corner, not closed');
    await user.click(await ready('Undo the last corner'));
    await user.click(await ready('Open the last patch again'));
    expect(await screen.findByText(/3 corners, not closed/)).toBeDefined();
  });

  it('refuse a line that crosses itself, and say so', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(7);
    opened(at);
    await user.click(await ready('Trace'));
    await button('Place a corner');
    for (const corner of [
      [0.3, 0.3],
      [0.5, 0.5],
      [0.5, 0.3],
      [0.3, 0.5],
    ] as const)
      touch(corner);
    expect(await screen.findByText(/The line crosses itself/)).toBeDefined();
    expect((await button('Close')).hasAttribute('disabled')).toBe(true);
  });

  it('can be none at all: nothing green here is a figure too', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(8);
    opened(at);
    await user.click(await ready('Trace'));
    await user.click(await ready('There is no green here'));
    expect(await rowOf('traced')).toMatch(/^traced0 %/);
  });
});

describe('The part of the photo', () => {
  it('is drawn by taps where the map has no outline of the zone, and nothing is measured before', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(9, { outlined: false });
    opened(at);
    expect(await screen.findByText(/not known yet which part of this photo is Zone A/)).toBeDefined();
    expect((await button('Judge dots')).hasAttribute('disabled')).toBe(true);
    await user.click(await ready('Draw the part'));
    await button('Place a corner');
    for (const corner of [
      [0.1, 0.1],
      [0.9, 0.1],
      [0.9, 0.9],
      [0.1, 0.9],
    ] as const)
      touch(corner);
    await screen.findByText(/4 corners, not closed/);
    expect(await axeFaults()).toEqual([]);
    await user.click(await ready('This is the part'));
    expect(await screen.findByText('The part as it was drawn here.')).toBeDefined();
    expect((await button('Judge dots')).hasAttribute('disabled')).toBe(false);
  });

  it('drawn anew does not move dots that were laid, and a figure of the old part says so', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(10);
    opened(at);
    await user.click(await ready('Trace'));
    await user.click(await ready('There is no green here'));
    await user.click(await ready('Draw another part'));
    await user.click(await ready('The whole picture'));
    await user.click(await ready('This is the part'));
    expect(await rowOf('traced')).toMatch(/measured in another part of the photo/);
    await user.click(await ready('Change the patches'));
    await user.click(await ready('Go over to the new part'));
    await waitFor(() => expect(screen.queryByText('The part was drawn anew since')).toBeNull());
  });
});

describe('A photo that cannot be measured on', () => {
  it('whose bytes are elsewhere says so, and still tells what was measured', async () => {
    const at = await onPhoto(11, { bytes: false });
    opened(at);
    expect(await screen.findByText('The picture itself is not on this device')).toBeDefined();
    expect(screen.queryByRole('button', { name: 'Judge dots' })).toBeNull();
    expect(await rowOf('by eye')).toMatch(/20 %/);
  });

  it('that is not of this work, or not here, says so with a way back', async () => {
    const at = await onPhoto(12);
    show(at.desk, <MeasureScreen photo="photo/none" about={at.zone} />);
    expect(await screen.findByRole('heading', { name: /is not here/ })).toBeDefined();
  });
});

describe('A figure', () => {
  it('is removed with one touch, and the eye’s stays', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(13);
    opened(at);
    await user.click(await ready('Trace'));
    await user.click(await ready('There is no green here'));
    await user.click(await ready('Remove the figure: traced'));
    await waitFor(() => expect(screen.queryByRole('row', { name: /^traced/ })).toBeNull());
    expect(await rowOf('by eye')).toMatch(/20 %/);
  });

  it('is of the kind that was chosen, which is remembered', async () => {
    const user = userEvent.setup();
    const at = await onPhoto(14);
    const first = opened(at);
    await user.selectOptions(await screen.findByRole('combobox', { name: 'Another kind' }), 'Green spots');
    expect(
      await screen.findByText('Nothing is told of this kind yet, neither by eye nor on this photo.'),
    ).toBeDefined();
    first.unmount();
    opened(at);
    expect(((await screen.findByRole('radio', { name: /Green spots/ })) as HTMLInputElement).checked).toBe(true);
  });
});
