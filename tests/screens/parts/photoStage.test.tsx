import { fireEvent, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test, vi } from 'vitest';
import { NudgePad, nudge, PhotoStage } from '../../../src/screens/parts';

const size = { width: 3000, height: 4000 };
const stage = (onTouch: (at: readonly [number, number]) => void, url: string | null = 'blob:one') => (
  <PhotoStage url={url} alt="The work from the quay" size={size} onTouch={onTouch} touchDoes="Place a corner" />
);
const framed = (element: HTMLElement) =>
  vi
    .spyOn(element, 'getBoundingClientRect')
    .mockReturnValue({ left: 100, top: 50, width: 600, height: 800 } as unknown as DOMRect);

test('a touch is a place on the picture, in fractions of it, however large it is shown', () => {
  const touched = vi.fn();
  render(stage(touched));
  const surface = screen.getByRole('button', { name: 'Place a corner' });
  framed(surface);
  fireEvent.click(surface, { clientX: 250, clientY: 250, detail: 1 });
  expect(touched).toHaveBeenLastCalledWith([0.25, 0.25]);
  fireEvent.click(surface, { clientX: 900, clientY: 10, detail: 1 });
  expect(touched).toHaveBeenLastCalledWith([1, 0]);
});

test('without a finger: arrow keys move a cross and Enter puts it down, as far up as aside', async () => {
  const touched = vi.fn();
  render(stage(touched));
  screen.getByRole('button', { name: 'Place a corner' }).focus();
  await userEvent.keyboard('{ArrowRight}{ArrowDown}{Enter}');
  const [x, y] = touched.mock.lastCall![0] as [number, number];
  expect(x).toBeCloseTo(0.505, 9);
  expect((y - 0.5) * 4000).toBeCloseTo((x - 0.5) * 3000, 6);
});

test('a picture whose bytes are elsewhere keeps its place and says so', () => {
  render(stage(() => {}, null));
  expect(screen.getByText('This photo is not on this device.', { selector: 'p' })).toBeDefined();
  expect(screen.getByRole('img', { name: 'The work from the quay' })).toBeDefined();
});

test('larger and smaller are buttons, and each ends where it must', async () => {
  render(stage(() => {}));
  const [smaller, larger] = ['Smaller', 'Larger'].map(
    (name) => screen.getByRole('button', { name }) as HTMLButtonElement,
  );
  expect(smaller!.disabled).toBe(true);
  await userEvent.click(larger!);
  await userEvent.click(larger!);
  expect(larger!.disabled).toBe(true);
  await userEvent.click(smaller!);
  expect(larger!.disabled).toBe(false);
});

test('an arrow moves what was put down by the same length in every direction', async () => {
  const moved = vi.fn();
  render(<NudgePad what="the corner" aspect={4 / 3} onMove={moved} />);
  await userEvent.click(screen.getByRole('button', { name: 'Move the corner up' }));
  await userEvent.click(screen.getByRole('button', { name: 'Move the corner right' }));
  expect(moved.mock.calls[0]![0]).toEqual([0, -nudge / (4 / 3)]);
  expect(moved.mock.calls[1]![0]).toEqual([nudge, 0]);
});
