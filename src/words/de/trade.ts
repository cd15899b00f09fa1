import type { NamesOfTrade } from '../../engine/trade';
import { kindsInTheMetal, kindsOnTheSurface } from './tradeKinds';
import { kindsAround } from './tradeKindsAround';
import { tradeOfCare } from './tradeOfCare';
import { tradeOfHeat } from './tradeOfHeat';
import { tradeOfPlaces } from './tradeOfPlaces';
import { tradeOfWork } from './tradeOfWork';
import { tradeOfZones } from './tradeOfZones';

/** Names of the trade in German. To be looked through by a native speaker who knows metal conservation. */
export const namesOfTrade: NamesOfTrade = {
  kinds: { ...kindsOnTheSurface, ...kindsInTheMetal, ...kindsAround },
  ...tradeOfZones,
  ...tradeOfCare,
  ...tradeOfWork,
  ...tradeOfPlaces,
  ...tradeOfHeat,
  categoriesOfAir: {
    C1: { word: 'unbedeutend' },
    C2: { word: 'gering' },
    C3: { word: 'mäßig' },
    C4: { word: 'stark' },
    C5: { word: 'sehr stark' },
    CX: { word: 'extrem' },
  },
};
