import { spoken } from '../tongue';

/** The card for those at work on the site, and what it shares with the papers of a campaign: inserts, access, hot work. */
export const paperSite = spoken('paperSite', 'paperSite', {
  title: 'Site card',
  reader: 'the crew on site and helpers',
  heading: (work: string) => `On site: ${work}`,
  lead: 'Read this before anything is touched. It hangs where everybody passes.',

  never: 'Do not',
  untouched: (zone: string, kinds: string) =>
    `Zone ${zone}: not washed, not waxed, not touched. Seen there: ${kinds}. Ask the conservator first.`,
  usual: 'The usual list; nobody has said it of this work yet.',
  inserts: 'Inserts',
  insertsNone: 'No inserts are on record. If you find one, stop and say so.',
  columns: {
    insert: 'Insert',
    removable: 'Comes out? Set in',
    kept: 'Kept from heat by',
    limit: 'Limit',
    watcher: 'Watched by',
    state: 'Known damage',
  },
  noLimit: 'none set: no heat near it',
  comesOut: 'none set: comes out before any heat',
  noLimitLong: 'No limit set by a named expert',
  removableShort: { yes: 'yes', no: 'no', 'not known': 'not known' },
  limit: (limits: readonly string[], who: string, day: string) =>
    `${limits.join(', ')}${who && `; set by ${who}${day && `, ${day}`}`}`,
  limitMost: (degrees: string) => `at most ${degrees}`,
  limitApart: (kelvin: string) => `two sides at most ${kelvin} apart`,
  limitRate: (kelvin: string) => `at most ${kelvin} in a minute`,
  outFrom: (from: string, to: string) => (to === '' ? `out since ${from}` : `out from ${from} to ${to}`),
  nobodyKnows:
    'Nobody can say from a desk how near a flame may come to glass, enamel or stone. What is not known to bear heat comes out first, or its specialist says the limit and the way.',

  stop: 'Stop, leave everything as it is, and call, if',
  stopWho: 'Anyone may stop the work. Going on is decided by the conservator and the curator together.',
  contacts: 'Whom to call',
  contactsLabel: 'Whom to call, with numbers',
  contactsHint: 'Curator, conservator, safety on site, fire, first aid. One a line.',
  contactsRoom: 'Name and number',

  site: 'Water, power, ways',
  water: 'Water',
  power: 'Power',
  closures: 'Closed',
  ground: 'Ground',
  bears: 'Bears machines',
  rescue: 'If somebody has to be brought down',
  competent: 'Competent person',
  hours: 'Hours of work',
  hoursLabel: 'Hours of work',
  hoursHint: 'Days, hours, quiet times, when the public is there.',
  waste: 'Run-off and waste',
  wasteLabel: 'Run-off and waste',
  wasteHint: 'Where water goes, what is caught, who takes it away.',

  hot: 'Hot work: nothing is lit before',
  hotPermit: (permit: string, who: string) => `Permit: ${permit}. Authorised by ${who}.`,
  hotClear: (metres: string) => `Kept clear all round: ${metres}, or shielded.`,
  hotWatch: (minutes: string) =>
    `Fire watch after the last flame: ${minutes} minutes, by someone who does nothing else.`,
  hotWatcher: (who: string) => `Fire watcher: ${who}.`,
  hotNone: 'No day of hot work is written down. Without a permit for the day no flame is lit.',
  hotRules:
    'Published rules of other countries stand here as a floor. The permit, the fire authority and the insurer decide.',
  hotRoom: ['Permit of today', 'Fire watcher today'],
  ruleColumns: { rule: 'Rule', asks: 'Asks for', from: 'From' },
  minutes: (n: string) => `${n} min`,

  access: {
    height: 'Height of the work',
    plinth: 'Stands on',
    equipment: 'Reached by',
    reach: 'A person has to be lifted by',
    outreach: 'Reach over water or planting',
    ground: 'Ground',
    bears: 'Does the ground bear machines?',
    waterDepth: 'Depth of water',
    closures: 'To be closed or drained',
    power: 'Power',
    water: 'Water',
    permits: 'Permits',
    competent: 'Competent person',
    days: 'Days on site',
    rescue: 'If somebody has to be brought down',
    note: 'Also',
  },
  bearsWords: { yes: 'yes', no: 'no', 'not known': 'not known: to be found out before anything heavy comes' },
  reachHow: (standing: string) => `plinth and work less ${standing} that is reached standing`,
  days: (asked: string, withWeather: string) =>
    `${asked}; ${withWeather} with time lost to weather (three tenths more, our own choice)`,
  accessNone: 'No access sheet is written for this work yet.',
  accessAsk: 'How it is reached safely is for a competent person on site to say; local law decides.',

  lacks: {
    contacts: 'whom to call',
    access: 'an access sheet',
    methods: 'a list of its own of what may not be done to this work',
    limits: (insert: string) => `a limit or a way to keep ${insert} from heat`,
    hours: 'hours of work',
  },
});
