/** What is planned, paid, prepared and watched: one way to keep it, one way to ask for it. */
export { type PlannedBody, type PlannedKind, plannedKinds } from '../../engine/record';
export { addPlanned, editPlanned, removePlanned, setPlanned } from './planned';
export { type Planned, plannedAll, plannedOf, plannedOfCollection } from './questions';
export { reportIncident } from './reportIncident';
export { type WorkAround, type YearAround, yearAround } from './yearAround';
