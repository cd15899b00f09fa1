/** One way to deal with a group: what it costs and what it takes away, both whole numbers, 0 or more. */
export interface Way {
  readonly cost: number;
  readonly gain: number;
}

/** A choice of one way from each group, as the last way and the choice it was added to. */
export interface Choice<W extends Way> extends Way {
  readonly way: W | null;
  readonly before: Choice<W> | null;
}

const nothing: Choice<never> = { cost: 0, gain: 0, way: null, before: null };

/**
 * Every choice of exactly one way per group that no other choice beats: cheapest first, each next one dearer and gaining more. Exact:
 * for each gain that can be had the cheapest way to it is carried from group to group, so that it takes groups x gains x ways steps.
 * The gains must be whole numbers that add up to something a table can hold; an empty group, or none, leaves nothing to choose.
 */
export const frontOf = <W extends Way>(groups: readonly (readonly W[])[]): readonly Choice<W>[] => {
  let front: readonly Choice<W>[] = [nothing];
  for (const ways of groups) if (ways.length > 0) front = joined(front, undominated(ways));
  return front;
};

/** Cheapest first, each gains more than all cheaper ones; of equals the first given. */
export const undominated = <W extends Way>(ways: readonly W[]): readonly W[] => {
  let most = -1;
  return [...ways]
    .sort((a, b) => a.cost - b.cost || b.gain - a.gain)
    .filter(({ gain }) => {
      const more = gain > most;
      if (more) most = gain;
      return more;
    });
};

const joined = <W extends Way>(front: readonly Choice<W>[], ways: readonly W[]): readonly Choice<W>[] => {
  const most = (front.at(-1)?.gain ?? 0) + (ways.at(-1)?.gain ?? 0);
  const cheapest = new Float64Array(most + 1).fill(Number.POSITIVE_INFINITY);
  const from = new Int32Array(most + 1);
  const by = new Int32Array(most + 1);
  for (const [b, before] of front.entries()) {
    for (const [w, way] of ways.entries()) {
      const gain = before.gain + way.gain;
      const cost = before.cost + way.cost;
      if (cost >= (cheapest[gain] ?? 0)) continue;
      cheapest[gain] = cost;
      from[gain] = b;
      by[gain] = w;
    }
  }
  const next: Choice<W>[] = [];
  let least = Number.POSITIVE_INFINITY;
  for (let gain = most; gain >= 0; gain--) {
    const cost = cheapest[gain] ?? Number.POSITIVE_INFINITY;
    if (cost >= least) continue;
    least = cost;
    next.push({ cost, gain, way: ways[by[gain] ?? 0] ?? null, before: front[from[gain] ?? 0] ?? null });
  }
  return next.reverse();
};

/** The choice that gains most for no more than so much; undefined where even the cheapest costs more. */
export const within = <W extends Way>(front: readonly Choice<W>[], limit: number): Choice<W> | undefined => {
  let found: Choice<W> | undefined;
  for (const choice of front) {
    if (choice.cost > limit) break;
    found = choice;
  }
  return found;
};

/** The ways of a choice, in the order of the groups that had any. */
export const waysOf = <W extends Way>(choice: Choice<W>): readonly W[] => {
  const ways: W[] = [];
  for (let at: Choice<W> | null = choice; at; at = at.before) if (at.way) ways.push(at.way);
  return ways.reverse();
};
