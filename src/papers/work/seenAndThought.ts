import type { WorkOnPaper } from '../../engine/reckoning';
import { findingsOf, type Thing, vagueDateOrder } from '../../engine/record';
import { date, share, w, whole } from '../../words';
import { list, type PaperPiece, say, section, seen, thought, together } from '../layout';
import { thingsIn } from '../reading';
import { kindAndOrigin } from './kindAndOrigin';
import type { LatestOnPaper } from './latestOnPaper';
import { zoneLabel } from './zoneLabel';

const words = w.paperCondition;
/** Most thoughts on a report; older ones are counted. */
const most = 8;

/** The findings of the round in short, and apart from them what somebody thought: never in one box. */
export const seenAndThought = (work: WorkOnPaper, latest: LatestOnPaper): PaperPiece => {
  const lines = seenLines(latest);
  const thoughts = thoughtsOf(work);
  const left = thoughts.length - most;
  return section(
    words.thoughts,
    together(seen(lines.length > 0 ? list(lines) : say(words.seenNothing))),
    thought(
      thoughts.length === 0 && say(words.noThoughts),
      list(thoughts.slice(0, most).map((each) => thoughtLine(work, each))),
      left > 0 && say(words.thoughtsMore(left, whole(left)), 'small'),
    ),
  );
};

/** One line a kind: in which zones, on how much of each. */
const seenLines = ({ record, round, zones, scoreOf }: LatestOnPaper): readonly string[] => {
  const kinds = new Map<string, string[]>();
  for (const zone of zones.filter(({ thing }) => scoreOf(thing)))
    for (const { body } of findingsOf(record, round.thing, zone.thing)) {
      if (body.cleared) continue;
      const name = kindAndOrigin(body);
      const told = body.coverage ? words.seenZone(zone.body.letter, share(body.coverage.value)) : zone.body.letter;
      kinds.set(name, [...(kinds.get(name) ?? []), told]);
    }
  return [...kinds].sort(([, a], [, b]) => b.length - a.length).map(([kind, at]) => words.seenIn(kind, at.join(', ')));
};

/** The latest first. */
export const thoughtsOf = ({ within }: WorkOnPaper): readonly Thing<'interpretation'>[] =>
  [...thingsIn(within, 'interpretation')].sort((a, b) =>
    vagueDateOrder(a.body.date) < vagueDateOrder(b.body.date) ? 1 : -1,
  );

export const thoughtLine = (
  { record }: WorkOnPaper,
  { body: { statement, by, date: day, about, source } }: Thing<'interpretation'>,
): PaperPiece => {
  const zone = record.zones.find(({ thing }) => thing === about);
  return [
    say(zone ? words.thoughtOf(zoneLabel(zone), statement) : statement),
    say(words.thoughtBy(by, date(day), source ?? ''), 'small'),
  ];
};
