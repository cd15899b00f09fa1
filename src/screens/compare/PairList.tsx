import type { Pair, PhotoFit } from '../../engine/photo';
import { number, w } from '../../words';
import { Button } from '../parts';
import '../parts/plainTable.css';

const words = w.compare;

interface PairListProps {
  readonly pairs: readonly Pair[];
  readonly fit: PhotoFit | undefined;
  readonly chosen: number | undefined;
  readonly onChoose: (pair: number | undefined) => void;
  readonly onRemove: (pair: number) => void;
}

/** Each pair with how far it lies from where the others put it; one can be put right or taken away. */
export function PairList({ pairs, fit, chosen, onChoose, onRemove }: PairListProps) {
  if (pairs.length === 0) return null;
  return (
    <table className="plain-table pair-list">
      <caption>
        {words.pairsTable}
        {fit && <span className="soft small"> {words.offWhat}</span>}
      </caption>
      <tbody>
        {pairs.map((_, i) => {
          const off = fit?.perPair[i]?.leftOut;
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a pair is its number and nothing else
            <tr key={i}>
              <th scope="row">{words.pair(i + 1)}</th>
              <td className="of-number">{off === undefined ? '' : `${number(off * 100, 2)} %`}</td>
              <td>
                <div className="row by-hand">
                  <Button aria-pressed={i === chosen} onClick={() => onChoose(i === chosen ? undefined : i)}>
                    {i === chosen ? words.leave(i + 1) : words.change(i + 1)}
                  </Button>
                  <Button kind="quiet" onClick={() => onRemove(i)}>
                    {words.remove(i + 1)}
                  </Button>
                </div>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
