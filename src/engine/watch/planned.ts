import type { KindOfThing, Thing } from '../record';

/** Living things of some kinds, each kind its list. */
export type Lists<K extends KindOfThing> = { readonly [P in K]: readonly Thing<P>[] };
