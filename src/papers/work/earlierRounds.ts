import { scoreRound } from '../../engine/condition';
import { date, share, w } from '../../words';
import { type PaperPiece, say, section, table } from '../layout';
import { roundTypeOf } from './conditionFacts';
import { ranged } from './conditionFigures';
import type { LatestOnPaper } from './latestOnPaper';

const words = w.paperCondition;
/** Most rounds listed: what came before is in the archive. */
const most = 10;

/** The rounds before, the last first, a line each. */
export const earlierRounds = ({ record, round }: LatestOnPaper): PaperPiece => {
  const before = record.rounds.filter(({ body }) => body.date < round.body.date).reverse();
  if (before.length === 0) return undefined;
  const { date: day, type, index, seen } = words.earlierColumns;
  return section(
    words.earlier,
    table(
      '',
      [{ head: day }, { head: type }, { head: index, kind: 'number' }, { head: seen, kind: 'number' }],
      before.slice(0, most).map((each) => {
        const { value, low, high, seenShare } = scoreRound(record, each.thing);
        return [
          date(each.body.date),
          roundTypeOf(each),
          value === null || low === null || high === null ? words.classNone : ranged({ value, low, high }),
          share(seenShare),
        ];
      }),
    ),
    say(words.earlierHow, 'small'),
  );
};
