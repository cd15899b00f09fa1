import { type Desk, editPlanned, type Outcome, setPlanned } from '../../actions';
import { type BodyOf, nameOf, type Thing } from '../../engine/record';

/** The plan of the site as it was, with what is said anew. */
export const keepSite = (
  desk: Desk,
  site: Thing<'sitePlan'> | undefined,
  patch: Partial<BodyOf<'sitePlan'>>,
): Promise<Outcome> =>
  site
    ? editPlanned(desk, 'sitePlan', site.thing, patch)
    : setPlanned(desk, 'sitePlan', nameOf.sitePlan(desk.collection), { spots: [], ...patch });
