import { ofCampaign, type QuantityLine, scheduleStanding, surfaceOf } from '../../engine/campaign';
import { areaOn, latestRound } from '../../engine/record';
import { areaTolerance, reaches } from '../../engine/trade';
import {
  amountText,
  area,
  date,
  list,
  namesOfCampaign,
  number,
  sayReason,
  share,
  taskName,
  tongueNow,
  w,
} from '../../words';
import { columns, h, list as listOf, type PaperPiece, room, say, section, signatures, table } from '../layout';
import type { CampaignOnPaper } from './campaignOnPaper';

const words = w.paperRequest;

/** The lines of work of a campaign, in their order. */
export const linesOf = (file: CampaignOnPaper): readonly QuantityLine[] =>
  ofCampaign(file, 'quantities')[0]?.body.items ?? [];

/** How the area of a line's zone was taken; '' where it is of no zone. */
const measuredHow = ({ record, today }: CampaignOnPaper, line: QuantityLine): string => {
  const zone = record.zones.find(({ thing }) => thing === line.zone);
  return zone && line.unit === 'm2' ? words.measured[areaOn(zone, today).method] : '';
};

/** Prices are asked by the square metre: where feet are read they stand behind it, never instead. */
const amountOf = (line: QuantityLine): string =>
  line.unit === 'm2' && tongueNow().units === 'metric' ? area(line.amount) : amountText(line);

const rangeOf = ({ low, high, unit }: QuantityLine): string => {
  if (low === undefined || high === undefined || low === high) return '';
  return unit === 'm2' ? `${area(low)} – ${area(high)}` : `${number(low)} – ${number(high)}`;
};

/** The work that every line asks for; undefined where they differ. */
const sameTask = (lines: readonly QuantityLine[]): string | undefined => {
  const tasks = new Set(lines.map(({ task }) => taskName(task)));
  return tasks.size === 1 ? [...tasks][0] : undefined;
};

const nameOf = (line: QuantityLine, ofAll: string | undefined): PaperPiece => {
  const task = taskName(line.task);
  if (task === ofAll) return line.name;
  return task === line.name ? task : [line.name, h('br', {}), h('span', { class: 'small' }, task)];
};

/** One job line by line: how much, how that was taken, how it is reached and what was seen. No prices of our own. */
export const scheduleSection = (file: CampaignOnPaper): PaperPiece => {
  const lines = linesOf(file);
  if (lines.length === 0) return section(words.schedule, say(words.scheduleNone));
  const { record, today } = file;
  const names = namesOfCampaign(file);
  const { columns: heads } = words;
  const ofAll = lines.length > 1 ? sameTask(lines) : undefined;
  const surface = surfaceOf(lines);
  const round = latestRound(record);
  const made = ofCampaign(file, 'quantities')[0]?.body.date ?? today;
  const against = scheduleStanding(record, lines, today);
  return section(
    words.schedule,
    ofAll !== undefined && say(words.eachLine(ofAll)),
    table(
      words.caption(date(made)),
      [
        { head: heads.number, kind: 'narrow' },
        { head: heads.what },
        { head: heads.amount, kind: 'number' },
        { head: heads.measured },
        { head: heads.reach },
        { head: heads.seen },
      ],
      lines.map((line, i) => [
        `${i + 1}`,
        nameOf(line, ofAll),
        [amountOf(line), rangeOf(line) && [h('br', {}), h('span', { class: 'small' }, rangeOf(line))]],
        measuredHow(file, line),
        reaches.find(({ id }) => id === line.reach)?.name ?? line.reach,
        [
          line.condition,
          line.inserts?.length ? words.seenNear(list(line.inserts.map((insert) => names(insert) ?? '?'))) : undefined,
          line.note,
        ]
          .filter(Boolean)
          .join('. '),
      ]),
    ),
    surface.value > 0 && say(words.total(area(surface.value), area(surface.low), area(surface.high))),
    say(words.quantitiesHow(share(areaTolerance.low), share(areaTolerance.high)), 'small'),
    round && say(words.seenHow(date(round.body.date)), 'small'),
    against.length > 0 && [say(words.against), listOf(against.map((reason) => sayReason(reason, names)))],
  );
};

/** The lines again, with room for the bidder's own measure and prices. */
export const priceForm = (file: CampaignOnPaper): PaperPiece => {
  const { formColumns: heads } = words;
  return section(
    words.form,
    say(words.formLead),
    h(
      'div',
      { class: 'price-form' },
      table(
        words.formCaption,
        [
          { head: heads.what },
          { head: heads.amount, kind: 'number' },
          { head: `${heads.own} (${w.campaign.quantities.units.m2})` },
          { head: heads.unit },
          { head: heads.price },
        ],
        [
          ...linesOf(file).map((line, i) => [
            [`${i + 1}. `, nameOf(line, sameTask(linesOf(file)))],
            amountOf(line),
            '',
            '',
            '',
          ]),
          ...[words.formSum, words.formTax, words.formTotal].map((name) => [name, '', '', '', '']),
        ],
      ),
    ),
    columns(words.formRoom.map((name) => room(name))),
    signatures([{ role: words.bidder }]),
  );
};
