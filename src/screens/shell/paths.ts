import { idPart } from '../../engine/record';

const part = (thing: string): string => encodeURIComponent(idPart(thing));

/** Where each screen is, from the names of things. Addresses carry the id part only. */
export const pathTo = {
  sculptures: () => '/',
  welcome: () => '/welcome',
  newSculpture: () => '/sculpture/new',
  sculpture: (sculpture: string) => `/sculpture/${part(sculpture)}`,
  editSculpture: (sculpture: string) => `/sculpture/${part(sculpture)}/edit`,
  zones: (sculpture: string) => `/sculpture/${part(sculpture)}/zones`,
  newZone: (sculpture: string) => `/sculpture/${part(sculpture)}/zone/new`,
  zone: (sculpture: string, zone: string) => `/sculpture/${part(sculpture)}/zone/${part(zone)}`,
  logbook: (sculpture: string) => `/sculpture/${part(sculpture)}/logbook`,
  thenAndNow: (sculpture: string, earlier?: string, later?: string) =>
    `/sculpture/${part(sculpture)}/then-and-now${earlier && later ? `/${part(earlier)}/${part(later)}` : ''}`,
  overTime: (sculpture: string) => `/sculpture/${part(sculpture)}/over-time`,
  agreement: (sculpture: string, one?: string, other?: string) =>
    `/sculpture/${part(sculpture)}/agreement${one && other ? `/${part(one)}/${part(other)}` : ''}`,
  map: (sculpture: string, elevation?: string) =>
    `/sculpture/${part(sculpture)}/map${elevation ? `/${part(elevation)}` : ''}`,
  outline: (sculpture: string, elevation: string) => `/sculpture/${part(sculpture)}/outline/${part(elevation)}`,
  stations: (sculpture: string) => `/sculpture/${part(sculpture)}/stations`,
  shots: (sculpture: string) => `/sculpture/${part(sculpture)}/shots`,
  /** Cards of one work, or of all. */
  cards: (sculpture?: string) => `/cards${sculpture ? `/${part(sculpture)}` : ''}`,
  photos: (sculpture: string) => `/sculpture/${part(sculpture)}/photos`,
  viewfinder: (sculpture: string, station: string) => `/sculpture/${part(sculpture)}/viewfinder/${part(station)}`,
  compare: (sculpture: string, one?: string, other?: string) =>
    `/sculpture/${part(sculpture)}/compare${one && other ? `/${part(one)}/${part(other)}` : ''}`,
  strip: (sculpture: string, station: string) => `/sculpture/${part(sculpture)}/strip/${part(station)}`,
  /** `about` is a zone or a sentinel square. */
  measure: (photo: string, about: string) => `/measure/${part(photo)}/${about.split('/')[0]}/${part(about)}`,
  colour: (sculpture: string) => `/sculpture/${part(sculpture)}/colour`,
  look: (sculpture: string) => `/sculpture/${part(sculpture)}/look`,
  startRound: (sculpture: string) => `/sculpture/${part(sculpture)}/round/start`,
  round: (round: string) => `/round/${part(round)}`,
  zoneInRound: (round: string, zone: string) => `/round/${part(round)}/zone/${part(zone)}`,
  endRound: (round: string) => `/round/${part(round)}/end`,
  nextSteps: () => '/next-steps',
  holds: () => '/holds',
  walk: () => '/walk',
  eyeCheck: () => '/eye-check',
  place: () => '/place',
  carry: () => '/carry',
  settle: () => '/carry/settle',
  bring: () => '/carry/bring',
  inStep: () => '/carry/in-step',
  keeping: () => '/keeping',
  method: () => '/method',
  settings: () => '/settings',
} as const;
