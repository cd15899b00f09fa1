import type { BodyOf, KindOfThing } from './bodies';
import type { Current, Thing } from './current';
import { isKnown } from './kindsOfThing';

/**
 * A present thing with its body in the shape its kind promises; undefined where it is missing, taken away, of another kind, or
 * written by a newer version. Bodies were judged when they were made or carried in; nothing is checked again here.
 */
export const asThing = <K extends KindOfThing>(current: Current | undefined, kind: K): Thing<K> | undefined =>
  current && !current.gone && current.kind === kind && isKnown(current.lead)
    ? { thing: current.thing, body: current.lead.body as BodyOf<K>, lead: current.lead, heads: current.heads }
    : undefined;
