import { date, list, w } from '../../words';
import type { SignedSaid } from '../parts/peopleSaid';

const words = w.campaign.approvals;

/** Who signed, in what role, when; that nobody did is said too. */
export function Signed({ signed }: { readonly signed: readonly SignedSaid[] }) {
  if (signed.length === 0) return <p className="small soft">{words.notSigned}</p>;
  return (
    <p className="small">
      {words.signedBy(list(signed.map(({ role, name = '', on }) => words.signedOne(role, name, date(on)))))}
    </p>
  );
}
