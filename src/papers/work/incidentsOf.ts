import type { WorkOnPaper } from '../../engine/reckoning';
import type { Thing } from '../../engine/record';
import { incidentSortOf } from '../../engine/trade';
import { date, w } from '../../words';
import { list, type PaperPiece, say, section } from '../layout';

const words = w.paperInsurer;

/** What happened to the work, the last first, as it was written down that day. */
export const incidentsOf = ({ record }: WorkOnPaper, all: readonly Thing<'incident'>[]): PaperPiece => {
  const own = all
    .filter(({ body }) => body.sculpture === record.sculpture.thing)
    .sort((a, b) => (a.body.date < b.body.date ? 1 : -1));
  return section(
    words.incidents,
    own.length === 0
      ? say(words.incidentsNone)
      : list(
          own.map(({ body: { date: day, sort, what, done, closed } }) => [
            words.incident(date(day), incidentSortOf(sort)?.name ?? sort, what),
            done && ` ${words.incidentDone(done)}`,
            ` ${closed ? words.incidentClosed(date(closed.on)) : words.incidentOpen}`,
          ]),
        ),
  );
};
