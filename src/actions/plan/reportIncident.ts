import { type BodyOf, nameOf } from '../../engine/record';
import { type Change, commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must } from '../outcome';
import { deedName } from '../reasonCodes';
import { theThing } from '../theThing';
import { check, withoutEmpty } from './planned';

const longestWhat = 500;

/**
 * An incident, new or said anew, and where people now are or may be in danger at a work, a person check of it in the same deed:
 * neither is there without the other. The check stands above every list until a named person closes it.
 */
export const reportIncident = (
  desk: Desk,
  body: BodyOf<'incident'>,
  reported?: string,
): Promise<Outcome<{ readonly incident: string; readonly personCheck: string | undefined }>> =>
  attempt(async () => {
    const before = reported === undefined ? undefined : (await theThing(desk, 'incident', reported)).body;
    const incident = reported ?? nameOf.incident(desk.newId());
    const whole = withoutEmpty(body);
    await check(desk, 'incident', incident, whole);
    const { sculpture, what, date, danger, zones } = whole;
    const within = sculpture ?? desk.collection;
    const changes: Change[] = [{ thing: incident, kind: 'incident', within, body: whole }];
    const personCheck =
      sculpture !== undefined && danger !== 'none' && (before?.danger ?? 'none') === 'none'
        ? nameOf.personCheck(desk.newId())
        : undefined;
    if (sculpture !== undefined && personCheck !== undefined) {
      const [zone, another] = zones ?? [];
      const only = zone !== undefined && another === undefined ? { zone } : {};
      const said = { sculpture, what: what.trim().slice(0, longestWhat), opened: date, ...only };
      changes.push({ thing: personCheck, kind: 'personCheck', within: sculpture, body: said });
    }
    must(await commitChanges(desk, deedName('deed: plan kept', { kind: 'incident' }), changes));
    return { incident, personCheck };
  });
