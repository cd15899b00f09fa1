import type { NamesOfTrade } from '../../engine/trade';

/** Names of the trade in German. To be looked through by a native speaker who knows metal conservation. */
export const namesOfTrade: NamesOfTrade = {};
