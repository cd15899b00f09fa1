import { seedOf } from '../../engine/chance';
import type { Coverage } from '../../engine/condition';
import { eyeNumbers } from '../../engine/eye';
import { nameOf } from '../../engine/record';
import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { theThing } from '../theThing';
import { keepUnderWay, keyOf, tellUnderWay, underWay } from './underWay';

/** Patches in one eye check. */
export const patchesInCheck = eyeNumbers.patches.value;

/** Begins an eye check anew; what was said in one that was not finished is forgotten. */
export const startEyeCheck = (desk: Desk, surveyor: string): Promise<Outcome> =>
  attempt(async () => {
    await theThing(desk, 'surveyor', surveyor);
    await keepUnderWay(desk, surveyor, { seed: seedOf(desk.newId()), patches: [] });
    return {};
  });

/** Forgets one that was not finished. */
export const leaveEyeCheck = (desk: Desk, surveyor: string): Promise<Outcome> =>
  attempt(async () => {
    await keepUnderWay(desk, surveyor, null);
    return {};
  });

/** The next patch of the check under way judged. The last one makes the check, in one deed; `made` is then its name. */
export const sayPatch = (
  desk: Desk,
  surveyor: string,
  { truth, said }: { readonly truth: number; readonly said: Coverage },
): Promise<Outcome<{ readonly made?: string }>> =>
  attempt(async () => {
    const at = (await underWay(desk, surveyor)) ?? refuse(refusal('no eye check under way', {}));
    const patches = [...at.patches, { truth, said }];
    if (patches.length < patchesInCheck) {
      await keepUnderWay(desk, surveyor, { ...at, patches });
      return {};
    }
    const thing = nameOf.eyeCheck(desk.newId());
    must(
      await commitChanges(
        desk,
        deedName('deed: eye check made', { patches: patches.length }),
        [
          {
            thing,
            kind: 'eyeCheck',
            within: desk.collection,
            body: { surveyor, date: desk.today(), seed: at.seed, patches },
          },
        ],
        { notes: { key: keyOf(surveyor), value: null } },
      ),
    );
    tellUnderWay(desk);
    return { made: thing };
  });

/** The last patch judged is to be judged again. */
export const takeBackPatch = (desk: Desk, surveyor: string): Promise<Outcome> =>
  attempt(async () => {
    const at = await underWay(desk, surveyor);
    if (!at || at.patches.length === 0) return refuse(refusal('nothing to undo', {}));
    await keepUnderWay(desk, surveyor, { ...at, patches: at.patches.slice(0, -1) });
    return {};
  });

/** A check that does not count: a hurried one, or one made by somebody else under this name. */
export const removeEyeCheck = (desk: Desk, check: string): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'eyeCheck', check);
    const deed = deedName('deed: eye check removed', { day: body.date });
    return must(await commitChanges(desk, deed, [{ thing: check, gone: true }]));
  });
