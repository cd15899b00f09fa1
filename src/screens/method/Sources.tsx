import { thresholds } from '../../engine/change';
import { colourFormulaSource, colourNumbers, noFigureFromPhotos } from '../../engine/colour';
import { areaMethods, constants, solids } from '../../engine/condition';
import { coverageNumbers, fitNumbers, obliquities } from '../../engine/photo';
import {
  activities,
  beadings,
  cautions,
  counts,
  coverageMethods,
  defaultScale,
  enClasses,
  kinds,
  ladder,
  origins,
  type Source,
  severities,
  treatments,
} from '../../engine/trade';
import { factSaid, list, w } from '../../words';
import { Section } from '../parts';
import { RowsTable } from './RowsTable';

const words = w.method;
type Sourced = { readonly source: Source };

const tables: readonly { readonly use: string; readonly rows: readonly Sourced[] }[] = [
  { use: words.scaleItself, rows: [defaultScale] },
  { use: words.kinds, rows: kinds },
  { use: words.ladder, rows: ladder },
  { use: words.weights, rows: [...severities, ...activities, ...counts, ...origins] },
  { use: words.errors, rows: [...coverageMethods, ...Object.values(constants)] },
  { use: words.classes, rows: [...enClasses.condition, ...enClasses.urgency, ...enClasses.recommendation] },
  { use: words.beading, rows: beadings },
  { use: words.treatments, rows: treatments },
  { use: words.verdicts, rows: Object.values(thresholds) },
  { use: words.areas, rows: [...areaMethods, ...solids] },
  { use: w.photoMethod.coverage, rows: Object.values(coverageNumbers) },
  { use: w.photoMethod.fits, rows: Object.values(fitNumbers) },
  { use: w.photoMethod.areas, rows: obliquities },
  {
    use: w.photoMethod.colour,
    rows: [{ source: colourFormulaSource }, { source: noFigureFromPhotos }, ...Object.values(colourNumbers)],
  },
  { use: words.cautions, rows: cautions },
];

/** Each source once, how far it was checked, and what rests on it. */
const sources = (): readonly { readonly source: Source; readonly uses: readonly string[] }[] => {
  const found = new Map<string, { source: Source; uses: Set<string> }>();
  for (const { use, rows } of tables)
    for (const { source } of rows) {
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
