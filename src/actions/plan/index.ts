/** What is planned, paid, prepared and watched: one way to keep it, one way to ask for it. */
export { type PlannedBody, type PlannedKind, plannedKinds } from '../../engine/record';
export { type AirOfDay, airOfDay, keepAirOfDay } from './airOfDay';
export { type DueThings, dueThings } from './due';
export { fireWatch } from './fireWatch';
export {
  closeHotDay,
  endHotWork,
  goOnWithHotWork,
  openHotDayAgain,
  sayWatchKept,
  type WatchWord,
} from './hotDay';
export { momentHere } from './momentHere';
export { addPlanned, editPlanned, removePlanned, setPlanned } from './planned';
export { productStore } from './productStore';
export { type Planned, plannedAll, plannedOf, plannedOfCollection } from './questions';
export { replaceDecision } from './replaceDecision';
export { reportIncident } from './reportIncident';
export { type TripwiresMet, tripwiresMet } from './tripwires';
export { type WatchOfCampaign, watchOfCampaign } from './watchOf';
export { type WorkAround, type YearAround, yearAround } from './yearAround';
