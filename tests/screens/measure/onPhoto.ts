import { fireEvent, screen } from '@testing-library/react';
import { vi } from 'vitest';
import { commitChanges, type Desk } from '../../../src/actions';
import { type Outline, type Point, writeSelector } from '../../../src/engine/photo';
import { nameOf } from '../../../src/engine/record';
import { aRound, aWork, done, freshDesk, type Work } from '../deskwork';

export const green = 'even-green-film';
export const hash = 'a'.repeat(64);
export const photo = nameOf.photo(hash);

/** Half of the picture each way, in its middle. */
export const middle: Outline = [
  [
    [0.25, 0.25],
    [0.75, 0.25],
    [0.75, 0.75],
    [0.25, 0.75],
  ],
];

export interface OnPhoto {
  readonly desk: Desk;
  readonly work: Work;
  readonly round: string;
  readonly zone: string;
}

interface Given {
  /** The zone is outlined on this photo, on the map. */
  readonly outlined?: boolean;
  /** The bytes are on this device. */
  readonly bytes?: boolean;
  readonly size?: object;
}

/** A work whose zone A was seen a fifth green in one round, and a photo of it taken in that round. */
export const onPhoto = async (
  seed: number,
  { outlined = true, bytes = true, size = { width: 2000, height: 1500 } }: Given = {},
): Promise<OnPhoto> => {
  const desk = await freshDesk(seed);
  const work = await aWork(desk, { title: 'The Invented', number: 'X1', areas: [2, 3] });
  const { sculpture } = work;
  const zone = work.zones[0] ?? '';
  const round = await aRound(desk, work, '2026-05-12', [{ [green]: 0.2 }, 'nothing']);
  const elevation = nameOf.elevation('e1');
  const selector = { type: 'SvgSelector' as const, value: writeSelector(middle) };
  const taken = { role: 'zone' as const, zone, round, taken: '2026-05-12T10:00:00', mime: 'image/jpeg', bytes: 4 };
  await done(
    commitChanges(desk, { code: 'deed: photo kept', params: {} }, [
      { thing: photo, kind: 'photo', within: sculpture, body: { sculpture, sha256: hash, ...taken, ...size } },
    ]),
  );
  if (outlined)
    await done(
      commitChanges(desk, { code: 'deed: elevation added', params: { side: 'west' } }, [
        { thing: elevation, kind: 'elevation', within: sculpture, body: { sculpture, side: 'west', photo, order: 1 } },
        {
          thing: nameOf.outline(elevation, zone),
          kind: 'outline',
          within: sculpture,
          body: { sculpture, elevation, zone, target: { source: photo, selector } },
        },
      ]),
    );
  if (bytes)
    vi.spyOn(desk.store, 'photo').mockResolvedValue({ sha256: hash, mime: 'image/jpeg', bytes: new ArrayBuffer(4) });
  return { desk, work, round, zone };
};

/** A finger on the picture, at a place in fractions of it. */
export const touch = ([x, y]: Point, what = 'Place a corner'): void => {
  const surface = screen.getByRole('button', { name: what });
  vi.spyOn(surface, 'getBoundingClientRect').mockReturnValue({ left: 0, top: 0, width: 1000, height: 750 } as DOMRect);
  fireEvent.click(surface, { clientX: x * 1000, clientY: y * 750, detail: 1 });
};
