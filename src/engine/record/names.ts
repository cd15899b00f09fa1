/**
 * Things have names that two tablets agree on, so that two people who record the same thing
 * make two versions of one, never a double that counts twice.
 */
const tail = (name: string): string => name.slice(name.indexOf('/') + 1);

export type Origin = 'dirt' | 'stain' | 'metal';

export const nameOf = {
  collection: (id: string) => `collection/${id}`,
  scale: (collection: string) => `scale/${tail(collection)}`,
  holdRules: (collection: string) => `holdRules/${tail(collection)}`,
  climate: (collection: string) => `climate/${tail(collection)}`,
  eyeCheck: (id: string) => `eyeCheck/${id}`,
  erasure: (id: string) => `erasure/${id}`,
  surveyor: (id: string) => `surveyor/${id}`,
  /** The person's name, apart from the pseudonym. */
  personName: (surveyor: string) => `name/${tail(surveyor)}`,
  sculpture: (id: string) => `sculpture/${id}`,
  place: (sculpture: string) => `place/${tail(sculpture)}`,
  access: (sculpture: string) => `access/${tail(sculpture)}`,
  insert: (id: string) => `insert/${id}`,
  insertValue: (insert: string) => `insertValue/${tail(insert)}`,
  elevation: (id: string) => `elevation/${id}`,
  zone: (id: string) => `zone/${id}`,
  round: (id: string) => `round/${id}`,
  visit: (round: string, zone: string) => `visit/${tail(round)}/${tail(zone)}`,
  finding: (round: string, zone: string, kind: string, origin: Origin) =>
    `finding/${tail(round)}/${tail(zone)}/${kind}/${origin}`,
  /** A zone asked again at the end of a round. */
  rerating: (round: string, zone: string) => `rerating/${tail(round)}/${tail(zone)}`,
  /** Classes set by a named person for a zone or a sculpture in a round. */
  classSet: (round: string, about: string) => `classSet/${tail(round)}/${about}`,
  personCheck: (id: string) => `personCheck/${id}`,
  look: (id: string) => `look/${id}`,
  treatment: (id: string) => `treatment/${id}`,
  interpretation: (id: string) => `interpretation/${id}`,
  photo: (sha256: string) => `photo/${sha256}`,
  outline: (elevation: string, zone: string) => `outline/${tail(elevation)}/${tail(zone)}`,
  runOff: (from: string, to: string) => `runOff/${tail(from)}/${tail(to)}`,
  station: (id: string) => `station/${id}`,
  sentinel: (id: string) => `sentinel/${id}`,
  photoFit: (photo: string, onto: string) => `photoFit/${tail(photo)}/${tail(onto)}`,
  /** One a photo, zone or sentinel, kind and way of measuring: measured again, it is said anew. */
  measure: (photo: string, about: string, kind: string, method: string) =>
    `measure/${tail(photo)}/${about}/${kind}/${method}`,
  reading: (id: string) => `reading/${id}`,
  agreedColour: (id: string) => `agreedColour/${id}`,
  methodSheet: (sculpture: string) => `methodSheet/${tail(sculpture)}`,
  weather: (id: string) => `weather/${id}`,
  product: (id: string) => `product/${id}`,
  incident: (id: string) => `incident/${id}`,
  move: (id: string) => `move/${id}`,
  groundsAgreement: (id: string) => `groundsAgreement/${id}`,
  yearPlan: (collection: string, year: number) => `yearPlan/${tail(collection)}/${year}`,
  sitePlan: (collection: string) => `sitePlan/${tail(collection)}`,
  yearVerdict: (sculpture: string, year: number) => `yearVerdict/${tail(sculpture)}/${year}`,
  /** `of` is the day of packing, or the year of a close-down. */
  listTicks: (list: string, of: string) => `listTicks/${list}/${of}`,
  task: (id: string) => `task/${id}`,
  dueAnswered: (key: string) => `dueAnswered/${key}`,
  moneyRules: (collection: string) => `moneyRules/${tail(collection)}`,
  option: (id: string) => `option/${id}`,
  quote: (id: string) => `quote/${id}`,
  fund: (id: string) => `fund/${id}`,
  gift: (id: string) => `gift/${id}`,
  decision: (id: string) => `decision/${id}`,
  tripwireAnswer: (decision: string, tripwire: string, on: string) =>
    `tripwireAnswer/${tail(decision)}/${tripwire}/${on}`,
  campaign: (id: string) => `campaign/${id}`,
  cause: (id: string) => `cause/${id}`,
  quantities: (campaign: string) => `quantities/${tail(campaign)}`,
  bid: (id: string) => `bid/${id}`,
  bidCriteria: (campaign: string) => `bidCriteria/${tail(campaign)}`,
  /** `scorer` is the id in the criteria. */
  bidScore: (campaign: string, scorer: string) => `bidScore/${tail(campaign)}/${scorer}`,
  completeness: (campaign: string, of: string, about: string) => `completeness/${tail(campaign)}/${of}/${about}`,
  approval: (id: string) => `approval/${id}`,
  colourCard: (id: string) => `colourCard/${id}`,
  layer: (id: string) => `layer/${id}`,
  hotDay: (id: string) => `hotDay/${id}`,
  insertCare: (insert: string) => `insertCare/${tail(insert)}`,
  insertReading: (id: string) => `insertReading/${id}`,
  insertAfter: (hotDay: string, insert: string) => `insertAfter/${tail(hotDay)}/${tail(insert)}`,
  accessSheet: (sculpture: string) => `accessSheet/${tail(sculpture)}`,
  /** One a paper, place in it and thing or year it is about: written again, it is said anew. */
  paperText: (paper: string, part: string, about: string) => `paperText/${paper}/${part}/${about}`,
  paperIssued: (id: string) => `paperIssued/${id}`,
  keptWhere: (id: string) => `keptWhere/${id}`,
} as const;

/** The series a finding belongs to: the same kind and origin in the same zone, over all rounds. */
export const seriesOf = (zone: string, kind: string, origin: string): string => `${tail(zone)}/${kind}/${origin}`;

/** The id part of a thing's name: everything after the kind. */
export const idPart = tail;
