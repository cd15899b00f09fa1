/** The round: starting it, walking it zone by zone, ending it. */
export { EndRoundScreen } from './EndRound';
export { RoundScreen } from './Round';
export { StartRoundScreen } from './StartRound';
export { ZoneScreen } from './Zone';
