import { screen, within } from '@testing-library/react';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { commitChanges, keepMeasure, keepTouches } from '../../../src/actions';
import { writeSelector } from '../../../src/engine/photo';
import { nameOf } from '../../../src/engine/record';
import { EditZoneScreen } from '../../../src/screens/sculptures/EditZoneScreen';
import { ThenAndNowScreen } from '../../../src/screens/then-and-now';
import { axeFaults } from '../axe';
import { aRound, done, show } from '../deskwork';
import { green, hash, middle, type OnPhoto, onPhoto, photo } from './onPhoto';

beforeEach(() => {
  URL.createObjectURL = () => 'blob:picture';
  URL.revokeObjectURL = vi.fn();
});

/** A sixteenth of the part traced. */
const traced = async ({ desk }: OnPhoto, about: string) => {
  const patch = [
    [
      [0.3, 0.3],
      [0.425, 0.3],
      [0.425, 0.425],
      [0.3, 0.425],
    ] as const,
  ];
  const of = { photo, about, kind: green, way: 'traced' as const };
  const patches = { type: 'SvgSelector' as const, value: writeSelector(patch) };
  await done(keepTouches(desk, of, () => ({ part: middle, working: { patches }, corners: [] })));
  await done(keepMeasure(desk, of));
};

describe('What was measured on photos', () => {
  it('stands with each photo of a zone, with the way to measure on it', async () => {
    const at = await onPhoto(21);
    await traced(at, at.zone);
    show(at.desk, <EditZoneScreen sculpture={at.work.sculpture} zone={at.zone} />);
    const link = await screen.findByRole('link', { name: 'Measure on it: Photo, 12 May 2026' });
    expect(link.getAttribute('href')).toBe(`/measure/${hash}/zone/${at.zone.slice('zone/'.length)}`);
    const told = within(link.closest('li') as HTMLElement);
    expect(told.getByText(/on a photo, traced: 6 % \(\d+ % to \d+ %\)/)).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('is offered for no photo of another zone', async () => {
    const at = await onPhoto(22);
    show(at.desk, <EditZoneScreen sculpture={at.work.sculpture} zone={at.work.zones[1] ?? ''} />);
    expect(await screen.findByText('There is no photo of this zone yet to measure on.')).toBeDefined();
  });

  it('stands beside the eye’s figure of its own round when two rounds are compared, and changes no verdict', async () => {
    const at = await onPhoto(23);
    await aRound(at.desk, at.work, '2026-09-20', [{ [green]: 0.4 }, 'nothing']);
    const first = show(at.desk, <ThenAndNowScreen sculpture={at.work.sculpture} />);
    const before = (await screen.findByRole('row', { name: /^Even green film/ })).querySelector(
      '.verdict-cell',
    )?.textContent;
    first.unmount();
    await traced(at, at.zone);
    show(at.desk, <ThenAndNowScreen sculpture={at.work.sculpture} />);
    const beside = await screen.findByText(/^on a photo, traced: 6 %/);
    expect(beside.closest('td')?.textContent).toMatch(/^20 %/);
    expect(screen.getAllByText(/^on a photo/)).toHaveLength(1);
    expect(beside.closest('tr')?.querySelector('.verdict-cell')?.textContent).toBe(before);
  });

  it('of a sentinel square is not told as if it were of the zone around it', async () => {
    const at = await onPhoto(24);
    const { sculpture } = at.work;
    const sentinel = nameOf.sentinel('s1');
    const square = { sculpture, zone: at.zone, which: 'worst' as const, find: 'left of the seam', since: '2026-05-01' };
    await done(
      commitChanges(at.desk, { code: 'deed: photo kept', params: {} }, [
        { thing: sentinel, kind: 'sentinel', within: sculpture, body: square },
        { thing: photo, patch: { sentinel, zone: undefined } },
      ]),
    );
    await aRound(at.desk, at.work, '2026-09-20', [{ [green]: 0.4 }, 'nothing']);
    await traced(at, sentinel);
    const first = show(at.desk, <ThenAndNowScreen sculpture={sculpture} />);
    await screen.findByRole('row', { name: /^Even green film/ });
    expect(screen.queryByText(/^on a photo/)).toBeNull();
    first.unmount();
    show(at.desk, <EditZoneScreen sculpture={sculpture} zone={at.zone} />);
    const link = await screen.findByRole('link', { name: 'Measure on it: Worst square, 12 May 2026' });
    expect(link.getAttribute('href')).toBe(`/measure/${hash}/sentinel/s1`);
    expect(within(link.closest('li') as HTMLElement).getByText(/traced: 6 %/)).toBeDefined();
  });
});
