import { endOfWork, minutesKept, seenAfter, type TemperatureLog, temperatureLog } from '../../engine/heat';
import type { Thing } from '../../engine/record';
import { hotChecks } from '../../engine/trade';
import { date, measure, measureNumber, sayReason, unitOf, w, whole } from '../../words';
import { facts, fine, list, newPage, type PaperPiece, say, section, table, together, under } from '../layout';
import type { CampaignOnPaper } from './campaignOnPaper';
import { photosNamed } from './dossierAgreed';
import { hotDaysIn } from './dossierTime';
import { type InsertTold, insertsTold } from './insertsTold';
import { temperatureChart } from './temperatureChart';

const words = w.paperDossier;

/** Every day of hot work: its card, its watch, the temperatures at each insert and how each was afterwards. */
export const hotDaysTold = (file: CampaignOnPaper): PaperPiece => {
  const days = hotDaysIn(file);
  if (days.length === 0) return section(words.hot, say(words.lacksOf.hotDays));
  return section(
    words.hot,
    days.map((day, i) => {
      const told = [card(day), ...insertsOfDay(file, day)];
      return i === 0 ? told : newPage(...told);
    }),
  );
};

const timeIn = (instant: string | undefined): string | undefined => instant?.slice(11, 16);
const person = ({ role, name }: { readonly role: string; readonly name?: string | undefined }): string =>
  [role, name].filter(Boolean).join(', ');

const card = ({ body }: Thing<'hotDay'>): PaperPiece => {
  const { hotFacts: names } = words;
  const checked = hotChecks.filter(({ id }) => body.checked.includes(id)).map(({ name }) => name);
  return under(
    words.hotDay(date(body.date)),
    facts([
      [names.permit, body.permit],
      [names.by, person(body.authorisedBy)],
      [names.clear, measure('length', body.clearZone)],
      [names.watcher, body.watcher ? person(body.watcher) : words.notSaid],
      [names.asked, w.paperSite.minutes(whole(body.watchMinutes))],
      [names.ended, timeIn(body.workEnded) ?? words.notSaid],
      [
        names.kept,
        body.watchKept
          ? words.watchKept(whole(minutesKept(body)), body.watchKept.by, body.watchKept.seen ?? '')
          : words.notSaid,
      ],
      [names.closed, body.closed ? w.hotWork.closedAt(timeIn(body.closed.at) ?? '', body.closed.by) : words.notClosed],
      [names.note, body.note],
    ]),
    under(names.checked, list(checked) ?? say(words.notSaid)),
  );
};

const insertsOfDay = (file: CampaignOnPaper, day: Thing<'hotDay'>): readonly PaperPiece[] =>
  insertsTold(file)
    .filter(
      ({ insert }) =>
        day.body.inserts?.includes(insert.thing) ||
        file.things('insertReading').some(({ body }) => body.hotDay === day.thing && body.insert === insert.thing),
    )
    .map((told) => newPage(fine(temperatures(file, day, told)), afterHeat(file, day, told)));

const temperatures = (
  file: CampaignOnPaper,
  day: Thing<'hotDay'>,
  { insert, care, name, limit }: InsertTold,
): PaperPiece => {
  const readings = file
    .things('insertReading')
    .filter(({ body }) => body.hotDay === day.thing && body.insert === insert.thing);
  const by = new Map(readings.map(({ body }) => [`${body.time} ${body.spot}`, body.by]));
  const log = temperatureLog(
    readings.map(({ body }) => body),
    care,
    endOfWork(day.body),
  );
  if (readings.length === 0) return under(words.readings(name), say(words.lacksOf.readings(name, date(day.body.date))));
  return under(
    words.readings(name),
    log.highest && say(words.highest(measure('temperature', log.highest.celsius), log.highest.time, limit ?? '')),
    temperatureChart(name, log, care?.most),
    rows(log, by),
    list(log.reasons.map((reason) => sayReason(reason))),
    say(words.readingsHow, 'small'),
  );
};

const rows = (log: TemperatureLog, by: ReadonlyMap<string, string>): PaperPiece => {
  const { readingColumns: heads } = words;
  const spots = new Set(log.rows.map(({ spot }) => spot));
  return table(
    [...spots].join(', '),
    [
      { head: heads.time, kind: 'narrow' },
      { head: heads.spot },
      { head: `${heads.degrees}, ${unitOf('temperature')}`, kind: 'number' },
      { head: `${heads.rise}, ${unitOf('difference')}`, kind: 'number' },
      { head: heads.level },
      { head: heads.by },
    ],
    log.rows.map(({ time, spot, celsius, perMinute, level }) => [
      time,
      spot,
      measureNumber('temperature', celsius),
      perMinute === undefined ? '' : measureNumber('difference', perMinute, 1),
      w.hotWork.readings.levels[level],
      by.get(`${time} ${spot}`),
    ]),
  );
};

const afterHeat = (file: CampaignOnPaper, day: Thing<'hotDay'>, { insert, name, care }: InsertTold): PaperPiece => {
  const after = file
    .things('insertAfter')
    .map(({ body }) => body)
    .find((body) => body.hotDay === day.thing && body.insert === insert.thing && seenAfter(day.body, body));
  return together(
    say(
      after
        ? words.afterHeat(name, words.afterStates[after.state], after.by)
        : words.lacksOf.after(name, date(day.body.date)),
    ),
    after?.note && say(after.note),
    photosNamed(file, [...(care?.photos ?? []), ...(after?.photos ?? [])], name),
  );
};
