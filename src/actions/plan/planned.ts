import type { PlannedKind } from '../../engine/record';
import { type BodyOf, idPart, type Reason } from '../../engine/record';
import { commitChanges, type Said } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { theThing } from '../theThing';
import { type PlannedCheck, plannedChecks } from './checks';

/** Says something planned for the first time, under a name of its own. */
export const addPlanned = <K extends PlannedKind>(
  desk: Desk,
  kind: K,
  body: BodyOf<K>,
): Promise<Outcome<{ readonly thing: string }>> => setPlanned(desk, kind, `${kind}/${desk.newId()}`, body);

/** Says the whole of something planned, under a name two tablets agree on (see nameOf): new, or anew. */
export const setPlanned = <K extends PlannedKind>(
  desk: Desk,
  kind: K,
  thing: string,
  body: BodyOf<K>,
): Promise<Outcome<{ readonly thing: string }>> =>
  attempt(async () => {
    const whole = withoutEmpty(body);
    await check(desk, kind, thing, whole);
    const said = { thing, kind, within: withinOf(desk, whole), body: whole } as Said;
    must(await commitChanges(desk, deedName('deed: plan kept', { kind }), [said]));
    return { thing };
  });

/** Some fields said anew; `undefined` empties a field. The whole is checked as it will stand. */
export const editPlanned = <K extends PlannedKind>(
  desk: Desk,
  kind: K,
  thing: string,
  patch: Readonly<Partial<BodyOf<K>>>,
): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, kind, thing);
    await check(desk, kind, thing, withoutEmpty({ ...body, ...patch } as BodyOf<K>));
    return must(await commitChanges(desk, deedName('deed: plan kept', { kind }), [{ thing, patch: { ...patch } }]));
  });

export const removePlanned = <K extends PlannedKind>(desk: Desk, kind: K, thing: string): Promise<Outcome> =>
  attempt(async () => {
    await theThing(desk, kind, thing);
    return must(await commitChanges(desk, deedName('deed: plan removed', { kind }), [{ thing, gone: true }]));
  });

const withinOf = (desk: Desk, body: object): string => {
  const { sculpture } = body as { readonly sculpture?: unknown };
  return typeof sculpture === 'string' && idPart(sculpture) ? sculpture : desk.collection;
};

/** A field that holds `undefined` is a field that is not there. */
export const withoutEmpty = <T extends object>(body: T): T =>
  Object.fromEntries(Object.entries(body).filter(([, value]) => value !== undefined)) as T;

/** Refuses what its own check or its schema does not let stand. */
export const check = async <K extends PlannedKind>(
  desk: Desk,
  kind: K,
  thing: string,
  body: BodyOf<K>,
): Promise<void> => {
  const against = plannedChecks[kind] as PlannedCheck<K> | undefined;
  const reason = await against?.(body, desk, thing);
  if (reason) refuse(reason);
  // The schemas bring Zod, which no start of the app waits for; a form lets nothing through that its bounds do not hold.
  const { bodySchemas } = await import('../../engine/record/schemas');
  const read = bodySchemas[kind].safeParse(body);
  if (!read.success) refuse(fieldRefused(read.error.issues[0]?.path ?? []));
};

const fieldRefused = (path: readonly PropertyKey[]): Reason =>
  refusal('field not possible', { field: path.map(String).join(' ') });
