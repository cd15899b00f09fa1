import type { Current, Thing } from './current';
import { leading } from './heads';
import { idPart } from './names';

/** Follows `partOf` to the round that stands for all; in a circle the first by name stands. */
const rootOf = (round: string, partOf: ReadonlyMap<string, string>): string => {
  const seen = [round];
  for (let at = partOf.get(round); at !== undefined; at = partOf.get(at)) {
    const start = seen.indexOf(at);
    if (start >= 0) return seen.slice(start).sort()[0] as string;
    seen.push(at);
  }
  return seen[seen.length - 1] as string;
};

/** For each round said to be one with another: the round it counts as. Rounds that stand for themselves are not in it. */
export const roundsCountedAs = (rounds: readonly Thing<'round'>[]): ReadonlyMap<string, string> => {
  const living = new Set(rounds.map((r) => r.thing));
  const partOf = new Map<string, string>();
  for (const { thing, body } of rounds) {
    if (body.partOf !== undefined && body.partOf !== thing && living.has(body.partOf)) partOf.set(thing, body.partOf);
  }
  const countedAs = new Map<string, string>();
  for (const round of partOf.keys()) {
    const root = rootOf(round, partOf);
    if (root !== round) countedAs.set(round, root);
  }
  return countedAs;
};

const ofARound = new Set(['visit', 'finding', 'rerating', 'classSet']);

/** The name a thing of a merged round has in the round it counts as: the round stands first in such names. */
export const nameInRoot = (thing: string, countedAs: ReadonlyMap<string, string>): string => {
  const [kind = '', round = '', ...rest] = thing.split('/');
  const root = ofARound.has(kind) ? countedAs.get(`round/${round}`) : undefined;
  return root === undefined ? thing : [kind, idPart(root), ...rest].join('/');
};

/** A thing of a merged round as a thing of the round it counts as. The lead stays the entry it is. */
export const inRoot = (current: Current, countedAs: ReadonlyMap<string, string>): Current => {
  const { body } = current.lead;
  const changed: Record<string, string> = {};
  for (const field of ['round', 'carriedFrom']) {
    const root = countedAs.get(String(body[field]));
    if (root !== undefined) changed[field] = root;
  }
  if (current.kind === 'personCheck' && typeof body.finding === 'string') {
    const finding = nameInRoot(body.finding, countedAs);
    if (finding !== body.finding) changed.finding = finding;
  }
  if (Object.keys(changed).length === 0) return current;
  const lead = { ...current.lead, body: { ...body, ...changed } };
  return { ...current, thing: nameInRoot(current.thing, countedAs), lead };
};

/** Two things of one name: the living one alone, or both, the one that leads first. */
export const together = (a: Current, b: Current): Current => {
  if (a.gone !== b.gone) return a.gone ? b : a;
  const [first, second] =
    leading({ entry: a.lead, line: a.line }, { entry: b.lead, line: b.line }) <= 0 ? [a, b] : [b, a];
  return { ...first, heads: [...first.heads, ...second.heads] };
};

/** What was recorded in rounds said to be one, as of one round: a double becomes one thing with two heads, not settled. */
export const merged = (currents: readonly Current[], countedAs: ReadonlyMap<string, string>): readonly Current[] => {
  if (countedAs.size === 0) return currents;
  const byName = new Map<string, Current>();
  for (const each of currents) {
    const current = inRoot(each, countedAs);
    const already = byName.get(current.thing);
    byName.set(current.thing, already ? together(already, current) : current);
  }
  return [...byName.values()];
};
