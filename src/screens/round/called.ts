import type { ZoneView } from '../../actions';
import { type DraftFinding, isJudged, type ZoneDraft } from '../../engine/record';
import { beadings, ladder } from '../../engine/trade';
import { midSentence, w } from '../../words';
import { saidCoverage } from './said';

const words = w.callAndTap;

type Called = Pick<ZoneView, 'zone' | 'draft' | 'asks' | 'otherZones'>;

/** What is called down of how much of it there is. */
const extent = ({ coverage, count, there }: DraftFinding): readonly string[] => {
  if (coverage) {
    const step = ladder.find(({ value }) => value === coverage.value);
    return [step ? words.step(step.label) : words.between(saidCoverage(coverage))];
  }
  if (count) return [words.count[count]];
  return there ? [words.there] : [];
};

const finding = (f: DraftFinding, others: Called['otherZones']): readonly string[] => {
  if (f.gone) return [words.gone(f.kind)];
  const from = f.origin === 'stain' ? others.find(({ thing }) => thing === f.stainFrom)?.body.letter : undefined;
  return [
    words.kind(f.kind),
    ...(f.origin && f.origin !== 'metal' ? [w.round.said.origin[f.origin]] : []),
    ...(from ? [words.from(from)] : []),
    ...extent(f),
    ...(f.severity ? [w.round.said.severity[f.severity]] : []),
    ...(f.activity && f.activity !== 'unclear' ? [w.round.said.activity[f.activity]] : []),
  ];
};

/** The finding a touch changed, between the draft before it and the one after; by what is said of each, for drafts are made anew. */
export const takenBetween = (before: ZoneDraft, after: ZoneDraft): DraftFinding | undefined => {
  if (before.zone !== after.zone) return undefined;
  const earlier = new Map(before.findings.map((f) => [f.key, JSON.stringify(f)]));
  return after.findings.filter((f) => earlier.get(f.key) !== JSON.stringify(f)).at(-1);
};

/** Without a touch to speak of, as after a restart: the finding asked about, else the one judged last. */
const spokenOf = ({ asks, draft }: Called): DraftFinding | undefined =>
  'finding' in asks
    ? asks.finding
    : (draft.findings.filter((f) => isJudged(f) && !f.earlier).at(-1) ?? draft.findings.filter(isJudged).at(-1));

/** For the helper to read back in one sentence: the zone's letter and what was taken. */
export const called = (view: Called, taken?: DraftFinding): string => {
  const { zone, draft, asks, otherZones } = view;
  const { letter, name } = zone.body;
  if (asks.what === 'why') return words.notReached(letter);
  if (asks.what === 'gone') return words.each(letter);
  if (asks.what === 'kinds') {
    const groups: Readonly<Record<string, string>> = w.round.group;
    return words.sentence(letter, [midSentence(groups[asks.group] ?? asks.group)]);
  }
  const f = draft.findings.find(({ key }) => key === taken?.key) ?? spokenOf(view);
  const beading = beadings.find(({ id }) => id === draft.beading)?.name;
  const photos = draft.photos.length + (f?.photos.length ?? 0);
  const parts = [
    ...(f ? finding(f, otherZones) : []),
    ...(beading ? [beading] : []),
    ...(photos > 0 ? [words.photos(photos)] : []),
  ];
  return parts.length > 0 ? words.sentence(letter, parts) : words.now(letter, name);
};

/** Where the pad goes on by itself from one finding to the next: what it asks about now. */
export const calledNext = ({ asks }: Called, taken: DraftFinding | undefined): string =>
  'finding' in asks && taken && asks.finding.key !== taken.key ? words.next(asks.finding.kind) : '';
