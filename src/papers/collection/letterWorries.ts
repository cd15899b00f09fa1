import { coverageInterval } from '../../engine/condition';
import type { PaperSource, WorkOnPaper } from '../../engine/reckoning';
import { type BodyOf, latestRound, type Thing } from '../../engine/record';
import { kindOf, severityOf } from '../../engine/trade';
import { stopWordsSeen } from '../../engine/watch';
import { date, list as inWords, share, w, whole } from '../../words';
import { danger, list, type PaperPiece, say, section, table, under } from '../layout';
import { nameOfWork, thingsIn } from '../reading';
import { zoneOf } from './namesIn';

const words = w.paperLetter;

/** Rows that a letter has room for; the rest is counted. */
const most = 12;
/** Stop words of the last so many years are told. */
const years = 2;

/** What stands open: dangers to people, incidents, what needs the conservator, what is not at rest. */
export const worries = (source: PaperSource): PaperPiece => {
  const dangers = source.works.flatMap((work) =>
    work.record.personChecks
      .filter(({ body }) => body.closed === undefined)
      .map(({ body }) =>
        words.dangerOpen(nameOfWork(work), zoneOf(work, body.zone), body.what.replace(/\.$/, ''), date(body.opened)),
      ),
  );
  const incidents = source.works.flatMap((work) =>
    thingsIn(work.within, 'incident')
      .filter(({ body }) => !body.closed)
      .map(({ body }) => words.incident(nameOfWork(work), body.what, date(body.date))),
  );
  return section(
    words.worries,
    dangers.length > 0 ? danger(list(dangers)) : say(words.noDanger),
    list([...incidents, ...stops(source)]),
    under(words.active, ...notAtRest(source)),
  );
};

/** Each zone once, with all its kinds as last seen. */
const stops = ({ works, today }: PaperSource): string[] => {
  const since = `${Number(today.slice(0, 4)) - years}${today.slice(4)}`;
  return works.flatMap((work) => {
    const zones = new Map<string, Map<string, string>>();
    for (const { zone, kind, date: day } of stopWordsSeen(work.record, since)) {
      const seen = zones.get(zone) ?? new Map<string, string>();
      if (!seen.has(kind)) seen.set(kind, day);
      zones.set(zone, seen);
    }
    return [...zones].map(([zone, seen]) =>
      words.stopWord(
        nameOfWork(work),
        zoneOf(work, zone),
        inWords([...seen].map(([kind, day]) => words.seenThere(kindOf(kind)?.name ?? kind, date(day)))),
      ),
    );
  });
};

type Finding = BodyOf<'finding'>;
const graveness = { severe: 2, moderate: 1, slight: 0 } as const;
const order = (a: Finding, b: Finding): number =>
  graveness[b.severity] - graveness[a.severity] || (b.coverage?.value ?? 0) - (a.coverage?.value ?? 0);

const extent = ({ coverage, count }: Finding): string => {
  if (count) return words.count[count];
  if (!coverage) return words.there;
  const { low, high } = coverageInterval(coverage);
  return `${share(coverage.value)} (${share(low)}–${share(high)})`;
};

const notAtRest = (source: PaperSource): PaperPiece[] => {
  const all = source.works
    .flatMap((work) => activeOf(work).map(({ body }) => ({ work, body })))
    .sort((a, b) => order(a.body, b.body));
  if (all.length === 0) return [say(words.activeNone)];
  const { work, zone, what, share: ofZone, severity } = words.activeColumns;
  return [
    table(
      '',
      [
        { head: work, kind: 'narrow' },
        { head: zone },
        { head: what },
        { head: ofZone, kind: 'number' },
        { head: severity, kind: 'narrow' },
      ],
      all
        .slice(0, most)
        .map(({ work: of, body }) => [
          of.record.sculpture.body.number || of.record.sculpture.body.title,
          zoneOf(of, body.zone),
          kindOf(body.kind)?.name ?? body.kind,
          extent(body),
          severityOf(body.severity).name,
        ]),
    ),
    say(words.activeHow, 'small'),
    all.length > most && say(words.activeMore(whole(all.length - most))),
  ];
};

const activeOf = ({ record }: WorkOnPaper): readonly Thing<'finding'>[] => {
  const round = latestRound(record);
  return record.findings.filter(
    ({ body }) =>
      body.round === round?.thing && body.activity === 'active' && !body.cleared && body.carriedFrom === undefined,
  );
};
