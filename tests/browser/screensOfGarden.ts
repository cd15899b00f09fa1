import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { type Entry, idPart } from '../../src/engine/record';
import { w } from '../../src/words';
import { screensOfCampaigns } from './screensOfCampaigns';
import { screensOfCare } from './screensOfCare';
import { screensOfDecisions } from './screensOfDecisions';
import { screensOfFunds } from './screensOfFunds';
import { screensOfHotWork } from './screensOfHotWork';
import { screensOfMoney } from './screensOfMoney';
import { screensOfPapers } from './screensOfPapers';
import { screensOfYear } from './screensOfYear';
import { built } from './server';

export interface Screen {
  /** What the screen is, for the name of a fault. */
  readonly name: string;
  readonly hash: string;
  /** On the ladder: larger controls, further apart. */
  readonly field?: true;
  /** Names of buttons, or of tiles of a choice, to touch once the screen is there; one that is not there has been touched before. */
  readonly touch?: readonly string[];
  /** The last touch opens a sheet over it. */
  readonly sheet?: true;
}

/** The invented garden as the build holds it. */
export const gardenFile = (): { collection: string; entries: Entry[] } =>
  JSON.parse(gunzipSync(readFileSync(join(built, 'demo', 'demo.survey.bin'))).toString('utf8'));

/** A work of the garden in walking order, for a round that is begun and left open. */
export const workToWalk = (entries: readonly Entry[]) => {
  const work = entries.filter((e) => e.kind === 'sculpture')[1]!;
  const zones = entries
    .filter((e) => e.kind === 'zone' && e.within === work.thing)
    .map(({ thing, body }) => ({
      thing,
      letter: String(body.letter),
      name: String(body.name),
      order: Number(body.order),
    }))
    .sort((a, b) => a.order - b.order);
  return { title: String(work.body.title), day: '2026-10-12', zones };
};

/** What the pad of an open zone asks, each on a zone of its own, so that coming back finds it asked again. */
export function screensOfPad(round: string, zones: readonly { readonly thing: string }[]): readonly Screen[] {
  const at = (i: number) => `#/round/${round}/zone/${idPart(zones[i]!.thing)}`;
  const { zone, group } = w.round;
  return [
    { name: 'pad: how much', hash: at(0), field: true },
    { name: 'pad: findings', hash: at(1), field: true, touch: [zone.backToList] },
    { name: 'pad: spray bottle', hash: at(5), field: true, touch: [zone.backToList, w.round.beading.do], sheet: true },
    { name: 'pad: note', hash: at(6), field: true, touch: [zone.backToList, w.round.card.note], sheet: true },
    { name: 'pad: which kind', hash: at(2), field: true, touch: [zone.backToList, group.green] },
    { name: 'pad: why not', hash: at(3), field: true, touch: [zone.notReached] },
    { name: 'pad: gone', hash: at(4), field: true, touch: [zone.nothing] },
    { name: 'walk', hash: `#/round/${round}`, field: true },
  ];
}

/** What opens over a screen. */
const sheets = (work: string, zone: string): readonly Screen[] => {
  const { sculptures, logbook, settings } = w;
  return [
    { name: 'sheet: start your own', hash: '#/welcome', touch: [sculptures.welcome.own], sheet: true },
    { name: 'sheet: danger', hash: `#/sculpture/${work}`, touch: [sculptures.check.open], sheet: true },
    { name: 'sheet: insert', hash: `#/sculpture/${work}`, touch: [w.inserts.add], sheet: true },
    { name: 'sheet: join zones', hash: `#/sculpture/${work}/zones`, touch: [sculptures.zone.join], sheet: true },
    {
      name: 'sheet: split zone',
      hash: `#/sculpture/${work}/zone/${zone}`,
      touch: [sculptures.zone.split],
      sheet: true,
    },
    { name: 'sheet: entry', hash: `#/sculpture/${work}/logbook`, touch: [logbook.add], sheet: true },
    { name: 'sheet: person', hash: '#/settings', touch: [settings.addPerson], sheet: true },
  ];
};

/** What is photographed: of the work that has six years of one view. */
const photographed = (entries: readonly Entry[]): readonly Screen[] => {
  const stair = entries.find(({ kind, body }) => kind === 'sculpture' && body.number === 'SW-02')!.thing;
  const of = (kind: string) => entries.filter((e) => e.kind === kind && !e.gone && e.within === stair);
  const id = idPart(stair);
  const elevation = idPart(of('elevation')[0]!.thing);
  const station = idPart(of('station')[0]!.thing);
  const views = of('photo').filter(({ body }) => body.station === of('station')[0]!.thing);
  const [first, last] = [idPart(views[0]!.thing), idPart(views.at(-1)!.thing)];
  const square = of('photo').find(({ body }) => body.sentinel)!;
  const zone = idPart(of('zone')[0]!.thing);
  return [
    { name: 'zone map', hash: `#/sculpture/${id}/map` },
    { name: 'outlines', hash: `#/sculpture/${id}/outline/${elevation}` },
    { name: 'stations', hash: `#/sculpture/${id}/stations` },
    { name: 'shot list', hash: `#/sculpture/${id}/shots` },
    { name: 'cards', hash: `#/cards/${id}` },
    { name: 'sheet: station', hash: `#/sculpture/${id}/stations`, touch: [w.stations.add], sheet: true },
    { name: 'sheet: square', hash: `#/sculpture/${id}/stations`, touch: [w.stations.squares.add], sheet: true },
    { name: 'cards of all', hash: '#/cards' },
    { name: 'photos', hash: `#/sculpture/${id}/photos` },
    { name: 'viewfinder', hash: `#/sculpture/${id}/viewfinder/${station}`, field: true },
    { name: 'compare: which', hash: `#/sculpture/${id}/compare` },
    { name: 'compare', hash: `#/sculpture/${id}/compare/${first}/${last}` },
    { name: 'strip', hash: `#/sculpture/${id}/strip/${station}` },
    { name: 'measure a zone', hash: `#/measure/${last}/zone/${zone}` },
    {
      name: 'measure a square',
      hash: `#/measure/${idPart(square.thing)}/sentinel/${idPart(String(square.body.sentinel))}`,
    },
    { name: 'colour, nothing read', hash: `#/sculpture/${id}/colour` },
  ];
};

