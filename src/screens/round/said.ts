import type { AgainTouch, Undoable, ZoneView } from '../../actions';
import type { Coverage, DraftFinding, EarlierFinding, ZoneDraft, ZoneTouch } from '../../engine/record';
import { beadings, kindOf, ladder } from '../../engine/trade';
import { date, deedNamed, midSentence, number, share, w } from '../../words';

const words = w.round;

/** "30 %", "<1 %", or a value between two steps as it is. */
export const saidCoverage = (coverage: Coverage): string => {
  const step = ladder.find((s) => s.value === coverage.value);
  if (coverage.value === 0) return words.said.none;
  if (step) return words.said.percent(step.label);
  // Low on the ladder the steps lie closer than a whole per cent.
  return coverage.value < 0.1 ? words.said.percent(number(coverage.value * 100, 1)) : share(coverage.value);
};

type Extent = Pick<DraftFinding, 'coverage' | 'count'>;

export const saidExtent = ({ coverage, count }: Extent): string => {
  if (coverage) return saidCoverage(coverage);
  return count ? words.said.count[count] : words.said.there;
};

/** "30 %, moderate, active": what is judged so far; activity only where it was said to be other than unclear. */
export const saidFinding = (f: DraftFinding): string => {
  if (f.gone) return words.zone.gone;
  const parts = [saidExtent(f)];
  if (f.severity) parts.push(words.said.severity[f.severity]);
  if (f.activity && f.activity !== 'unclear') parts.push(words.said.activity[f.activity]);
  return parts.join(', ');
};

export const saidEarlier = ({ body }: EarlierFinding): string =>
  [
    saidExtent(body),
    words.said.severity[body.severity],
    ...(body.activity === 'unclear' ? [] : [words.said.activity[body.activity]]),
  ].join(', ');

export const kindName = (id: string): string => kindOf(id)?.name ?? id;

/** The year is enough to know which round is meant; the whole day stands in the record. */
export const yearOf = (day: string): string => day.slice(0, 4);

/** "As last year" where the last answer is from the year before; else the year, or within one year the day, it is from. */
export const asLastYear = (before: NonNullable<ZoneDraft['before']>, today: string): string => {
  const years = Number(yearOf(today)) - Number(yearOf(before.date));
  if (years === 1) return words.zone.asLastYear;
  return words.zone.asIn(years === 0 ? date(before.date) : yearOf(before.date));
};

const saidStainFrom = (f: DraftFinding, zones: ZoneView['otherZones']): string[] => {
  const from = f.origin === 'stain' ? zones.find((z) => z.thing === f.stainFrom) : undefined;
  return from ? [words.said.stainFrom(from.body.letter)] : [];
};

/** One sentence to call back up the ladder. */
export const readBack = ({ zone, draft, otherZones }: Pick<ZoneView, 'zone' | 'draft' | 'otherZones'>): string => {
  const place = `${zone.body.letter}, ${midSentence(zone.body.name)}`;
  const judged = draft.findings.filter((f) => f.gone || f.coverage || f.count || (f.there && f.severity));
  const beading = beadings.find((b) => b.id === draft.beading)?.name;
  const photos = draft.photos.length + draft.findings.reduce((n, f) => n + f.photos.length, 0);
  const more = [
    ...(beading ? [beading.charAt(0).toUpperCase() + beading.slice(1)] : []),
    ...(photos > 0 ? [words.card.photos(photos)] : []),
  ];
  if (judged.length === 0 && more.length === 0) return words.readBack.nothing(place);
  const findings = judged.map((f) =>
    f.gone
      ? words.readBack.gone(f.kind)
      : [midSentence(kindName(f.kind)), saidFinding(f), ...saidStainFrom(f, otherZones)].join(', '),
  );
  return words.readBack.sentence(place, findings, more);
};

const saidTouch = (touch: ZoneTouch | AgainTouch): string => {
  const said = words.touch;
  switch (touch.do) {
    case 'again':
      return said.cover(saidCoverage(touch.coverage));
    case 'cover':
      return said.cover(saidCoverage(touch.coverage));
    case 'cover between':
      return touch.by < 0 ? said.between.less : said.between.more;
    case 'stain from':
      return said.stainFrom;
    case 'gone':
    case 'there':
    case 'count':
    case 'origin':
    case 'against':
    case 'photo':
    case 'beading':
    case 'note':
    case 'remove':
      return said[touch.do];
    case 'kind':
      return said.kind(touch.kind);
    case 'severity':
      return said.severity(words.said.severity[touch.severity]);
    case 'activity':
      return said.activity(words.said.activity[touch.activity]);
    default:
      return said.other;
  }
};

export const saidUndoable = (undo: Undoable): string =>
  undo.what === 'touch' ? saidTouch(undo.touch) : deedNamed(undo.name);
