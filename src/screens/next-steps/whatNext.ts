import type { Classes, PersonDanger } from '../../engine/condition';
import { levelOf } from '../../engine/condition';
import type { BodyOf } from '../../engine/record';
import { type Caution, type CautionPlace, cautionsAt, reaches } from '../../engine/trade';

/** What a curator can do about a zone next: never a diagnosis, never more than washing and cold wax. */
export type DoNext = 'ask' | 'major' | 'local' | 'keep' | 'nothing' | 'look';

/** A stop word goes before any class; a class a person set goes before the rule's. */
export const doNext = (classes: Classes): DoNext => {
  if (classes.stopWords.length > 0) return 'ask';
  const level = levelOf(classes, 'recommendation');
  if (level === null) return 'look';
  return (['nothing', 'keep', 'local', 'major'] as const)[level];
};

interface Surroundings {
  readonly zone: BodyOf<'zone'>;
  /** Kinds found in the zone. */
  readonly kinds: readonly string[];
  readonly inserts: boolean;
  readonly dangers: readonly PersonDanger[];
}

const placesOf = (next: DoNext, { zone, dangers }: Surroundings): readonly CautionPlace[] => {
  const from = reaches.find(({ id }) => id === zone.reach)?.from ?? 'ground';
  return [
    ...(dangers.length > 0 ? (['after storm'] as const) : []),
    ...(next === 'keep' ? (['wash', 'wax'] as const) : []),
    ...(from === 'ground' || from === 'step' ? [] : (['ladder'] as const)),
    ...(zone.exposure.includes('waterline') ? (['basin'] as const) : []),
  ];
};

/** Cautions that speak of something not every zone has; the rest hold wherever their work is done. */
const onlyWhere: Readonly<Record<string, (around: Surroundings) => boolean>> = {
  droppings: ({ kinds }) => kinds.includes('droppings'),
  nests: ({ zone }) => zone.exposure.includes('birds'),
  inserts: ({ zone, inserts }) => inserts || zone.exposure.includes('insert'),
  'lift-scaffold': ({ zone }) => zone.reach === 'lift' || zone.reach === 'scaffold',
  ladder: ({ zone }) => zone.reach === 'ladder',
};

/** The short cautions that belong to what is to be done at this zone, each once. */
export const cautionsFor = (next: DoNext, around: Surroundings): readonly Caution[] => {
  const rows = placesOf(next, around).flatMap((place) => cautionsAt(place));
  return [...new Set(rows)].filter(({ id }) => onlyWhere[id]?.(around) ?? true);
};
