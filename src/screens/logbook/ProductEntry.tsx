import { otherProduct } from '../../engine/care';
import type { SculptureRecord, Thing } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import { date, w, withWhat } from '../../words';
import { Choice, Field, Notice } from '../parts';
import { Select } from '../parts/Select';
import type { EntryText, LastProduct } from './entryText';

const words = w.logbook;

interface ProductEntryProps {
  readonly text: EntryText;
  readonly last: LastProduct | undefined;
  readonly tins: readonly Thing<'product'>[];
  /** Without the entry that is open. */
  readonly record: SculptureRecord;
  readonly usedWrong: boolean;
  readonly onChange: (text: EntryText) => void;
}

/** With what: the same as last time by one touch, or a tin of the store; a different one says what that means for holds. */
export function ProductEntry({ text, last, tins, record, usedWrong, onChange }: ProductEntryProps) {
  const choices: readonly EntryText['product'][] = [
    ...(last ? (['same'] as const) : []),
    ...(tins.length > 0 || text.product === 'store' ? (['store'] as const) : []),
    'other',
    'none',
  ];
  const labels = {
    same: words.productSame,
    store: words.productStore,
    other: last ? words.productOther : words.productName,
    none: words.productNone,
  };
  const tin = tins.find(({ thing }) => thing === text.stock)?.body;
  const name = { same: '', store: tin?.name ?? '', other: text.productName, none: '' }[text.product];
  const differs =
    treatmentOf(text.type)?.coats &&
    ((text.product === 'other' && last !== undefined) ||
      otherProduct(record, text.whole ? [] : text.zones, name).length > 0);
  const unit = text.product === 'same' ? tins.find(({ thing }) => thing === last?.stock)?.body.unit : tin?.unit;
  return (
    <>
      <Choice
        label={words.product}
        hint={last && words.productLast(withWhat(last), date(last.date))}
        options={choices.map((value) => ({ value, label: labels[value] }))}
        value={text.product}
        onChange={(product) =>
          onChange({
            ...text,
            product,
            stock: product === 'store' && !text.stock ? (tins[0]?.thing ?? '') : text.stock,
          })
        }
      />
      {text.product === 'store' && (
        <Select
          label={words.productStoreWhich}
          value={text.stock}
          onChange={(stock) => onChange({ ...text, stock })}
          options={[
            ...(tin ? [] : [{ value: text.stock, label: withWhat({ product: text.productName, batch: text.batch }) }]),
            ...tins.map(({ thing, body }) => ({
              value: thing,
              label: withWhat({ product: body.name, batch: body.batch }),
            })),
          ]}
        />
      )}
      {text.product === 'other' && (
        <>
          <Field
            label={words.productName}
            value={text.productName}
            onChange={(productName) => onChange({ ...text, productName })}
            maxLength={300}
          />
          <Field
            label={words.batch}
            value={text.batch}
            onChange={(batch) => onChange({ ...text, batch })}
            maxLength={100}
            optional
          />
        </>
      )}
      {differs && (
        <Notice title={words.otherProduct}>
          <p>{words.otherProductWhat}</p>
        </Notice>
      )}
      {(text.product === 'store' || (text.product === 'same' && last?.stock)) && (
        <Field
          label={words.used}
          kind="number"
          short
          optional
          value={text.used}
          onChange={(used) => onChange({ ...text, used })}
          unit={unit && w.products.units[unit]}
          maxLength={10}
          error={usedWrong ? words.numberWrong : undefined}
        />
      )}
    </>
  );
}
