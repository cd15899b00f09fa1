import { areaOn, findingsOf, type Thing, visitOf } from '../../engine/record';
import { beadings, exposures, reaches } from '../../engine/trade';
import { areaNumber, list as joined, w, figure as written } from '../../words';
import { h, list, type PaperPiece, say, section, table } from '../layout';
import { classMarks, ranged } from './conditionFigures';
import type { LatestOnPaper } from './latestOnPaper';
import { saidOfFinding } from './saidOfFinding';
import { zoneLabel } from './zoneLabel';

const words = w.paperCondition;

/** Every zone of the round in walking order: how large, how it stands, what was seen. */
export const zoneByZone = (latest: LatestOnPaper): PaperPiece => {
  const { zones, round } = latest;
  if (zones.length === 0) return undefined;
  const { zone, area, index, classes, seen } = words.zoneColumns;
  const methods = [...new Set(zones.map((each) => areaOn(each, round.body.date).method))];
  return section(
    words.zones,
    table(
      '',
      [
        { head: zone },
        { head: area, kind: 'number' },
        { head: index, kind: 'number' },
        { head: classes, kind: 'narrow' },
        { head: seen, kind: 'wide' },
      ],
      zones.map((each) => zoneRow(latest, each)),
    ),
    say(words.zoneHow(joined(methods.map((method) => words.areaMethods[method]))), 'small'),
  );
};

const zoneRow = (latest: LatestOnPaper, zone: Thing<'zone'>): readonly PaperPiece[] => {
  const { round, scoreOf } = latest;
  const { range } = written(areaWhole(zone, round.body.date), 'm2');
  const score = scoreOf(zone.thing);
  return [
    [zoneLabel(zone), ' ', h('span', { class: 'lies' }, liesAndReach(zone))],
    [areaNumber(areaOn(zone, round.body.date).m2), ' ', h('span', { class: 'lies' }, range)],
    score ? twoLines(ranged(score)) : words.classNone,
    classMarks(latest, zone.thing),
    seenIn(latest, zone),
  ];
};

const areaWhole = (zone: Thing<'zone'>, day: string) => {
  const { m2, low, high } = areaOn(zone, day);
  return { value: m2, low, high };
};

/** The range on a line of its own, so that the column stays narrow. */
const twoLines = (text: string): PaperPiece => {
  const at = text.indexOf(' (');
  return at < 0 ? text : [text.slice(0, at), ' ', h('span', { class: 'lies' }, text.slice(at + 2, -1))];
};

const liesAndReach = ({ body }: Thing<'zone'>): string =>
  words.zoneLies(
    body.exposure.map((code) => exposures.find(({ id }) => id === code)?.name ?? code).join(', '),
    reaches.find(({ id }) => id === body.reach)?.name ?? body.reach,
  );

const seenIn = ({ record, round }: LatestOnPaper, zone: Thing<'zone'>): PaperPiece => {
  const visit = visitOf(record, round.thing, zone.thing);
  if (!visit || visit.body.state === 'not looked') return [words.notJudged, visit?.body.note && say(visit.body.note)];
  const findings = findingsOf(record, round.thing, zone.thing);
  const beading = beadings.find(({ id }) => id === visit.body.beading);
  return [
    findings.length === 0
      ? words.nothing
      : list(findings.map(({ body }) => [saidOfFinding(body), body.note && ` ${body.note}`])),
    beading && say(words.beading(beading.name)),
    visit.body.note && say(visit.body.note),
  ];
};
