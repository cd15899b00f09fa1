import type { Planned } from '../../actions';
import type { SculptureRecord, Thing } from '../../engine/record';
import { incidentSortOf } from '../../engine/trade';
import { date, w, whereDone } from '../../words';
import { pathTo } from '../shell';
import type { LogLine } from './lines';

const words = w.logbook;

const lineOfIncident = (record: SculptureRecord, { thing, body }: Thing<'incident'>): LogLine => ({
  kind: 'elsewhere',
  to: pathTo.incidents(),
  key: thing,
  date: body.date,
  when: date(body.date),
  what: incidentSortOf(body.sort)?.name ?? body.sort,
  where: body.zones && body.zones.length > 0 ? whereDone(record, body.zones) : '',
  details: [body.closed ? words.incidentClosed(date(body.closed.on)) : words.incidentOpen],
  note: body.what,
});

const lineOfMove = ({ thing, body }: Thing<'move'>): LogLine => ({
  kind: 'elsewhere',
  to: pathTo.moves(),
  key: thing,
  date: body.left,
  when: date(body.left),
  what: words.moves[body.sort],
  where: words.moveOf(body.from, body.to),
  details: body.back
    ? [words.back(date(body.back))]
    : body.backDue && body.sort !== 'move'
      ? [words.backDue(date(body.backDue))]
      : [],
  note: body.how,
});

/** Layers of one campaign on one day are one line. */
const linesOfLayers = (record: SculptureRecord, layers: readonly Thing<'layer'>[]): LogLine[] => {
  const days = new Map<string, Thing<'layer'>[]>();
  for (const layer of layers) {
    const key = `${layer.body.campaign} ${layer.body.date}`;
    days.set(key, [...(days.get(key) ?? []), layer]);
  }
  return [...days].flatMap(([key, ofDay]): LogLine[] => {
    const first = ofDay[0]?.body;
    if (!first) return [];
    return [
      {
        kind: 'elsewhere',
        to: pathTo.layers(first.campaign),
        key,
        date: first.date,
        when: date(first.date),
        what: words.layers,
        where: whereDone(record, [...new Set(ofDay.map(({ body }) => body.zone))]),
        details: [words.layersOf(ofDay.length)],
        note: undefined,
      },
    ];
  });
};

/** What happened to the work beside treatments: incidents, moves and loans, layers of colour. */
export const linesOfPlanned = (record: SculptureRecord, planned: Planned): readonly LogLine[] => [
  ...planned.incident.map((incident) => lineOfIncident(record, incident)),
  ...planned.move.map(lineOfMove),
  ...linesOfLayers(record, planned.layer),
];
