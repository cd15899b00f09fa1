import type { PaperSource } from '../../engine/reckoning';
import type { Thing } from '../../engine/record';
import { causeOf, yearVerdicts } from '../../engine/trade';
import { date, w } from '../../words';
import { list, type PaperPiece, say, section, under } from '../layout';
import { nameOfWork, thingsIn, thingsOfAll, workOf } from '../reading';
import { lettersSaid } from './namesIn';

const words = w.paperLetter;

/** What was decided with what was refused and why, then the works left as they are: leaving alone is a decision too. */
export const decisions = (source: PaperSource): PaperPiece => {
  const all = thingsOfAll(source, 'decision')
    .filter(({ body }) => body.replacedBy === undefined)
    .sort((a, b) => b.body.date.localeCompare(a.body.date));
  const held = leftAlone(source);
  return section(
    words.decided,
    all.length === 0 && say(words.decidedNone),
    ...all.map((one) => decision(source, one)),
    held.length > 0 && under(words.hold, list(held)),
  );
};

const decision = (source: PaperSource, { body }: Thing<'decision'>): PaperPiece => {
  const work = body.sculpture ? workOf(source, body.sculpture) : undefined;
  return under(
    words.decision(date(body.date), body.title, work ? nameOfWork(work) : ''),
    say(words.chosen(body.chosen)),
    list(body.refused.map(({ what, why }) => words.refused(what.replace(/\.$/, ''), why))),
    body.dissent !== undefined && say(words.dissent(body.dissent)),
    body.review !== undefined && say(words.review(date(body.review))),
  );
};

/** The latest verdict of each work, where it says to go on as before. */
const leftAlone = ({ works }: PaperSource): string[] =>
  works.flatMap((work) => {
    const latest = thingsIn(work.within, 'yearVerdict').sort((a, b) => b.body.year - a.body.year)[0]?.body;
    if (!latest || (latest.verdict !== 'hold' && latest.verdict !== 'watch')) return [];
    const name = yearVerdicts.find(({ id }) => id === latest.verdict)?.name ?? latest.verdict;
    return [words.holdLine(nameOfWork(work), name, latest.why, latest.by, String(latest.year))];
  });

/** Causes that still work, or that nobody can take away. */
export const openCauses = ({ works }: PaperSource): PaperPiece => {
  const lines = works.flatMap((work) =>
    thingsIn(work.within, 'cause')
      .filter(({ body }) => body.state !== 'removed' && body.state !== 'not a cause')
      .map(({ body }) => {
        return words.cause(
          nameOfWork(work),
          lettersSaid(work, body.zones),
          causeOf(body.sort)?.name ?? body.sort,
          w.campaign.causes.states[body.state],
          date(body.found),
        );
      }),
  );
  return section(words.causes, lines.length > 0 ? list(lines) : say(words.causesNone));
};
