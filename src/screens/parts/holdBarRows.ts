import type { Hold, NoHold, ZoneHolds } from '../../engine/hold';
import { treatmentOf } from '../../engine/trade';
import { date, w } from '../../words';
import type { HoldBarRow } from './charts';

const words = w.holds;

const isHold = (told: Hold | NoHold): told is Hold => 'lower' in told;

/** Why there is no hold, in the few words a drawing has room for. */
const shortly = ({ reasons }: NoHold): string => {
  const short: Readonly<Record<string, string>> = words.noHoldShort;
  return short[reasons[0]?.code ?? ''] ?? words.noHold;
};

/** The coatings of a zone for the drawing of bars, a line where its series was broken. */
export const holdBarRows = ({ holds, noHolds, spans }: ZoneHolds): HoldBarRow[] => {
  const told = [...holds, ...noHolds].sort((a, b) => a.start.localeCompare(b.start));
  return told.map((one, i): HoldBarRow => {
    const before = told[i - 1];
    const broken = spans.filter(
      ({ since }) => since !== null && since <= one.start && (before ? since > before.start : false),
    );
    const since = broken.flatMap(({ treatments }) => treatments).at(-1);
    const after = since
      ? { after: words.spanSince(treatmentOf(since.type)?.name ?? since.type, date(since.date)) }
      : {};
    if (!isHold(one)) return { coated: one.start, none: shortly(one), ...after };
    const { start, lower, upper, clean, inPassing, end } = one;
    const remark = end === 'returned' ? {} : { remark: words.end[end] };
    return { coated: start, lower, upper, clean, inPassing, ...remark, ...after };
  });
};
