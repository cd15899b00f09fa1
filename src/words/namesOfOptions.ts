import type { SculptureRecord, Thing } from '../engine/record';
import { options as words } from './en/options';
import type { NameOfThing } from './en/sentence';
import { thenAndNow } from './en/thenAndNow';

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** What a way is called on this page: "B · Wax and local treatment". */
export const nameOfOption = (options: readonly Thing<'option'>[], thing: string): string => {
  const at = options.findIndex((option) => option.thing === thing);
  const option = options[at];
  return option ? words.named(letters[at] ?? `${at + 1}`, option.body.title) : '';
};

/** Names of the ways and of the zones, for sentences. */
export const namesOfOptions = (options: readonly Thing<'option'>[], record: SculptureRecord): NameOfThing => {
  const zones = new Map(
    record.zones.map(({ thing, body }) => [thing, thenAndNow.zoneNamed(body.letter, body.name)] as const),
  );
  return (thing) => zones.get(thing) ?? (nameOfOption(options, thing) || undefined);
};
