import { areaOf, type Solid, solids, typedArea, typedErrors } from '../../engine/condition';
import type { BodyOf } from '../../engine/record';
import { measureTyped, percentTyped, type Quantity, typedMeasure, typedPercent } from '../../words';

type Area = BodyOf<'zone'>['versions'][number]['area'];

/** A shape or strip while it is typed. Share in per cent. */
export interface PartDraft {
  readonly key: number;
  readonly solid: Solid;
  readonly sizes: readonly string[];
  readonly share: string;
}

/** How the area is said, while it is being said. */
export interface AreaDraft {
  readonly method: 'typed' | 'solids' | 'strips';
  readonly typed: string;
  /** Id of a row of typedErrors. */
  readonly sure: string;
  readonly parts: readonly PartDraft[];
}

export const sizesOf = (solid: Solid): readonly string[] => solids.find(({ id }) => id === solid)?.asks ?? [];

export const newPart = (key: number, solid: Solid): PartDraft => ({
  key,
  solid,
  sizes: sizesOf(solid).map(() => ''),
  share: '100',
});

const usual: AreaDraft = { method: 'typed', typed: '', sure: 'estimated', parts: [] };

/** Of the ways to say how sure a typed area is, the one nearest to what is kept. */
const sureFrom = ({ m2, low }: Area): string => {
  const error = m2 > 0 ? (m2 - low) / m2 : 0;
  const nearest = [...typedErrors].sort((a, b) => Math.abs(a.error - error) - Math.abs(b.error - error))[0];
  return nearest?.id ?? usual.sure;
};

/** What is kept, to be edited. An area from an outline comes as a typed one. */
export const draftFrom = (area: Area | undefined): AreaDraft => {
  if (!area) return usual;
  const typed = { typed: measureTyped('area', area.m2), sure: sureFrom(area) };
  if (area.method === 'typed' || area.method === 'outline' || !area.parts) return { ...usual, ...typed };
  const parts = area.parts.map(({ solid, sizes, share }, key) => ({
    key,
    solid,
    sizes: sizes.map((size) => measureTyped('length', size)),
    share: percentTyped(share),
  }));
  return { ...usual, ...typed, method: area.method, parts };
};

const positive = (said: number | undefined): number | undefined => (said !== undefined && said > 0 ? said : undefined);

/** As the record holds it, from the unit it is typed in. */
const positiveIn = (quantity: Quantity, text: string): number | undefined => positive(typedMeasure(quantity, text));

/** The area as the draft says it, or undefined while something is missing. */
export const areaFrom = ({ method, typed, sure, parts }: AreaDraft): Area | undefined => {
  if (method === 'typed') {
    const m2 = positiveIn('area', typed);
    const error = typedErrors.find(({ id }) => id === sure)?.error;
    return m2 === undefined || error === undefined ? undefined : typedArea(m2, error);
  }
  if (parts.length === 0) return undefined;
  const read = parts.flatMap((part) => {
    const sizes = part.sizes.map((size) => positiveIn('length', size));
    const share = positive(typedPercent(part.share));
    const whole = sizes.every((size) => size !== undefined) && share !== undefined && share <= 100;
    return whole ? [{ solid: part.solid, sizes: sizes as number[], share: share / 100 }] : [];
  });
  return read.length === parts.length ? areaOf(read, method) : undefined;
};
