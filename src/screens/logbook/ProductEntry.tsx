import { treatmentOf } from '../../engine/trade';
import { date, w } from '../../words';
import { Choice, Field, Notice } from '../parts';
import type { EntryText } from './entryText';

const words = w.logbook;

interface ProductEntryProps {
  readonly text: EntryText;
  readonly last: { readonly product: string; readonly date: string } | undefined;
  readonly onChange: (text: EntryText) => void;
}

/** With what: the same as last time by one touch; a different one says what that means for holds. */
export function ProductEntry({ text, last, onChange }: ProductEntryProps) {
  const choices: readonly EntryText['product'][] = last ? ['same', 'other', 'none'] : ['other', 'none'];
  const labels = {
    same: words.productSame,
    other: last ? words.productOther : words.productName,
    none: words.productNone,
  };
  return (
    <>
      <Choice
        label={words.product}
        hint={last && words.productLast(last.product, date(last.date))}
        options={choices.map((value) => ({ value, label: labels[value] }))}
        value={text.product}
        onChange={(product) => onChange({ ...text, product })}
      />
      {text.product === 'other' && (
        <>
          <Field
            label={words.productName}
            value={text.productName}
            onChange={(productName) => onChange({ ...text, productName })}
            maxLength={300}
          />
          {last && treatmentOf(text.type)?.coats && (
            <Notice title={words.otherProduct}>
              <p>{words.otherProductWhat}</p>
            </Notice>
          )}
        </>
      )}
    </>
  );
}
