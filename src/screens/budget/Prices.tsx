import { useState } from 'react';
import { editPlanned, setPlanned } from '../../actions';
import { nameOf, type Thing } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import { amounts, w } from '../../words';
import { Button, Notice, Section } from '../parts';
import { say, useDeed, useDesk } from '../shell';
import { PricesSheet } from './PricesSheet';

const words = w.budget;

interface PricesProps {
  readonly plan: Thing<'yearPlan'> | undefined;
  readonly year: number;
  /** Another year whose prices may be taken over. */
  readonly from: Thing<'yearPlan'> | undefined;
  readonly mayWrite: boolean;
}

/** What work costs this year. */
export function Prices({ plan, year, from, mayWrite }: PricesProps) {
  const desk = useDesk();
  const [open, setOpen] = useState(false);
  const { run, refused, busy } = useDeed();
  const prices = plan?.body.prices ?? [];
  const written = amounts(prices.map(({ each }) => each));
  const copy = () =>
    void run(
      () => {
        const taken = { prices: from?.body.prices };
        return plan
          ? editPlanned(desk, 'yearPlan', plan.thing, taken)
          : setPlanned(desk, 'yearPlan', nameOf.yearPlan(desk.collection, year), { year, works: [], ...taken });
      },
      () => say(words.sheet.saved),
    );
  return (
    <Section title={words.prices}>
      {refused && <Notice kind="problem" title={refused} />}
      {prices.length === 0 ? (
        <p>{words.pricesNone}</p>
      ) : (
        <>
          <table className="plain-table budget-prices">
            <thead>
              <tr>
                <th scope="col">{words.work}</th>
                <th scope="col" className="of-number">
                  {words.price}
                </th>
              </tr>
            </thead>
            <tbody>
              {prices.map(({ type, per }, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a work may have two prices that are the same
                <tr key={i}>
                  <th scope="row">{treatmentOf(type)?.name ?? type}</th>
                  <td className="of-number">
                    {written[i]} {words.per[per]}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          <p className="soft">{words.guessed}</p>
        </>
      )}
      {mayWrite && (
        <div className="row not-printed">
          <Button onClick={() => setOpen(true)}>{words.changePrices}</Button>
          {prices.length === 0 && from && (
            <Button onClick={copy} disabled={busy}>
              {words.copyPrices(from.body.year)}
            </Button>
          )}
        </div>
      )}
      {open && <PricesSheet plan={plan} year={year} onClose={() => setOpen(false)} />}
    </Section>
  );
}
