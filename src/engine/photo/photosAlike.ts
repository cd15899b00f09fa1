import type { BodyOf, Reason } from '../record';
import { fitNumbers } from './fitNumbers';
import { because } from './reasonCodes';

type Photo = Pick<BodyOf<'photo'>, 'light' | 'wet' | 'washed' | 'focal35' | 'width' | 'height'>;

const told = {
  light: (params: Reason['params']) => because('photos: light not alike', params),
  wet: (params: Reason['params']) => because('photos: wet not alike', params),
  washed: (params: Reason['params']) => because('photos: washed not alike', params),
} as const;
const asked = Object.keys(told) as readonly (keyof typeof told)[];

/**
 * What two photos were not taken alike in, so that a difference between them may be the light's or the water's. What was not said of
 * either is itself a reason: nobody can tell.
 */
export const photosUnlike = (earlier: Photo, later: Photo): readonly Reason[] => {
  const reasons: Reason[] = [];
  for (const what of asked) {
    const [one, other] = [earlier[what], later[what]];
    if (one === undefined || other === undefined) continue;
    if (one !== other) reasons.push(told[what]({ earlier: one, later: other }));
  }
  const unsaid = (['light', 'wet'] as const).filter((what) => earlier[what] === undefined || later[what] === undefined);
  if (unsaid.length > 0) reasons.push(because('photos: light or wet not said', { what: unsaid.join(', ') }));
  const [one, other] = [earlier.focal35, later.focal35];
  if (one && other && Math.abs(Math.log(one / other)) > Math.log1p(fitNumbers.otherLens.value))
    reasons.push(because('photos: lens not alike', { earlier: one, later: other }));
  if (isUpright(earlier) !== isUpright(later)) reasons.push(because('photos: one upright, one lengthwise'));
  return reasons;
};

/** A picture whose size nobody knows is taken to lie as the other does. */
const isUpright = ({ width = 1, height = 1 }: Photo): boolean => height > width;
