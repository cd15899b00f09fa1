import { type Entry, idPart } from '../../src/engine/record';
import { w } from '../../src/words';
import type { Screen } from './screensOfGarden';

/** Layers, the hot day, inserts near heat and access, of the table with its five lenses and of the stair. */
export function screensOfHotWork(entries: readonly Entry[]): readonly Screen[] {
  const day = entries.find(({ kind }) => kind === 'hotDay')!;
  const campaign = `#/campaign/${idPart(String(day.body.campaign))}`;
  const table = `#/sculpture/${idPart(day.within)}`;
  const stair = entries.find(({ kind, body }) => kind === 'sculpture' && body.number === 'SW-02')!.thing;
  const access = `#/sculpture/${idPart(stair)}/access`;
  const hotDay = `#/hot-work/${idPart(day.thing)}`;
  const { hotWork, insertCare, layers, accessSheet } = w;
  return [
    { name: 'layers', hash: `${campaign}/layers` },
    { name: 'sheet: layer', hash: `${campaign}/layers`, touch: [layers.writeOf('A')], sheet: true },
    { name: 'hot days', hash: `${campaign}/hot-work` },
    { name: 'hot days: rules', hash: `${campaign}/hot-work`, touch: [hotWork.rules] },
    { name: 'sheet: hot day', hash: `${campaign}/hot-work`, touch: [hotWork.add], sheet: true },
    { name: 'hot day', hash: hotDay },
    { name: 'hot day: air', hash: hotDay, touch: [hotWork.air.show] },
    { name: 'inserts and heat', hash: `${table}/inserts` },
    { name: 'inserts: sums', hash: `${table}/inserts`, touch: [insertCare.talk.show] },
    {
      name: 'sheet: insert near heat',
      hash: `${table}/inserts`,
      touch: [insertCare.editOf(insertCare.nameOf('Cast glass, lens L2', 1, 'B'))],
      sheet: true,
    },
    { name: 'access', hash: access },
    { name: 'access: rules', hash: access, touch: [accessSheet.rules] },
    { name: 'sheet: access', hash: access, touch: [accessSheet.edit], sheet: true },
    {
      name: 'access, nothing said',
      hash: `#/sculpture/${idPart(entries.find(({ kind }) => kind === 'sculpture')!.thing)}/access`,
    },
  ];
}
