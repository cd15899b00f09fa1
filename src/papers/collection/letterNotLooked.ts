import type { PaperSource } from '../../engine/reckoning';
import { reasonsNotLooked } from '../../engine/trade';
import { date, list as inWords, w } from '../../words';
import { list, notLooked, type PaperPiece, say } from '../layout';
import { nameOfWork } from '../reading';
import { latestOnPaper } from '../work/latestOnPaper';

const words = w.paperLetter;

/** What the last round of each work left out: stands first, so that nobody takes silence for soundness. */
export const leftOut = ({ works }: PaperSource): PaperPiece => {
  const lines = works.flatMap((work): string[] => {
    const latest = latestOnPaper(work);
    if (!latest) return [words.never(nameOfWork(work))];
    const left = latest.score.unscored.map(({ zone, standing, reasons }) => {
      const letter = work.record.zones.find(({ thing }) => thing === zone)?.body.letter ?? '?';
      const code = String(reasons.find(({ params }) => params.why !== undefined)?.params.why ?? '');
      const why =
        standing === 'not looked'
          ? (reasonsNotLooked.find(({ id }) => id === code)?.name ?? code)
          : standing === 'not visited'
            ? words.notVisited
            : words.carried;
      return words.leftZone(letter, why);
    });
    return left.length > 0 ? [words.left(nameOfWork(work), date(latest.round.body.date), inWords(left))] : [];
  });
  return notLooked(lines.length > 0 ? list(lines) : say(words.allLooked));
};
