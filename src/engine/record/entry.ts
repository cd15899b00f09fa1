import { maybe, text, whole } from './bounds';
import { z } from './zod';

/** Names of things start with their kind: `zone/0192...`, `finding/<round>/<zone>/<kind>/<origin>`. See names.ts. */
export const thingName = text(400, 3);

export const uuid = z.uuid();

/** ISO 8601 with offset, e.g. 2026-05-12T10:41:07.120+01:00. */
export const instant = z.iso.datetime({ offset: true });

/** A calendar day, e.g. 2026-05-12. Years 1000 to 2200: outside that it is a slip of the finger. */
export const day = z.iso
  .date()
  .check(z.refine((d) => d >= '1000-01-01' && d <= '2200-12-31', 'a date between 1000 and 2200'));

/**
 * Everything a person enters is an entry, and an entry is never changed.
 * A correction is a new entry whose `replaces` names the older ones.
 */
export const entrySchema = z.looseObject({
  /** UUIDv7. */
  id: uuid,
  /** What it speaks of. */
  thing: thingName,
  kind: text(60, 1),
  /** The sculpture (or the collection) it belongs to: index, preview, partial carry. */
  within: thingName,
  /** Version of the body. */
  v: whole(1),
  at: instant,
  /** Surveyor, a pseudonymous thing name, or '' where nobody was set. */
  by: text(200),
  device: text(80),
  /** This device's own counter. */
  n: whole(0),
  /** Groups what one action wrote. */
  deed: uuid,
  replaces: z.array(uuid),
  /** Undo: the entry whose state this one brings back. */
  restores: maybe(uuid),
  gone: maybe(z.literal(true)),
  body: z.record(z.string(), z.unknown()),
});

export type Entry = z.infer<typeof entrySchema>;
