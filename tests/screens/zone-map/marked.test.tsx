import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { commitChanges, type Desk, setOutline } from '../../../src/actions';
import { asThing, nameOf, type Thing } from '../../../src/engine/record';
import { Elevation } from '../../../src/screens/round/Elevation';
import { done, freshDesk, show } from '../deskwork';
import { heronFromWest, square } from './side';

const elevationOf = async (desk: Desk, thing: string): Promise<Thing<'elevation'>> => {
  const current = await desk.store.current(thing);
  const elevation = current && asThing(current, 'elevation');
  if (!elevation) throw new Error('no elevation');
  return elevation;
};

it('marks the zone that is looked at on the side it is drawn on, that side first, without the photo too', async () => {
  const desk = await freshDesk();
  const work = await heronFromWest(desk, [2, 1], 1);
  const [a = '', b = ''] = work.zones;
  const east = nameOf.elevation(desk.newId());
  const body = { sculpture: work.sculpture, side: 'east', photo: work.photo, order: 2 };
  await done(
    commitChanges(desk, { code: 'deed: elevation added', params: { side: 'east' } }, [
      { thing: east, kind: 'elevation', within: work.sculpture, body },
    ]),
  );
  await done(setOutline(desk, east, b, square(0.5, 0.5)));
  const elevations = [await elevationOf(desk, work.elevation), await elevationOf(desk, east)];
  show(desk, <Elevation sculpture={work.sculpture} zone={b} elevations={elevations} />);
  expect(await screen.findByRole('img', { name: /^The work, east, with this zone marked/ })).toBeDefined();
  expect(document.querySelector('.line-here')?.getAttribute('d')).toMatch(/^M500 666\.67/);
  await userEvent.click(screen.getByRole('button', { name: /side/i }));
  expect(await screen.findByRole('img', { name: /^The work, west\. / })).toBeDefined();
  expect(document.querySelector('.line-here')).toBeNull();
  expect(document.querySelectorAll('.line-other')).toHaveLength(1);
  expect(a).not.toBe(b);
});
