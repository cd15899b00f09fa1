import type { Reason } from '../engine/record';
import { asTyped } from './asTyped';
import { commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { inTurn } from './inTurn';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { theThing } from './theThing';
import { whoIsAtWork } from './whoIsAtWork';

/** One of the versions as it stands (by entry id), or a body put together from them. */
export type SettleChoice = { readonly version: string } | { readonly body: Readonly<Record<string, unknown>> };

/** Settles a thing on which people spoke without seeing each other: one entry that replaces all its versions. */
export const settle = (desk: Desk, thing: string, choice: SettleChoice): Promise<Outcome<{ readonly deed: string }>> =>
  attempt(() =>
    inTurn(desk.store, async () => {
      const current = await desk.store.current(thing);
      if (!current) return refuse(refusal('not here', { thing }));
      if (current.heads.length < 2) return refuse(refusal('nothing to settle', {}));
      const versions = await desk.store.entriesOf(thing);
      const chosen = 'version' in choice ? choice.version : current.lead.id;
      const like = versions.find((entry) => entry.id === chosen && current.heads.includes(entry.id));
      if (!like) return refuse(refusal('version not here', {}));
      const gone = 'version' in choice && like.gone ? { gone: true as const } : {};
      const body: Record<string, unknown> = 'body' in choice ? { ...asTyped(choice.body) } : like.body;
      const deed = desk.newId();
      const at = desk.now();
      const name: Reason = deedName('deed: settled', { kind: current.kind });
      const { kind, within, v } = like;
      const entry = {
        id: desk.newId(),
        thing,
        kind,
        within,
        v,
        at,
        by: await whoIsAtWork(desk),
        deed,
        replaces: [...current.heads],
        ...gone,
        body,
      };
      await desk.store.commit({ entries: [entry], deed: { id: deed, name, at } });
      return { deed };
    }),
  );

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