/** What an instrument read, and what opens over it. */
const read = (entries: readonly Entry[]): readonly Screen[] => {
  const hash = `#/sculpture/${idPart(entries.find(({ kind }) => kind === 'reading')!.within)}/colour`;
  const { colour } = w;
  return [
    { name: 'colour', hash },
    { name: 'sheet: reading', hash, touch: [colour.addReading], sheet: true },
    { name: 'sheet: spot read again', hash, touch: [colour.readAgain], sheet: true },
    { name: 'sheet: agreed colour', hash, touch: [colour.addAgreed], sheet: true },
  ];
};

/** Every screen of the app, with something of the garden on it. */
export function screensOfGarden(entries: readonly Entry[]): readonly Screen[] {
  const of = (kind: string, within?: string) =>
    entries.filter((e) => e.kind === kind && !e.gone && (within === undefined || e.within === within));
  const work = of('sculpture')[0]!.thing;
  const id = idPart(work);
  const twice = idPart(of('round').find(({ body }) => body.apartFrom)!.within);
  const rounds = of('round', work);
  const round = idPart(rounds.at(-1)!.thing);
  const zones = of('zone', work).map(({ thing }) => idPart(thing));
  const visited = of('visit', work).filter(({ body }) => body.round === rounds.at(-1)!.thing);
  const zone = idPart(String(visited.find(({ body }) => body.state === 'found')!.body.zone));
  return [
    { name: 'sculptures', hash: '#/' },
    { name: 'welcome', hash: '#/welcome' },
    { name: 'add a sculpture', hash: '#/sculpture/new' },
    { name: 'sculpture', hash: `#/sculpture/${id}` },
    { name: 'edit sculpture', hash: `#/sculpture/${id}/edit` },
    { name: 'zones', hash: `#/sculpture/${id}/zones` },
    { name: 'add a zone', hash: `#/sculpture/${id}/zone/new` },
    { name: 'edit zone', hash: `#/sculpture/${id}/zone/${zones[0]}` },
    { name: 'logbook', hash: `#/sculpture/${id}/logbook` },
    { name: 'then and now', hash: `#/sculpture/${id}/then-and-now` },
    { name: 'over the years', hash: `#/sculpture/${id}/over-time` },
    { name: 'two surveyors', hash: `#/sculpture/${twice}/agreement` },
    { name: 'two surveyors, none', hash: `#/sculpture/${id}/agreement` },
    { name: 'walk past all works', hash: '#/walk', field: true },
    { name: 'walk: setting', hash: '#/walk', field: true, touch: [w.walk.settingChange] },
    { name: 'holds', hash: '#/holds' },
    { name: 'place', hash: '#/place' },
    { name: 'place: entry', hash: '#/place', touch: [w.place.change] },
    { name: 'look', hash: `#/sculpture/${id}/look`, field: true },
    { name: 'start a round', hash: `#/sculpture/${id}/round/start` },
    { name: 'round', hash: `#/round/${round}`, field: true },
    { name: 'zone in round', hash: `#/round/${round}/zone/${zone}`, field: true },
    { name: 'end of round', hash: `#/round/${round}/end`, field: true },
    { name: 'next steps', hash: '#/next-steps' },
    { name: 'carry', hash: '#/carry' },
    { name: 'settle', hash: '#/carry/settle' },
    { name: 'in step', hash: '#/carry/in-step' },
    { name: 'bring: list', hash: '#/carry/bring' },
    { name: 'bring: photos', hash: '#/carry/bring', touch: [w.bring.ways.photos] },
    { name: 'bring: report', hash: '#/carry/bring', touch: [w.bring.ways.report] },
    { name: 'keeping', hash: '#/keeping' },
    { name: 'method', hash: '#/method' },
    { name: 'settings', hash: '#/settings' },
    { name: 'ready for the field', hash: '#/ready' },
    { name: 'eye check', hash: '#/eye-check' },
    {
      name: 'eye check: a patch',
      hash: '#/eye-check',
      touch: [w.eyeCheck.begin, w.eyeCheck.goOn(1, 12)],
    },
    ...photographed(entries),
    ...read(entries),
    ...screensOfCare(entries),
    ...screensOfDecisions(entries),
    ...screensOfYear(entries),
    ...screensOfMoney(entries),
    ...screensOfFunds(entries),
    ...screensOfHotWork(entries),
    ...screensOfCampaigns(entries),
    ...screensOfPapers(entries),
    ...sheets(id, zones[0]!),
    { name: 'no such screen', hash: '#/nowhere' },
  ];
}
