import { holdNumbers } from '../../engine/hold';
import { factSaid, number, w } from '../../words';
import { Section } from '../parts';
import { RowsTable } from './RowsTable';
import { Rules } from './Rules';

const words = w.method;

/** How holds are told, and the numbers they rest on. */
export function HoldNumbers() {
  return (
    <Section title={w.holds.method.title}>
      <Rules rules={w.holds.method.text} />
      <RowsTable
        heads={[words.errorColumns.what, words.errorColumns.value, words.errorColumns.source]}
        figures={[1]}
        rows={Object.entries(holdNumbers).map(([key, { value, what, source }]) => ({
          key,
          cells: [factSaid(what), number(value, 4), factSaid(source.text)],
        }))}
      />
    </Section>
  );
}
