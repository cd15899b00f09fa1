import { type Entry, idPart } from '../../src/engine/record';
import { w } from '../../src/words';
import type { Screen } from './screensOfGarden';

/** The plan of a year, its lists, the site, incidents, agreements, moves. */
export const screensOfYear = (entries: readonly Entry[]): readonly Screen[] => {
  const { year, incidents, grounds, moves } = w;
  const work = entries.find(({ kind, body }) => kind === 'sculpture' && body.number === 'SW-01');
  const name = work ? `${work.body.number} ${work.body.title}` : '';
  if (!work || idPart(work.thing) === '') throw new Error('The garden has no SW-01.');
  return [
    { name: 'year', hash: '#/year' },
    { name: 'year to come', hash: '#/year/2027' },
    { name: 'sheet: what a work gets', hash: '#/year/2027', touch: [year.changeOf(name)], sheet: true },
    { name: 'sheet: lift day', hash: '#/year', touch: [year.liftAdd], sheet: true },
    { name: 'sheet: verdict', hash: '#/year', touch: [year.verdictSayOf(name)], sheet: true },
    { name: 'packing list', hash: '#/packing' },
    { name: 'briefing', hash: '#/briefing' },
    { name: 'winter close-down', hash: '#/close-down' },
    { name: 'plan of the site', hash: '#/site-plan' },
    { name: 'incidents', hash: '#/incidents' },
    { name: 'sheet: report', hash: '#/incidents', touch: [incidents.report], sheet: true },
    { name: 'sheet: close an incident', hash: '#/incidents', touch: [incidents.close], sheet: true },
    { name: 'agreements', hash: '#/grounds' },
    { name: 'sheet: agreement', hash: '#/grounds', touch: [grounds.add], sheet: true },
    { name: 'moves', hash: '#/moves' },
    { name: 'sheet: move', hash: '#/moves', touch: [moves.add], sheet: true },
  ];
};
