import { Flow } from './flow';
import type { Fund, Gift, GiftState } from './pipeline';

type Line = Fund['lines'][number];

/** Lines that more gifts are tied to than they cost: so much of those gifts has no use here. */
export interface Overfull {
  readonly lines: readonly string[];
  /** Places in the list of gifts. */
  readonly gifts: readonly number[];
  /** Minor units without a use. */
  readonly over: number;
  /** True where all lines are paid for and still something is left: enough, not a fault. */
  readonly all: boolean;
}

/** What gifts pay for, each only what it may, in minor units. */
export interface Cover {
  /** Of the lines: what is paid by what is here (spent or in hand), what promises add to it, and hopes at their face. */
  readonly inHand: number;
  readonly pledged: number;
  readonly hoped: number;
  /** By line id: paid by each step. */
  readonly lines: ReadonlyMap<string, Readonly<Record<Step, number>>>;
  /** Of each gift, how much has a use here, in the order they were given. */
  readonly used: readonly number[];
  readonly overfull: readonly Overfull[];
}

const steps = ['inHand', 'pledged', 'hoped'] as const;
type Step = (typeof steps)[number];
const stepOf: Readonly<Record<GiftState, Step | undefined>> = {
  spent: 'inHand',
  'in hand': 'inHand',
  pledged: 'pledged',
  hoped: 'hoped',
  lost: undefined,
};

/**
 * Shares gifts out over lines so that as much as possible is paid, what is here first, then promises, then hopes. Exact: a flow that
 * cannot be made larger; where gifts are left over, the lines they are tied to and no others show it. What an earlier step pays never
 * shrinks for a later one.
 */
export const coverOf = (lines: readonly Line[], gifts: readonly Gift[]): Cover => {
  const flow = new Flow(lines.map(({ amount }) => amount.minor));
  const places = new Map(lines.map(({ id }, place) => [id, place]));
  const nodes: (number | undefined)[] = gifts.map(() => undefined);
  const sums = { inHand: 0, pledged: 0, hoped: 0 };
  const paid = lines.map(() => ({ inHand: 0, pledged: 0, hoped: 0 }));
  for (const step of steps) {
    const before = flow.total();
    for (const [place, gift] of gifts.entries()) {
      if (stepOf[gift.state] !== step) continue;
      const allowed = gift.only?.flatMap((id) => places.get(id) ?? []) ?? lines.map((_, line) => line);
      nodes[place] = flow.add(gift.amount.minor, allowed);
    }
    sums[step] = flow.total() - before;
  }
  for (const [place, gift] of gifts.entries()) {
    const [node, step] = [nodes[place], stepOf[gift.state]];
    if (node === undefined || !step) continue;
    for (const [line, share] of paid.entries()) share[step] += flow.between(node, line);
  }
  return {
    ...sums,
    lines: new Map(lines.map(({ id }, line) => [id, paid[line] ?? { inHand: 0, pledged: 0, hoped: 0 }])),
    used: nodes.map((node) => (node === undefined ? 0 : flow.used(node))),
    overfull: overfullIn(flow, lines, nodes),
  };
};

/** What each gift with something left over is tied to, put together where it is tied to the same lines. */
const overfullIn = (
  flow: Flow,
  lines: readonly Line[],
  nodes: readonly (number | undefined)[],
): readonly Overfull[] => {
  let groups: { readonly lines: ReadonlySet<number>; readonly gifts: ReadonlySet<number> }[] = [];
  for (const node of nodes) {
    if (node === undefined || flow.left(node) === 0) continue;
    const tied = flow.reached(node);
    const meets = (group: (typeof groups)[number]): boolean => tied.lines.some((line) => group.lines.has(line));
    const same = groups.filter(meets);
    const together = {
      lines: new Set([...tied.lines, ...same.flatMap((group) => [...group.lines])]),
      gifts: new Set([...tied.gifts, ...same.flatMap((group) => [...group.gifts])]),
    };
    groups = [...groups.filter((group) => !meets(group)), together];
  }
  return groups.map((group) => ({
    lines: lines.filter((_, line) => group.lines.has(line)).map(({ id }) => id),
    gifts: nodes.flatMap((node, place) => (node !== undefined && group.gifts.has(node) ? [place] : [])),
    over: [...group.gifts].reduce((sum, node) => sum + flow.left(node), 0),
    all: group.lines.size === lines.length,
  }));
};
