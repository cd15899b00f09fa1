import { fireEvent, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it, vi } from 'vitest';
import { type Desk, setElevationScale, setOutline } from '../../../src/actions';
import { readSelector } from '../../../src/engine/photo';
import { nameOf } from '../../../src/engine/record';
import { OutlineScreen } from '../../../src/screens/zone-map';
import { axeFaults } from '../axe';
import { aRound, done, freshDesk, show } from '../deskwork';
import { heronFromWest, square, type WorkWithSide } from './side';

const open = (desk: Desk, { sculpture, elevation }: WorkWithSide) =>
  show(desk, <OutlineScreen sculpture={sculpture} elevation={elevation} />);

/** Touches the picture at a place, in shares of its width and height. */
const touch = async (name: string, x: number, y: number): Promise<void> => {
  const surface = await screen.findByRole('button', { name });
  vi.spyOn(surface, 'getBoundingClientRect').mockReturnValue({
    ...{ left: 0, top: 0, width: 300, height: 400 },
  } as unknown as DOMRect);
  fireEvent.click(surface, { clientX: x * 300, clientY: y * 400, detail: 1 });
};
const corner = (x: number, y: number) => touch('Put a corner of the outline here', x, y);
const button = (name: string | RegExp) => screen.findByRole('button', { name });
/** A touch before what enables it was kept is none. */
const ready = async (name: string | RegExp) => {
  await waitFor(async () => expect((await button(name)).hasAttribute('disabled')).toBe(false));
  return button(name);
};

const outlineOf = async (desk: Desk, { elevation }: WorkWithSide, zone: string) => {
  const current = await desk.store.current(nameOf.outline(elevation, zone));
  const target = current?.gone ? undefined : (current?.lead.body.target as { selector: { value: string } } | undefined);
  return target && readSelector(target.selector.value);
};

