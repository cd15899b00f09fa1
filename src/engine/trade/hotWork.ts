import { named } from './named';
import type { Source } from './source';

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };
const clearance: Source = {
  text: '35 ft (10.7 m): 29 CFR 1910.252(a)(2); NFPA 51B 2003; 29 CFR 1915.504, where 10.7 m is printed. Read on their pages.',
  sure: 'seen',
};

/** One clearance or length of a fire watch that a rule asks for. Shown beside what the day's permit says; never applied in its place. */
export interface HotWorkRule {
  readonly id: string;
  readonly name: string;
  readonly value: number;
  readonly unit: 'm' | 'min';
  readonly source: Source;
}

export const hotWorkRules: readonly HotWorkRule[] = named('hotWorkRules', [
  { id: 'clear zone', name: 'Clear of all that burns, or shielded', value: 10.7, unit: 'm', source: clearance },
  {
    id: 'watch at least',
    name: 'Fire watch after the work, at least',
    value: 30,
    unit: 'min',
    source: { text: '29 CFR 1910.252(a)(2)(iii); 29 CFR 1915.504. Read on their pages.', sure: 'seen' },
  },
  {
    id: 'watch since 2019',
    name: 'Fire watch after the work, newer edition',
    value: 60,
    unit: 'min',
    source: { text: 'NFPA 51B, 2019 edition on.', sure: 'from memory' },
  },
  {
    id: 'watch longest',
    name: 'Looking after it beyond the watch, where the permit asks for it, up to',
    value: 180,
    unit: 'min',
    source: { text: 'NFPA 51B, 2019 edition on.', sure: 'from memory' },
  },
]);

export const hotWorkRule = (id: string): HotWorkRule => {
  const rule = hotWorkRules.find((row) => row.id === id);
  if (!rule) throw new Error(`No rule of hot work is called "${id}".`);
  return rule;
};

/** What a new card starts with: whole metres and minutes, the stricter of the published figures. */
export const hotDayDefaults = { clearZone: 11, watchMinutes: 60 } as const;

/** Looked at and ticked before anything is lit. */
export interface HotCheck {
  readonly id: string;
  readonly name: string;
  readonly source: Source;
}

export const hotChecks: readonly HotCheck[] = named('hotChecks', [
  { id: 'permit', name: 'The permit is here, signed, and for today', source: clearance },
  {
    id: 'clear zone',
    name: 'The clear zone is walked: nothing that burns, no leaves, no rags, no gas below',
    source: clearance,
  },
  {
    id: 'openings',
    name: 'Openings, hollows and the inside of the work looked into: heat goes through metal',
    source: clearance,
  },
  { id: 'extinguisher', name: 'Extinguisher and water at hand, and someone who can use them', source: practice },
  { id: 'watcher', name: 'The fire watcher has nothing else to do, and knows whom to call', source: practice },
  { id: 'no wax', name: 'No wax, solvent or rag within the clear zone', source: practice },
  { id: 'people', name: 'Visitors kept away, paths closed', source: practice },
  { id: 'breath', name: 'Masks as the safety sheets ask: hot nitrates give off brown fumes', source: practice },
  { id: 'inserts', name: 'Inserts out, or kept from heat as their conservator said', source: practice },
]);

/** A limit of what may be breathed, as published. For the talk with those who do the work; their law decides. */
export interface ExposureLimit {
  readonly id: string;
  readonly agent: string;
  readonly why: string;
  /** OSHA permissible limit, NIOSH recommended limit, immediately dangerous: in words, with their unit and time. */
  readonly pel: string;
  readonly rel: string;
  readonly idlh: string;
  readonly source: Source;
}

const niosh: Source = { text: 'Pages of CDC/NIOSH.', sure: 'seen' };

export const exposureLimits: readonly ExposureLimit[] = named('exposureLimits', [
  {
    id: 'nitrogen dioxide',
    agent: 'Nitrogen dioxide',
    why: 'brown fume of hot nitrates',
    pel: '5 ppm (9 mg/m³), never over',
    rel: '1 ppm (1.8 mg/m³), 15 min',
    idlh: '13 ppm; 20 ppm in the document of 1994',
    source: { text: 'NIOSH document, copy read; the 13 ppm of the pocket guide from memory.', sure: 'seen' },
  },
  {
    id: 'nitric acid',
    agent: 'Nitric acid',
    why: 'in some colouring solutions',
    pel: '2 ppm (5 mg/m³), 8 h',
    rel: '2 ppm, 8 h; 4 ppm (10 mg/m³), 15 min',
    idlh: '25 ppm',
    source: niosh,
  },
  {
    id: 'copper fume',
    agent: 'Copper fume',
    why: 'metal heated too far',
    pel: '0.1 mg/m³',
    rel: '0.1 mg/m³',
    idlh: '',
    source: niosh,
  },
  {
    id: 'copper dust',
    agent: 'Copper dust and mist',
    why: 'blasting, brushing, grinding',
    pel: '1 mg/m³',
    rel: '1 mg/m³',
    idlh: '100 mg/m³',
    source: { text: 'NIOSH pocket guide.', sure: 'from memory' },
  },
  {
    id: 'silica',
    agent: 'Crystalline silica, breathable',
    why: 'blasting near stone, casting core left inside',
    pel: '50 µg/m³, 8 h; action at 25',
    rel: '50 µg/m³',
    idlh: '25 mg/m³ cristobalite, 50 quartz',
    source: { text: '29 CFR 1926.1153, read; the last two from memory.', sure: 'seen' },
  },
  {
    id: 'propane',
    agent: 'Propane',
    why: 'torch gas, heavier than air',
    pel: '1000 ppm',
    rel: '1000 ppm',
    idlh: '2100 ppm (10 % of what can burn)',
    source: { text: 'NIOSH pocket guide.', sure: 'from memory' },
  },
]);

/** Surface temperatures that founders and patineurs name for hot colour, degrees Celsius. They set them, nobody else. */
export const patinationHeats = [
  { id: 'foundry', low: 232, high: 246, source: { text: 'Page of a foundry, 450 to 475 °F.', sure: 'seen' } },
  { id: 'gallery', low: 177, high: 177, source: { text: 'Page of a gallery, about 350 °F.', sure: 'seen' } },
  { id: 'usual', low: 93, high: 204, source: { text: 'Usually said, 200 to 400 °F.', sure: 'from memory' } },
] as const satisfies readonly { id: string; low: number; high: number; source: Source }[];
