import type { Hold, NoHold, ZoneHolds } from '../../engine/hold';
import { date, number, sayReason, w } from '../../words';

const words = w.holds;

const isHold = (told: Hold | NoHold): told is Hold => 'lower' in told;

/** "over 1.4, up to 2.5": never a point. */
export const monthsOf = ({ lower, upper }: Pick<Hold, 'lower' | 'upper'>): string => {
  if (upper === null) return words.monthsOver(number(lower, 1));
  return lower === 0 ? words.monthsUpTo(number(upper, 1)) : words.months(number(lower, 1), number(upper, 1));
};

/** All coatings of a zone in order, each with its hold or why there is none. */
export function HoldTable({ holds, caption }: { readonly holds: ZoneHolds; readonly caption: string }) {
  const rows = [...holds.holds, ...holds.noHolds].sort((a, b) => a.start.localeCompare(b.start));
  return (
    <table className="plain-table cards hold-table">
      <caption className="unseen">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{words.tableCoated}</th>
          <th scope="col">{words.tableClear}</th>
          <th scope="col">{words.tableGreen}</th>
          <th scope="col">{words.tableMonths}</th>
          <th scope="col">{words.tableWhy}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={`${row.coating} ${row.start}`}>
            <th scope="row">{date(row.start)}</th>
            {isHold(row) ? (
              <>
                <td data-head={words.tableClear}>{row.lastClear ? date(row.lastClear) : '–'}</td>
                <td data-head={words.tableGreen}>{row.firstSeen ? date(row.firstSeen) : '–'}</td>
                <td data-head={words.tableMonths} className="figures">
                  {monthsOf(row)}
                </td>
                <td data-head={words.tableWhy} className="small">
                  {[words.end[row.end], words[row.clean], ...(row.inPassing ? [words.inPassing] : [])].join(', ')}
                </td>
              </>
            ) : (
              <>
                <td data-head={words.tableClear}>–</td>
                <td data-head={words.tableGreen}>–</td>
                <td data-head={words.tableMonths}>{words.noHold}</td>
                <td data-head={words.tableWhy} className="small">
                  {row.reasons.map((reason) => sayReason(reason)).join(' ')}
                </td>
              </>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
