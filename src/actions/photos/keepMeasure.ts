import { isRefused, measuredAgain, writeSelector } from '../../engine/photo';
import type { BodyOf } from '../../engine/record';
import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { theThing } from '../theThing';
import { forgetTouches, type MeasureOf, measureName, readAtHand, type WayOfMeasuring } from './measureAtHand';

/** Only for `measuredAgain`, which works the figure out of the touches and does not read it. */
const none = { value: 0, low: 0, high: 0 };

/**
 * Keeps what was touched as a figure of this photo, beside what the eye said and what other ways say, never in their place. Measured
 * again in the same way, it is said anew. Refused with the reason where the photo tells nothing.
 */
export const keepMeasure = (desk: Desk, of: MeasureOf): Promise<Outcome<{ readonly measure: string }>> =>
  attempt(async () => {
    const { draft } = await readAtHand(desk, of);
    if (!draft) return refuse(refusal('nothing measured', {}));
    const { sculpture, width, height, round } = (await theThing(desk, 'photo', of.photo)).body;
    if (width === undefined || height === undefined) return refuse(refusal('photo size not known', {}));
    const selector = { type: 'SvgSelector' as const, value: writeSelector(draft.part) };
    const { working } = draft;
    const told = measuredAgain({ selector, working, coverage: { ...none, method: of.way } }, { width, height });
    if (isRefused(told)) return refuse(told.refused[0] ?? refusal('nothing measured', {}));
    const body: BodyOf<'measure'> = {
      ...{ sculpture, photo: of.photo, about: of.about, kind: of.kind, date: desk.today(), selector },
      ...(round ? { round } : {}),
      coverage: told.coverage,
      working,
    };
    const measure = measureName(of);
    const deed = deedName('deed: coverage measured', { way: of.way, kind: of.kind });
    must(await commitChanges(desk, deed, [{ thing: measure, kind: 'measure', within: sculpture, body }]));
    return { measure };
  });

/** Takes a figure away, and the touches it was made of on this device. Undo brings it back. */
export const removeMeasure = (desk: Desk, measure: string): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'measure', measure);
    const of = { photo: body.photo, about: body.about, kind: body.kind, way: body.coverage.method as WayOfMeasuring };
    const deed = deedName('deed: measurement removed', { way: of.way, kind: of.kind });
    return must(await commitChanges(desk, deed, [{ thing: measure, gone: true }], { notes: forgetTouches(of) }));
  });
