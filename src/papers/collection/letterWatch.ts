import type { ZoneHolds } from '../../engine/hold';
import { firstPass, type PaperSource, type WorkOnPaper } from '../../engine/reckoning';
import { type Lists, type TripwireFacts, type TripwireStanding, tripwiresStanding } from '../../engine/watch';
import { date, tripwireText, w, whole } from '../../words';
import { list, type PaperPiece, say, section } from '../layout';
import { nameOfWork, thingsIn, thingsOfAll, workOf } from '../reading';
import { lettersSaid, namesIn, zoneOf } from './namesIn';

const words = w.paperLetter;
/** Zones that a letter has room for. */
const most = 10;

/** Where a coating does not do what it is there for. */
export const watchZones = (source: PaperSource): PaperPiece => {
  const lines = source.works.flatMap(linesOf);
  return section(
    words.watch,
    lines.length > 0 ? say(words.watchLead, 'keep-on') : say(words.watchNone),
    list(lines.slice(0, most)),
    lines.length > most && say(words.watchMore(whole(lines.length - most))),
  );
};

/** Zones of a work of which the same is said share a line. */
const linesOf = (work: WorkOnPaper): string[] => {
  const groups = new Map<string, { readonly say: (where: string) => string; readonly zones: string[] }>();
  for (const holds of work.figures?.holds ?? []) {
    const told = toldOf(work, holds);
    if (!told) continue;
    const group = groups.get(told('')) ?? { say: told, zones: [] };
    group.zones.push(holds.zone);
    groups.set(told(''), group);
  }
  return [...groups.values()].map(({ say: told, zones }) =>
    told(`${shortName(work)}, ${zones.length === 1 ? zoneOf(work, zones[0]) : lettersSaid(work, zones)}`),
  );
};

const toldOf = (work: WorkOnPaper, { zone, onNow, shortening }: ZoneHolds): ((where: string) => string) | undefined => {
  const advice = work.figures?.advice.find((one) => one.zone === zone);
  const shorter =
    shortening.word === 'getting shorter'
      ? words.watchShorter
      : shortening.word === 'looks shorter, not proven'
        ? words.watchMaybeShorter
        : undefined;
  const seen = onNow?.state === 'back' ? onNow.firstSeen : undefined;
  const notClean = onNow?.state === 'not clean';
  if (!seen && !notClean && !shorter && !advice?.asksConservator) return undefined;
  return (where) =>
    [
      seen ? words.watchBack(where, date(seen)) : notClean ? words.watchNotClean(where) : `${where}:`,
      shorter,
      advice?.asksConservator && words.watchAsk,
      advice?.nextLook && words.nextLook(date(advice.nextLook.day)),
    ]
      .filter(Boolean)
      .join(' ');
};

/** The number alone where there is one: a letter names the works often. */
const shortName = (work: WorkOnPaper): string => work.record.sculpture.body.number || nameOfWork(work);

/** What would change a mind, and where it stands on the day of the letter. */
export const tripwires = (source: PaperSource): PaperPiece => {
  const names = namesIn(source);
  const lines = standingOf(source).map(({ decision, tripwire, word, since }) => {
    const stands = [w.decisions.wireWord[word], since && w.decisions.wireOn(date(since))].filter(Boolean).join(', ');
    const work = decision.body.sculpture ? workOf(source, decision.body.sculpture) : undefined;
    return words.wire([work && shortName(work), tripwireText(tripwire, names)].filter(Boolean).join(', '), stands);
  });
  return section(words.wires, lines.length > 0 ? say(words.wiresLead, 'keep-on') : say(words.wiresNone), list(lines));
};

/** Every tripwire of the decisions that hold. */
export const standingOf = (source: PaperSource): readonly TripwireStanding[] => {
  const decisions = thingsOfAll(source, 'decision').filter(
    ({ body }) => body.replacedBy === undefined && body.tripwires.length > 0,
  );
  return tripwiresStanding(
    decisions,
    thingsOfAll(source, 'tripwireAnswer'),
    (sculpture) => factsOf(source, sculpture),
    source.today,
  );
};

const factsOf = (source: PaperSource, sculpture: string | undefined): TripwireFacts => {
  const work = sculpture === undefined ? undefined : workOf(source, sculpture);
  const of = <K extends 'quote' | 'fund' | 'gift'>(kind: K): Lists<K>[K] =>
    (work ? thingsIn(work.within, kind) : thingsOfAll(source, kind)) as Lists<K>[K];
  const lists = { quote: of('quote'), fund: of('fund'), gift: of('gift') };
  if (!work) return { record: null, score: null, clearlyWorse: null, holds: [], lists };
  const { score, clearlyWorse, holds } = firstPass(work.record, source.today);
  return { record: work.record, score, clearlyWorse, holds, lists };
};
