import type { Source } from '../../engine/trade';
import { factSaid, list, w } from '../../words';
import { Section } from '../parts';
import { RowsTable } from './RowsTable';
import { sourcesByUse } from './sourcedTables';

const words = w.method;

/** Each source once, how far it was checked, and what rests on it. */
const sources = (): readonly { readonly source: Source; readonly uses: readonly string[] }[] => {
  const found = new Map<string, { source: Source; uses: Set<string> }>();
  for (const { use, sources: these } of sourcesByUse())
    for (const source of these) {
      const key = `${source.sure} ${source.text}`;
      const row = found.get(key) ?? { source, uses: new Set<string>() };
      row.uses.add(use);
      found.set(key, row);
    }
  const rank = Object.keys(words.sure);
  return [...found.values()]
    .map(({ source, uses }) => ({ source, uses: [...uses] }))
    .sort((a, b) => rank.indexOf(a.source.sure) - rank.indexOf(b.source.sure));
};

export function Sources() {
  return (
    <Section title={words.sources} lead={words.sourcesWhat}>
      <RowsTable
        heads={[words.source, words.howSure, words.usedFor]}
        rows={sources().map(({ source, uses }) => ({
          key: `${source.sure} ${source.text}`,
          cells: [factSaid(source.text), words.sure[source.sure], list(uses)],
        }))}
      />
    </Section>
  );
}
