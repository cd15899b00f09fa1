import type { BodyOf } from '../../engine/record';

type Care = BodyOf<'insertCare'>;
type Bears = Pick<Care, 'bedding' | 'fixings' | 'condition' | 'spare' | 'method' | 'shield' | 'watcher'> &
  Pick<Care, 'most' | 'mostDifference' | 'limitBy' | 'limitDate' | 'takenOut' | 'putBack'>;

type Sheet = BodyOf<'accessSheet'>;
export type Access = Pick<Sheet, 'height' | 'plinth' | 'equipment' | 'outreach' | 'ground' | 'bears' | 'waterDepth'> &
  Pick<Sheet, 'closures' | 'power' | 'water' | 'permits' | 'competent' | 'days' | 'rescue'>;

const out: Bears = {
  ...{ bedding: 'gasket', fixings: 'Six screws through the bezel', method: 'remove' },
  ...{ takenOut: '2023-09-04', putBack: '2023-09-22', watcher: 'Steward', spare: false },
};
const kept: Bears = {
  ...{ bedding: 'not known', fixings: 'Bezel seized', most: 60, mostDifference: 40, method: 'shield' },
  ...{ limitBy: { role: 'Glass conservator' }, limitDate: '2023-08-30', watcher: 'Helper' },
  shield: 'Wet felt and a sheet of copper before it, as the foundry put it in writing; a sensor at the rim.',
};

/** Five lenses; two of them seized. */
export const limits: Readonly<Record<string, Bears>> = {
  L1: out,
  L2: kept,
  L3: out,
  L4: out,
  L5: { ...kept, condition: 'One edge chip at the lower left, 4 mm, known since before 2023.' },
};

/** Degrees Celsius on 12 September 2023, in order of time. */
export const readings: Readonly<Record<'L2' | 'L5', readonly number[]>> = {
  L2: [19, 22, 27, 31, 36, 41, 47, 44, 40, 35, 29, 24],
  L5: [17, 18, 20, 23, 26, 29, 32, 33, 31, 28, 25, 22],
};

/** Twelve times from 10:05 to 11:40; the second lens a minute after the first. */
export const timeOf = (i: number, lens: string): string => {
  const minute = 605 + Math.round((i * 95) / 11) + (lens === 'L5' ? 1 : 0);
  return `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
};

/** Made up, as a foundry might say it. */
export const laid: readonly (Pick<
  BodyOf<'layer'>,
  'solution' | 'strength' | 'tool' | 'surface' | 'passes' | 'rinsed' | 'air'
> & {
  readonly time: string;
})[] = [
  {
    ...{ solution: 'Liver of sulphur, cold ground', strength: '3 %', tool: 'brush', passes: 1, rinsed: true },
    ...{ air: '15 °C, dry, no wind', time: '09:20' },
  },
  { solution: 'Ferric nitrate', strength: '8 %', tool: 'brush', surface: 178, passes: 4, time: '10:10' },
  { solution: 'Ferric nitrate', strength: '12 %', tool: 'stipple', surface: 184, passes: 3, time: '13:05' },
  {
    solution: 'Ferric nitrate with a little cupric',
    strength: '12 : 1',
    tool: 'spray',
    surface: 180,
    passes: 2,
    time: '15:30',
  },
];

export const tableAccess: Access = {
  ...{ height: 1.9, plinth: 0.2, equipment: 'step', ground: 'Granite setts, level.', bears: 'yes' },
  ...{ power: 'Post at the ticket hut, 40 m.', closures: 'Path on the quay side, two days.', days: 12 },
  permits: 'Hot work: fire office of the harbour, one permit a day.',
};

export const stairAccess: Access = {
  ...{ height: 4.9, plinth: 1.1, equipment: 'scaffold', outreach: 2.4, waterDepth: 0.6, bears: 'not known', days: 15 },
  ...{ ground: 'Basin floor under 0.35 to 0.6 m of water; feed pipe along the north edge.' },
  ...{
    closures: 'Basin drained, quay path narrowed, no loading at spring tide.',
    power: 'Pump cabinet, to be locked off.',
  },
  ...{ water: 'Mains at the ferry hut.', permits: 'Scaffold licence of the port; hot work for each day.' },
  ...{ competent: { role: 'Scaffold firm' }, rescue: 'Two people, a line, the gate on the landward side kept free.' },
};
