import type { ThenAndNow, Verdict } from '../../../engine/change';
import { date, w } from '../../../words';
import type { Fill, KeyRow, Shading } from './shading';

const words = w.zoneMap;

type ChangeCode = keyof typeof words.change;

const row = (code: ChangeCode, fill: Fill, verdict?: Verdict, clearly = false): KeyRow => ({
  code,
  fill,
  word: words.change[code],
  ...(verdict ? { mark: { verdict, clearly } } : {}),
});

const key: readonly KeyRow[] = [
  row('clearly worse', 5, 'worse', true),
  row('worse', 4, 'worse'),
  row('no sure change', 'plain', 'no sure change'),
  row('better', 2, 'better'),
  row('clearly better', 1, 'better', true),
  row('carried', 'open', 'carried'),
  row('not comparable', 'open', 'not comparable'),
  row('none', 'open'),
];

/** The verdict on each zone between two rounds. */
export const changeShading = (answer: ThenAndNow): Shading => ({
  key,
  from: words.shadeFrom.change(date(answer.earlier.body.date), date(answer.later.body.date)),
  ...(answer.comparable.ok ? {} : { caution: answer.comparable.reasons }),
  of: (zone) => {
    const change = answer.zones.find((one) => one.zone === zone);
    if (!change) return { code: 'none', said: words.change.none };
    const { verdict, clearly } = change;
    const code: ChangeCode = clearly && (verdict === 'worse' || verdict === 'better') ? `clearly ${verdict}` : verdict;
    return { code, said: words.change[code] };
  },
});
