import { type Group, type KindOfFinding, kinds } from '../../engine/trade';

/** Kinds in the groups they are offered in, in the order of the table. */
export const kindsByGroup: readonly { readonly group: Group; readonly kinds: readonly KindOfFinding[] }[] = [
  ...new Set(kinds.map(({ group }) => group)),
].map((group) => ({ group, kinds: kinds.filter((kind) => kind.group === group) }));
