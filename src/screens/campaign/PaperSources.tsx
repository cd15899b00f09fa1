import { type PaperOf, paperItems } from '../../engine/trade';
import { factSaid, w } from '../../words';
import { Fold } from '../parts/Fold';

const words = w.campaign.papers;

/** Which source asks for which lines. */
export function PaperSources({ of }: { readonly of: PaperOf }) {
  const sources = [...new Set(paperItems[of].map(({ source }) => source))];
  return (
    <Fold show={words.source} hide={words.hideSource} alsoOnPaper>
      <ul className="small">
        {sources.map((source) => {
          const rows = paperItems[of].flatMap((row, i) => (row.source === source ? [i + 1] : []));
          return (
            <li key={source.text}>
              {rows[0]} {w.charts.lastTo} {rows.at(-1)}: {factSaid(source.text)}
            </li>
          );
        })}
      </ul>
    </Fold>
  );
}
