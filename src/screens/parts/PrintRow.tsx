import { w } from '../../words';
import { Button } from './Button';
import { LinkButton } from './LinkButton';

/** At the foot of a page that is also a paper. `how` is where it is told how its figures are worked out. */
export function PrintRow({ how }: { readonly how?: string }) {
  return (
    <div className="row not-printed">
      <Button onClick={() => window.print()}>{w.parts.print}</Button>
      {how && (
        <LinkButton kind="quiet" to={how}>
          {w.parts.how}
        </LinkButton>
      )}
    </div>
  );
}
