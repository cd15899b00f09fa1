import { useState } from 'react';
import { productStore } from '../../actions';
import { orderList } from '../../engine/care';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { AddIcon, Button, EmptyState, Notice, Page, Reading } from '../parts';
import { Fold } from '../parts/Fold';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk, useQuestion } from '../shell';
import { amountOf, ProductRow } from './ProductRow';
import { ProductSheet } from './ProductSheet';
import '../parts/lines.css';
import '../parts/plainTable.css';
import './products.css';

const words = w.products;

/** What is in store and what to order; how much goes on a square metre comes from the logbooks. */
export function ProductsScreen() {
  const rows = useQuestion(productStore(useDesk()));
  const [open, setOpen] = useState<Thing<'product'> | 'new'>();
  if (!rows)
    return (
      <Page title={words.title} lead={words.lead}>
        <Reading />
      </Page>
    );
  const inUse = rows.filter(({ product }) => product.body.ended === undefined);
  const ended = rows.filter(({ product }) => product.body.ended !== undefined);
  const order = orderList(rows);
  const shown = (list: typeof rows) => (
    <ul className="lines bare">
      {list.map((row) => (
        <ProductRow key={row.product.thing} row={row} onOpen={() => setOpen(row.product)} />
      ))}
    </ul>
  );
  return (
    <Page
      narrow
      title={words.title}
      lead={words.lead}
      back={{ to: pathTo.plan(), label: w.plan.title }}
      actions={
        <Button kind="main" size="round" icon={<AddIcon />} onClick={() => setOpen('new')}>
          {words.add}
        </Button>
      }
    >
      {order.length > 0 && (
        <Notice kind="caution" title={words.order}>
          <ul>
            {order.map(({ name, left, least, unit }) => (
              <li key={name}>{words.orderLine(name, amountOf(left, unit), amountOf(least, unit))}</li>
            ))}
          </ul>
        </Notice>
      )}
      {rows.length === 0 ? (
        <EmptyState title={words.empty}>
          <p>{words.emptyWhat}</p>
        </EmptyState>
      ) : (
        <>
          {shown(inUse)}
          {ended.length > 0 && (
            <Fold show={words.ended} hide={words.endedHide} alsoOnPaper>
              {shown(ended)}
            </Fold>
          )}
          <PrintRow />
        </>
      )}
      {open && (
        <ProductSheet
          product={open === 'new' ? undefined : open}
          log={open === 'new' ? [] : (rows.find(({ product }) => product.thing === open.thing)?.log ?? [])}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Page>
  );
}
