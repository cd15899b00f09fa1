import { colourHolds, optionNumbers, priceSpread } from '../../engine/options';
import { factSaid, list, number, w } from '../../words';
import { Section } from '../parts';
import { RowsTable } from './RowsTable';
import { Rules } from './Rules';

const words = w.method;

/** How ways to go on are reckoned, and the numbers that rests on. */
export function OptionNumbers() {
  const rows = Object.entries({ ...optionNumbers, ...priceSpread });
  const years = list(colourHolds.years.map((each) => number(each)));
  return (
    <Section title={w.options.method.title}>
      <Rules rules={w.options.method.text} />
      <RowsTable
        heads={[words.errorColumns.what, words.errorColumns.value, words.errorColumns.source]}
        figures={[1]}
        rows={[
          ...rows.map(([key, { value, what, source }]) => ({
            key,
            cells: [factSaid(what), number(value, 4), factSaid(source.text)],
          })),
          { key: 'colour', cells: [w.options.method.colour(years), '', factSaid(colourHolds.source.text)] },
        ]}
      />
    </Section>
  );
}
