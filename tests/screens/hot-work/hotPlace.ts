import { addInsert, addPlanned, type Desk, setPlanned } from '../../../src/actions';
import { type BodyOf, nameOf } from '../../../src/engine/record';
import { aWork, done } from '../deskwork';

/** A work of two zones with two lenses, and its campaign. */
export const hotPlace = async (desk: Desk) => {
  const work = await aWork(desk, { title: 'Test table', number: 'T-3', areas: [1, 2] });
  const { sculpture, zones } = work;
  const lens = async (name: string) => {
    const fields = {
      ...{ material: `Cast glass, lens ${name}`, count: 1, removable: 'no' as const },
      where: `${name} from the left figure`,
    };
    return (await done(addInsert(desk, sculpture, { ...fields, zone: zones[1] as string }))).insert;
  };
  const [l2, l5] = [await lens('L2'), await lens('L5')];
  const body = { sculpture, title: 'Strip and colour', opened: '2026-01-10', step: 'trigger' };
  const { thing: campaign } = await done(addPlanned(desk, 'campaign', body));
  return { ...work, l2, l5, campaign };
};

export type HotPlace = Awaited<ReturnType<typeof hotPlace>>;

export const limitOf = (desk: Desk, { sculpture }: HotPlace, insert: string) => {
  const body: BodyOf<'insertCare'> = {
    ...{ sculpture, insert, most: 60, mostDifference: 40, limitBy: { role: 'Glass conservator' } },
    ...{ limitDate: '2026-05-01', method: 'shield' },
  };
  return done(setPlanned(desk, 'insertCare', nameOf.insertCare(insert), body));
};

export const cardOf = async (desk: Desk, place: HotPlace, more: Partial<BodyOf<'hotDay'>> = {}): Promise<string> => {
  const { sculpture, campaign, l2 } = place;
  const body: BodyOf<'hotDay'> = {
    ...{ sculpture, campaign, date: '2026-10-15', permit: 'HW-12', authorisedBy: { role: 'Head of grounds' } },
    ...{ clearZone: 11, checked: [], watcher: { role: 'Helper' }, watchMinutes: 60, inserts: [l2], ...more },
  };
  return (await done(addPlanned(desk, 'hotDay', body))).thing;
};
