import { addDays, type Reason, type Thing } from '../record';
import { type Cause, causes, seasonDays } from '../trade';
import { because } from './reasonCodes';

/** What feeds the damage of a work, and whether money spent on its surface now is spent on a symptom. */
export interface CausesFirst {
  /** At work, or being removed. */
  readonly open: readonly Thing<'cause'>[];
  /** What the exposure of zones makes worth looking for, and nobody has written an answer to. Names of zones. */
  readonly lookFor: readonly { readonly cause: Cause; readonly zones: readonly string[] }[];
  /** True while a cause is open, or was removed less than a season ago, or nobody has looked for any. */
  readonly waits: boolean;
  readonly reasons: readonly Reason[];
}

/** `zones`: those that live today. `today`: YYYY-MM-DD. */
export const causesFirst = (
  zones: readonly Thing<'zone'>[],
  said: readonly Thing<'cause'>[],
  today: string,
): CausesFirst => {
  const open = said.filter(({ body }) => body.state === 'open' || body.state === 'being removed');
  const reasons = said.flatMap((cause) => reasonOf(cause, zones, today));
  const settled = said.length - open.length;
  if (said.length === 0) reasons.push(because('campaign: nobody looked for causes'));
  else if (open.length === 0) reasons.push(because('campaign: causes settled', { count: settled }));
  return {
    open,
    lookFor: lookFor(zones, said),
    waits:
      said.length === 0 || open.length > 0 || reasons.some(({ code }) => code === 'campaign: cause removed lately'),
    reasons,
  };
};

const reasonOf = ({ body }: Thing<'cause'>, zones: readonly Thing<'zone'>[], today: string): Reason[] => {
  const cause = body.sort;
  const letters = zones.filter(({ thing }) => body.zones.includes(thing)).map((zone) => zone.body.letter);
  const where = { cause, zones: letters.join(', ') };
  if (body.state === 'open') return [because('campaign: cause open', where)];
  if (body.state === 'being removed') return [because('campaign: cause being removed', where)];
  if (body.state === 'cannot be removed') return [because('campaign: cause cannot be removed', { cause })];
  if (body.state !== 'removed' || body.changed === undefined) return [];
  const until = addDays(body.changed, seasonDays.value);
  return until > today ? [because('campaign: cause removed lately', { cause, date: body.changed, until })] : [];
};

/** A cause is answered for a zone that its entry names, and for all where it names none. */
const lookFor = (zones: readonly Thing<'zone'>[], said: readonly Thing<'cause'>[]): CausesFirst['lookFor'] =>
  causes.flatMap((cause) => {
    const answered = said.filter(({ body }) => body.sort === cause.id);
    const suspect = zones
      .filter(({ body }) => body.exposure.some((exposure) => cause.exposures.includes(exposure)))
      .map(({ thing }) => thing)
      .filter((zone) => !answered.some(({ body }) => body.zones.length === 0 || body.zones.includes(zone)));
    return suspect.length > 0 ? [{ cause, zones: suspect }] : [];
  });
