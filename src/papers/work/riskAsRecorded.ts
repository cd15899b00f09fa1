import type { WorkOnPaper } from '../../engine/reckoning';
import { date, w } from '../../words';
import { list, type PaperPiece, say, section } from '../layout';
import { thingsIn } from '../reading';

const words = w.paperInsurer;

/** Who carries the risk as it was written down with moves, loans and campaigns; what else she says; or that nobody has said it. */
export const riskAsRecorded = (work: WorkOnPaper, own: string): PaperPiece => {
  const lines = riskLines(work);
  return section(
    words.risk,
    lines.length === 0 && own === '' && say(words.riskNone),
    list(lines),
    own !== '' && say(own),
  );
};

export const riskLines = ({ within }: WorkOnPaper): readonly string[] => [
  ...thingsIn(within, 'move').map(({ body: { sort, from, to, left, back, backDue, insurance } }) => {
    const until = back ?? backDue;
    return words.riskMove(
      ...([
        w.logbook.moves[sort],
        from,
        to,
        date(left),
        until ? date(until) : '',
        insurance ?? words.riskMoveNone,
      ] as const),
    );
  }),
  ...thingsIn(within, 'campaign').flatMap(({ body: { title, warrantyWho, warrantyUntil, warrantyTerms } }) =>
    warrantyWho || warrantyUntil || warrantyTerms
      ? [words.warranty(title, warrantyWho ?? '', warrantyUntil ? date(warrantyUntil) : '', warrantyTerms ?? '')]
      : [],
  ),
];