describe('Drawing the zones', () => {
  it('takes corners one by one, closes them to an outline, and offers the next zone', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2, 1], 0);
    open(desk, work);
    await userEvent.click(await ready('Begin with A · part A'));
    expect(((await button('Close outline')) as HTMLButtonElement).disabled).toBe(true);
    for (const [i, [x, y]] of square(0.2, 0.2, 0.4)[0]!.entries()) {
      await corner(x, y);
      await screen.findByText(new RegExp(`${i + 1} corners?\\.`));
    }
    await userEvent.click(await ready('Close outline'));
    expect(await button('Next: B · part B')).toBeDefined();
    expect(await outlineOf(desk, work, work.zones[0]!)).toEqual(
      square(0.2, 0.2, 0.4).map((ring) => ring.map(([x, y]) => [Number(x.toFixed(5)), Number(y.toFixed(5))])),
    );
    expect(await screen.findByText('1 of 2 zones drawn on this side')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('is where it was left when the screen is opened again', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2, 1], 0);
    const first = open(desk, work);
    await userEvent.click(await ready('Begin with A · part A'));
    await corner(0.1, 0.1);
    await corner(0.5, 0.1);
    await screen.findByText(/2 corners\./);
    first.unmount();
    open(desk, work);
    expect(await screen.findByText(/2 corners\./)).toBeDefined();
    await userEvent.click(await ready('Undo corner'));
    expect(await screen.findByText(/1 corner\./)).toBeDefined();
  });

  it('will not keep a line that crosses itself, says why, and lets the corner be undone', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2], 0);
    open(desk, work);
    await userEvent.click(await ready('Begin with A · part A'));
    for (const [i, [x, y]] of (
      [
        [0.1, 0.1],
        [0.5, 0.5],
        [0.5, 0.1],
        [0.1, 0.5],
      ] as const
    ).entries()) {
      await corner(x, y);
      await screen.findByText(new RegExp(`${i + 1} corners?\\.`));
    }
    await userEvent.click(await ready('Close outline'));
    expect((await screen.findByRole('alert')).textContent).toMatch(/The line crosses itself/);
    expect(await outlineOf(desk, work, work.zones[0]!)).toBeUndefined();
    await userEvent.click(await ready('Undo corner'));
    await userEvent.click(await ready('Close outline'));
    await waitFor(async () => expect((await outlineOf(desk, work, work.zones[0]!))?.[0]).toHaveLength(3));
  });

  it('puts a corner on the neighbour’s where it comes near it, so that no gap is left between two zones', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2, 1], 0);
    await done(setOutline(desk, work.elevation, work.zones[0]!, square(0.2, 0.2, 0.2)));
    open(desk, work);
    await userEvent.click(await ready('Next: B · part B'));
    for (const [i, [x, y]] of (
      [
        [0.407, 0.197],
        [0.7, 0.2],
        [0.7, 0.4],
        [0.396, 0.404],
      ] as const
    ).entries()) {
      await corner(x, y);
      await screen.findByText(new RegExp(`${i + 1} corners?\\.`));
    }
    await userEvent.click(await ready('Close outline'));
    await waitFor(async () => expect((await outlineOf(desk, work, work.zones[1]!))?.[0]).toHaveLength(4));
    const ring = (await outlineOf(desk, work, work.zones[1]!))![0]!;
    expect([ring[0], ring[3]]).toEqual([
      [0.4, 0.2],
      [0.4, 0.4],
    ]);
  });

  it('gives a zone a second piece', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2, 1], 1);
    open(desk, work);
    await userEvent.click(await screen.findByRole('button', { name: /part A\s*drawn/ }));
    await userEvent.click(await ready('Add a piece'));
    for (const [i, [x, y]] of square(0.6, 0.6, 0.2)[0]!.entries()) {
      await corner(x, y);
      await screen.findByText(new RegExp(`${i + 1} corners?\\.`));
    }
    await userEvent.click(await ready('Close outline'));
    expect(await screen.findByRole('button', { name: /part A\s*drawn, 2 pieces/ })).toBeDefined();
    expect(await outlineOf(desk, work, work.zones[0]!)).toHaveLength(2);
  });

  it('moves a corner by the arrows, and keeps nothing of it where it is left as it was', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2], 1);
    const before = await outlineOf(desk, work, work.zones[0]!);
    open(desk, work);
    await userEvent.click(await screen.findByRole('button', { name: /part A\s*drawn/ }));
    await userEvent.click(await ready('Move corners'));
    await touch('Choose the corner nearest to here', 0.16, 0.21);
    expect(await screen.findByText(/Corner 3 of 4/)).toBeDefined();
    await userEvent.click(await ready('Move the corner right'));
    await userEvent.click(await ready('Leave as it was'));
    expect(await button('Move corners')).toBeDefined();
    expect(await outlineOf(desk, work, work.zones[0]!)).toEqual(before);
    await userEvent.click(await ready('Move corners'));
    await touch('Choose the corner nearest to here', 0.16, 0.21);
    await screen.findByText(/Corner 3 of 4/);
    await userEvent.click(await ready('Move the corner right'));
    await userEvent.click(await ready('Put it where I touch'));
    await touch('Put the chosen corner here', 0.4, 0.5);
    await userEvent.click(await ready('Keep the corners'));
    await waitFor(async () => expect((await outlineOf(desk, work, work.zones[0]!))?.[0]?.[2]).toEqual([0.4, 0.5]));
  });

  it('tells an area from outline, scale and folds with its range, and takes it over as a new version after a visit', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2], 0);
    const [zone = ''] = work.zones;
    await aRound(desk, work, '2026-05-10', ['nothing']);
    await done(setOutline(desk, work.elevation, zone, square(0.2, 0.2, 0.3)));
    open(desk, work);
    await userEvent.click(await screen.findByRole('button', { name: /part A\s*drawn/ }));
    expect(await screen.findByText('Set the scale of this picture, and the outline tells an area.')).toBeDefined();
    // 400 pixels are 4 m: the square is 0.3 x 3 m wide and 0.3 x 4 m high.
    await done(setElevationScale(desk, work.elevation, { a: [0.5, 0], b: [0.5, 1], metres: 4 }));
    expect(await screen.findByText('1.08 m²')).toBeDefined();
    await userEvent.click(screen.getByRole('radio', { name: 'deep folds' }));
    expect(await screen.findByText('1.73 m²')).toBeDefined();
    expect(screen.getByText('(1.30 to 2.16)')).toBeDefined();
    await userEvent.click(await ready('Use as the zone’s area'));
    await waitFor(async () => {
      const versions = (await desk.store.current(zone))?.lead.body.versions as {
        area: { m2: number; method: string };
      }[];
      expect(versions.map(({ area }) => [Number(area.m2.toFixed(3)), area.method])).toEqual([
        [2, 'typed'],
        [1.728, 'outline'],
      ]);
    });
  });

  it('sets the scale by two touches and a length, and says what is no length', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2], 1);
    open(desk, work);
    await userEvent.click(await ready('Set the scale'));
    await touch('Put an end of the length here', 0.5, 0.1);
    await screen.findByText('Now touch the other end.');
    await touch('Put an end of the length here', 0.5, 0.9);
    const length = await screen.findByLabelText('How long is it on the work?');
    await userEvent.type(length, 'tall');
    await userEvent.click(await ready('Keep the scale'));
    expect(screen.getByText('Write the length in m, such as 1.85.')).toBeDefined();
    await userEvent.clear(length);
    await userEvent.type(length, '1,85');
    await userEvent.click(await ready('Keep the scale'));
    expect(await screen.findByText(/1\.85 m between the two ends/)).toBeDefined();
  });

  it('draws water by touching one zone, then the other', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2, 1], 2);
    open(desk, work);
    await userEvent.click(await ready('Draw an arrow'));
    await screen.findByText('Touch the zone the water comes from.');
    await touch('Choose the zone here', 0.1, 0.15);
    await screen.findByText('From zone A. Now touch the zone it runs to.');
    await touch('Choose the zone here', 0.25, 0.15);
    await screen.findByText('Touch the zone the water comes from.');
    await waitFor(async () =>
      expect((await desk.store.current(nameOf.runOff(work.zones[0]!, work.zones[1]!)))?.gone).toBe(false),
    );
  });

  it('can be done by the keyboard alone', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2], 0);
    open(desk, work);
    (await button('Begin with A · part A')).focus();
    await userEvent.keyboard('{Enter}');
    const surface = await screen.findByRole('button', { name: 'Put a corner of the outline here' });
    await waitFor(() => expect(document.activeElement).toBe(surface));
    await userEvent.keyboard('{Enter}{Shift>}{ArrowRight}{/Shift}{Enter}{Shift>}{ArrowDown}{/Shift}{Enter}');
    await screen.findByText(/3 corners\./);
    const close = await button('Close outline');
    close.focus();
    await userEvent.keyboard('{Enter}');
    await waitFor(async () => expect((await outlineOf(desk, work, work.zones[0]!))?.[0]).toHaveLength(3));
    expect(await screen.findByText('1 of 1 zones drawn on this side')).toBeDefined();
    // Not at the top of the page again, but at what can be done with the zone.
    await waitFor(() => expect(document.activeElement?.textContent).toMatch(/^A · part A/));
  });

  it('brings back what was left by a slip of the finger', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2], 0);
    open(desk, work);
    await userEvent.click(await ready('Begin with A · part A'));
    await corner(0.1, 0.1);
    await corner(0.5, 0.1);
    await screen.findByText(/2 corners\./);
    await userEvent.click(await ready('Leave it'));
    await userEvent.click(await ready('Bring back what was left'));
    expect(await screen.findByText(/2 corners\./)).toBeDefined();
  });

  it('says that a side is not on this device', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2], 0);
    open(desk, { ...work, elevation: nameOf.elevation('none') });
    expect(await screen.findByRole('heading', { name: 'This side is not on this device' })).toBeDefined();
  });
});
