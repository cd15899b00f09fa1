import { metalLedger } from '../../engine/care';
import { layersOf } from '../../engine/heat';
import type { Thing } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import {
  area,
  date,
  lettersOf,
  list as listed,
  measure,
  w,
  whenDone,
  whereDone,
  whoDid,
  whole,
  withWhat,
} from '../../words';
import { type PaperPiece, say, section, table, under } from '../layout';
import { zoneLabel } from '../work/zoneLabel';
import type { CampaignOnPaper } from './campaignOnPaper';
import { photosNamed } from './dossierAgreed';
import { layersIn, treatmentsIn } from './dossierTime';

const words = w.paperDossier;

/** Every layer of every zone, in the order in which they were laid; a log that is missing is said to be. */
export const layerLog = (file: CampaignOnPaper): PaperPiece => {
  const layers = layersIn(file);
  if (layers.length === 0) return section(words.layers, say(words.layersNone));
  const zones = file.record.zones.filter(({ thing }) => layers.some(({ body }) => body.zone === thing));
  return section(
    words.layers,
    say(words.layersLead),
    zones.map((zone) => ofZone(file, zone, layersOf(layers, zone.thing))),
    say(words.layersHow, 'small'),
  );
};

const ofZone = (file: CampaignOnPaper, zone: Thing<'zone'>, layers: readonly Thing<'layer'>[]): PaperPiece => {
  const { layerColumns: heads } = words;
  const photos = layers.flatMap(({ body }) => body.photos ?? []);
  return under(
    words.layersOfZone(zoneLabel(zone)),
    table(
      words.layersCaption(whole(layers.length)),
      [
        { head: heads.order, kind: 'narrow' },
        { head: heads.when },
        { head: heads.solution },
        { head: heads.tool },
        { head: heads.surface, kind: 'number' },
        { head: heads.passes, kind: 'number' },
        { head: heads.air },
        { head: heads.by },
      ],
      layers.map(({ body }) => [
        whole(body.order),
        [date(body.date), body.time].filter(Boolean).join(', '),
        [body.solution, body.strength, body.note, sameAs(file, body.sameAs)].filter(Boolean).join('; '),
        toolName(body.tool),
        body.surface === undefined ? '' : measure('temperature', body.surface),
        body.passes === undefined ? '' : whole(body.passes),
        [body.air, body.rinsed && words.rinsed].filter(Boolean).join('; '),
        body.by,
      ]),
    ),
    photosNamed(file, photos, zoneLabel(zone)),
  );
};

const toolName = (tool: string | undefined): string | undefined =>
  tool === undefined ? undefined : ((w.layers.tools as Readonly<Record<string, string>>)[tool] ?? tool);

const sameAs = (file: CampaignOnPaper, thing: string | undefined): string => {
  const source = layersIn(file).find((layer) => layer.thing === thing);
  return source ? words.sameAs(lettersOf(file.record, [source.body.zone])) : '';
};

/** What the logbook holds of the days of work. */
export const logbookTold = (file: CampaignOnPaper): PaperPiece => {
  const { record } = file;
  const done = treatmentsIn(file);
  const { logColumns: heads } = words;
  if (done.length === 0) return section(words.logbook, say(words.logbookNone));
  return section(
    words.logbook,
    table(
      words.logbookCaption,
      [
        { head: heads.when },
        { head: heads.what },
        { head: heads.where },
        { head: heads.with },
        { head: heads.by },
        { head: heads.note },
      ],
      done.map(({ body }) => [
        whenDone(body),
        treatmentOf(body.type)?.name ?? body.type,
        whereDone(record, body.zones),
        [withWhat(body), body.coats && w.logbook.coatsOf(whole(body.coats))].filter(Boolean).join(', '),
        whoDid(body),
        [body.note, body.left && w.logbook.leftOf(body.left)].filter(Boolean).join(' '),
      ]),
    ),
  );
};

/** Everything ever taken off the work for good. */
export const ledgerTold = ({ record }: CampaignOnPaper): PaperPiece => {
  const { lines, most } = metalLedger(record);
  const { metalColumns: heads } = words;
  if (lines.length === 0) return section(words.metal, say(words.metalNone));
  return section(
    words.metal,
    table(
      words.metalCaption,
      [{ head: heads.when }, { head: heads.what }, { head: heads.area, kind: 'number' }, { head: heads.by }],
      lines.map(({ treatment: { body }, m2 }) => [
        whenDone(body),
        listed([treatmentOf(body.type)?.name ?? body.type]),
        m2 ? area(m2.value) : w.parts.notKnown,
        whoDid(body),
      ]),
    ),
    most > 0 && say(words.stripped(most)),
  );
};
