import type { WorkHere } from '../../engine/bring';
import { endOf } from '../../engine/record';
import type { Desk } from '../desk';
import { thingsOfKind } from '../theThing';

/** The works a list can speak of, by number, with the zones they have now. */
export const worksHere = async (desk: Desk): Promise<readonly WorkHere[]> => {
  const [works, zones] = await Promise.all([thingsOfKind(desk, 'sculpture'), thingsOfKind(desk, 'zone')]);
  return works
    .map(({ thing, body: { number, title } }) => ({
      thing,
      number,
      title,
      zones: zones
        .filter((zone) => zone.body.sculpture === thing && endOf(zone) === undefined)
        .map((zone) => ({ thing: zone.thing, letter: zone.body.letter, name: zone.body.name }))
        .sort((a, b) => (a.letter < b.letter ? -1 : 1)),
    }))
    .sort((a, b) => byNumber.compare(a.number, b.number));
};

const byNumber = new Intl.Collator('en', { numeric: true });
