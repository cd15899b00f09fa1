import type { BodyOf, Reason } from '../record';
import { because } from './reasonCodes';

/** How a colour was read. Figures of two readings mean the same only where these are the same. */
export type ReadingConditions = Pick<BodyOf<'reading'>, 'illuminant' | 'observer' | 'geometry'> & {
  readonly aperture?: number | undefined;
  readonly surface?: BodyOf<'reading'>['surface'];
};

/**
 * Why two readings must not be told apart by a figure: each condition that differs, as a reason; none where they may. Where one
 * does not say its aperture or its surface, nothing is held against it here (see `cautionsBetween`).
 */
export const comparable = (one: ReadingConditions, other: ReadingConditions): readonly Reason[] => {
  const reasons: Reason[] = [];
  if (one.illuminant !== other.illuminant)
    reasons.push(because('colour: other illuminant', { one: one.illuminant, other: other.illuminant }));
  if (one.observer !== other.observer)
    reasons.push(because('colour: other observer', { one: one.observer, other: other.observer }));
  if (one.geometry !== other.geometry)
    reasons.push(because('colour: other geometry', { one: one.geometry, other: other.geometry }));
  if (one.aperture !== undefined && other.aperture !== undefined && one.aperture !== other.aperture)
    reasons.push(because('colour: other aperture', { one: one.aperture, other: other.aperture }));
  if (one.surface && other.surface && one.surface !== other.surface)
    reasons.push(because('colour: other wetness', { one: one.surface, other: other.surface }));
  return reasons;
};

/** What a reader of the figure should know, though it may be told. */
export const cautionsBetween = (
  one: ReadingConditions & { readonly instrument?: string | undefined },
  other: ReadingConditions & { readonly instrument?: string | undefined },
): readonly Reason[] => {
  const reasons: Reason[] = [];
  if (one.aperture === undefined || other.aperture === undefined) reasons.push(because('colour: aperture not known'));
  if (one.surface !== other.surface && (one.surface ?? other.surface) !== 'dry')
    reasons.push(because('colour: wetness not known'));
  const named = (instrument: string | undefined) => instrument?.trim().toLowerCase().replace(/\s+/g, ' ') ?? '';
  if (named(one.instrument) && named(other.instrument) && named(one.instrument) !== named(other.instrument))
    reasons.push(because('colour: other instrument'));
  return reasons;
};
