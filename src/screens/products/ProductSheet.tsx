import { useState } from 'react';
import type { StoreRow } from '../../engine/care';
import type { BodyOf, Thing } from '../../engine/record';
import { sortOfProduct, sortsOfProduct } from '../../engine/trade';
import { w } from '../../words';
import { Field, Notice } from '../parts';
import { Fold } from '../parts/Fold';
import { Select } from '../parts/Select';
import { useDesk, useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';
import { isDegrees, newProduct, type ProductText, productBody, productText, wrongNumbers } from './productText';

const words = w.products;
const units = ['g', 'kg', 'ml', 'l', 'tin', 'piece'] as const;

interface ProductSheetProps {
  /** Undefined: a new one. */
  readonly product: Thing<'product'> | undefined;
  /** Its uses in the logbooks. */
  readonly log: StoreRow['log'];
  readonly onClose: () => void;
}

/** A tin or bottle: what it is, its batch, what is left; then its safety sheet and limits. */
export function ProductSheet({ product, log, onClose }: ProductSheetProps) {
  const desk = useDesk();
  const [text, setText] = useState<ProductText>(() =>
    product ? productText(product.body, desk.today()) : newProduct(desk.today()),
  );
  const [tried, setTried] = useState(false);
  const typed = useTyped(['product', product?.thing], { text: [text, setText] });
  const set = (key: keyof ProductText) => (value: string) => setText({ ...text, [key]: value });
  const wrong = wrongNumbers(text);
  const body = () => {
    setTried(true);
    if (text.name.trim() === '' || wrong.size > 0) return undefined;
    const said = productBody(text);
    return { ...said, countedWith: countedWith(said, product?.body, log) };
  };
  const plain = (key: keyof ProductText, label: string, hint?: string) => (
    <Field label={label} hint={hint} value={text[key]} onChange={set(key)} maxLength={300} optional />
  );
  const aDay = (key: keyof ProductText, label: string, hint?: string) => (
    <Field label={label} hint={hint} kind="date" short value={text[key]} onChange={set(key)} optional />
  );
  const aNumber = (key: keyof ProductText, label: string, hint?: string) => (
    <Field
      label={label}
      hint={hint}
      takes={isDegrees(key) ? 'temperature' : 'number'}
      short
      value={text[key]}
      onChange={set(key)}
      maxLength={12}
      optional
      error={tried && wrong.has(key) ? words.number : undefined}
    />
  );
  return (
    <PlannedSheet
      kind="product"
      thing={product?.thing}
      title={product ? words.edit : words.add}
      words={{ ...words, save: words.keep, saved: words.kept(text.name.trim()) }}
      body={body}
      typed={typed}
      onClose={onClose}
    >
      <Field
        label={words.name}
        value={text.name}
        onChange={set('name')}
        maxLength={300}
        error={tried && text.name.trim() === '' ? words.nameMissing : undefined}
      />
      <Select
        label={words.sort}
        value={text.sort}
        onChange={set('sort')}
        options={sortsOfProduct.map(({ id, name }) => ({ value: id, label: name }))}
      />
      {sortOfProduct(text.sort)?.askConservator && <Notice kind="caution" title={words.ask} />}
      {plain('batch', words.batch)}
      <Select
        label={words.unit}
        value={text.unit}
        onChange={set('unit')}
        options={[
          { value: '', label: words.unitNone },
          ...units.map((value) => ({ value, label: words.units[value] })),
        ]}
      />
      {text.unit !== '' && (
        <>
          {aNumber('left', words.leftNow)}
          {text.left.trim() !== '' && aDay('counted', words.counted, words.countedHint)}
        </>
      )}
      {aDay('opened', words.opened)}
      {aDay('expires', words.expires)}
      <Fold show={words.more} hide={words.moreHide} alsoOnPaper>
        <div className="stack">
          {plain('sheet', words.sheetAt, words.sheetHint)}
          {aDay('sheetDate', words.sheetDate)}
          {plain('solvent', words.solvent)}
          {plain('additives', words.additives, words.additivesHint)}
          {aNumber('surfaceFrom', words.surfaceFrom, words.rangeHint)}
          {aNumber('surfaceTo', words.surfaceTo)}
          {text.unit !== '' && aNumber('least', words.least)}
          {(text.unit === 'tin' || text.unit === 'piece') && aNumber('gramsPerUnit', words.gramsPerUnit)}
          {aDay('ended', words.endedOn)}
          <Field label={words.note} kind="long" value={text.note} onChange={set('note')} maxLength={4000} optional />
        </div>
      </Fold>
    </PlannedSheet>
  );
}

/** Uses of the day of counting that were written before it; where nothing was counted anew, as they were. */
const countedWith = (
  said: BodyOf<'product'>,
  before: BodyOf<'product'> | undefined,
  log: StoreRow['log'],
): string[] | undefined => {
  if (before && said.left === before.left && said.counted === before.counted) return before.countedWith;
  const uses = log.filter(({ date }) => date === said.counted).map(({ treatment }) => treatment);
  return uses.length > 0 ? uses : undefined;
};
