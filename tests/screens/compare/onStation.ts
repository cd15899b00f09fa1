import { fireEvent } from '@testing-library/react';
import { vi } from 'vitest';
import { addStation, type Change, commitChanges, type Desk } from '../../../src/actions';
import { type BodyOf, nameOf } from '../../../src/engine/record';
import { aWork, done, freshDesk, type Work } from '../deskwork';

export interface OnStation {
  readonly desk: Desk;
  readonly work: Work;
  readonly station: string;
  readonly photos: readonly string[];
}

type Facts = Partial<BodyOf<'photo'>>;

const usual: Facts = { width: 3000, height: 4000, light: 'overcast', wet: 'dry', washed: 'before wash' };

/** A work with one station and a photo from it for each year given, the first in 2021. */
export const onStation = async (seed: number, years: readonly Facts[]): Promise<OnStation> => {
  const desk = await freshDesk(seed);
  const work = await aWork(desk, { title: 'Grey heron', number: '7', areas: [2, 1] });
  const { sculpture } = work;
  const { station } = await done(
    addStation(desk, sculpture, { letter: 'A', aim: 'the beak', light: 'overcast', wet: 'dry' }),
  );
  const photos: string[] = [];
  for (const [i, facts] of years.entries()) {
    const sha256 = String(i + 1).repeat(64);
    const thing = nameOf.photo(sha256);
    photos.push(thing);
    const body: BodyOf<'photo'> = {
      ...{ sculpture, sha256, mime: 'image/jpeg', bytes: 9, role: 'station', station },
      ...usual,
      taken: `${2021 + i}-05-12T10:00:00`,
      ...facts,
    };
    const change: Change = { thing, kind: 'photo', within: sculpture, body };
    await done(commitChanges(desk, { code: 'deed: photo kept', params: {} }, [change]));
  }
  return { desk, work, station, photos };
};

/** Touches a picture at a place, in fractions of it. */
export const touch = (surface: HTMLElement, [x, y]: readonly [number, number]) => {
  vi.spyOn(surface, 'getBoundingClientRect').mockReturnValue({
    left: 0,
    top: 0,
    width: 300,
    height: 400,
  } as unknown as DOMRect);
  fireEvent.click(surface, { clientX: x * 300, clientY: y * 400, detail: 1 });
};
