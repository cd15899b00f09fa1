import type { ZoneView } from '../../actions';
import { reaches } from '../../engine/trade';
import { Notice } from '../parts';

/** Cautions stand where the picture of the work stands, until the first touch: read before the zone is begun, and out of the way after. */
export const cautionsShown = ({ cautions, draft }: ZoneView): boolean =>
  cautions.length > 0 && draft.touches === 0 && draft.already === undefined;

export function ZoneCautions({ view }: { readonly view: ZoneView }) {
  const reach = reaches.find(({ id }) => id === view.zone.body.reach)?.name ?? view.zone.body.reach;
  return (
    <div className="zone-cautions">
      <Notice kind="caution" title={reach.charAt(0).toUpperCase() + reach.slice(1)}>
        <ul className="cautions">
          {view.cautions.map((caution) => (
            <li key={caution.id}>{caution.text}</li>
          ))}
        </ul>
      </Notice>
    </div>
  );
}
