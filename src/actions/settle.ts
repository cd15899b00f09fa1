import { type Entry, type Reason, settlingDouble, type Written } from '../engine/record';
import { asTyped } from './asTyped';
import { commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { doublesHere } from './doublesHere';
import { inTurn } from './inTurn';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { theThing } from './theThing';
import { whoIsAtWork } from './whoIsAtWork';

/** One of the versions as it stands (by entry id), or a body put together from them. */
export type SettleChoice = { readonly version: string } | { readonly body: Readonly<Record<string, unknown>> };

/**
 * Settles a thing on which people spoke without seeing each other: one entry that replaces all its versions. What two rounds said to
 * be one both recorded ends under its name in the one round.
 */
export const settle = (desk: Desk, thing: string, choice: SettleChoice): Promise<Outcome<{ readonly deed: string }>> =>
  attempt(() =>
    inTurn(desk.store, async () => {
      const waiting = (await versionsOf(desk, thing)) ?? refuse(refusal('not here', { thing }));
      const { kind, versions, written } = waiting;
      if (versions.length < 2) return refuse(refusal('nothing to settle', {}));
      const chosen = 'version' in choice ? choice.version : versions[0]?.id;
      const like = versions.find((entry) => entry.id === chosen) ?? refuse(refusal('version not here', {}));
      const gone = 'version' in choice && like.gone === true;
      const body: Entry['body'] = 'body' in choice ? { ...asTyped(choice.body) } : like.body;
      const deed = desk.newId();
      const at = desk.now();
      const by = await whoIsAtWork(desk);
      const name: Reason = deedName('deed: settled', { kind });
      const entries = written(body, gone, like.v).map((entry) => ({ id: desk.newId(), at, by, deed, ...entry }));
      await desk.store.commit({ entries, deed: { id: deed, name, at } });
      return { deed };
    }),
  );

interface Waiting {
  readonly kind: string;
  /** The one that leads for now first. */
  readonly versions: readonly Entry[];
  readonly written: (body: Entry['body'], gone: boolean, v: number) => readonly Written[];
}

const versionsOf = async (desk: Desk, thing: string): Promise<Waiting | undefined> => {
  const found = (await doublesHere(desk)).find(({ double }) => double.thing === thing);
  if (found) {
    const { double, versions } = found;
    return { kind: double.current.kind, versions, written: (body) => settlingDouble(double, body) };
  }
  const current = await desk.store.current(thing);
  if (!current) return undefined;
  const entries = await desk.store.entriesOf(thing);
  const versions = current.heads.flatMap((id) => entries.find((entry) => entry.id === id) ?? []);
  const { kind, within } = current;
  return {
    kind,
    versions,
    written: (body, gone, v) => [
      { thing, kind, within, v, replaces: [...current.heads], ...(gone ? { gone: true as const } : {}), body },
    ],
  };
};

/** The later round counts as part of the earlier one; what both recorded becomes two versions, to settle. */
export const sayOne = (desk: Desk, earlier: string, later: string): Promise<Outcome> =>
  attempt(async () => {
    await sameWork(desk, earlier, later);
    return must(
      await commitChanges(desk, deedName('deed: rounds said one', {}), [{ thing: later, patch: { partOf: earlier } }]),
    );
  });

/** They stay two rounds, and are not asked about again. */
export const sayApart = (desk: Desk, earlier: string, later: string): Promise<Outcome> =>
  attempt(async () => {
    const [, second] = await sameWork(desk, earlier, later);
    const apartFrom = [...new Set([...(second.body.apartFrom ?? []), earlier])];
    return must(
      await commitChanges(desk, deedName('deed: rounds said apart', {}), [{ thing: later, patch: { apartFrom } }]),
    );
  });

const sameWork = async (desk: Desk, earlier: string, later: string) => {
  const rounds = [await theThing(desk, 'round', earlier), await theThing(desk, 'round', later)] as const;
  if (rounds[0].body.sculpture !== rounds[1].body.sculpture) refuse(refusal('rounds of two sculptures', {}));
  return rounds;
};
