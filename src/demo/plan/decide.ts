import { addPlanned, setPlanned } from '../../actions';
import { type BodyOf, nameOf } from '../../engine/record';
import { done } from '../walkRound';
import { type DemoEvent, madeBefore, type PlantedGarden } from './plantedGarden';

type Body = BodyOf<'decision'>;
type Wire = Body['tripwires'][number];

/** A decision of the garden, with its zones still by letter. */
type Decided = Pick<
  Body,
  'title' | 'option' | 'chosen' | 'refused' | 'evidence' | 'consulted' | 'dissent' | 'review' | 'signed'
> & {
  readonly wires: readonly (Pick<Wire, 'id' | 'sort' | 'level' | 'times' | 'by'> & { readonly letter?: string })[];
};

const stair = (garden: PlantedGarden): Decided => ({
  title: 'Wax, mend or strip the stair',
  option: madeBefore(garden, 'option SW-02 C'),
  chosen:
    'Strip, hot patina, then wax every year, as soon as the money for the work and for its upkeep is there. Until then wax every May as before.',
  refused: [
    {
      option: madeBefore(garden, 'option SW-02 A'),
      what: 'Yearly wax only',
      why: 'The cheapest in money and the dearest a good month: on the spray band the green stands the day after waxing.',
    },
    {
      option: madeBefore(garden, 'option SW-02 B'),
      what: 'Wax, and local treatment every second year',
      why: 'Ten small steps that cannot be taken back, and the spray band comes back each time.',
    },
  ],
  evidence: [
    'Round of 14 May 2024: green on all nine zones, most on the base ring and the spray band, 60 % each.',
    'Zone H: green stands right after the wax, so no hold has a clean start.',
    'Conservator, April 2021: the colour of 1974 is gone from the upper faces.',
    'Quote of October 2024 for strip, desalting, hot patina and wax, good for 180 days.',
  ],
  consulted: [
    { role: 'Conservator' },
    { role: 'Estate of the artist' },
    { role: 'Treasurer of the board' },
    { role: 'Head of grounds' },
  ],
  dissent: 'Head of grounds: draining the basin for six weeks costs the planting round it a season.',
  wires: [
    { id: 'wax-holds', sort: 'hold over', letter: 'D', level: 6, times: 2 },
    { id: 'stop-word', sort: 'stop word' },
  ],
  review: '2026-11-20',
  signed: [
    { role: 'Steward', on: '2024-11-20' },
    { role: 'Chair of the board', on: '2024-11-20' },
  ],
});

const geese: Decided = {
  title: 'Leave the geese alone',
  chosen: 'No treatment. A round every May, wax every second year, and nothing else.',
  refused: [
    {
      what: 'Wax every year',
      why: 'Nothing comes of it here: the green spots stay under 1 % with wax every second year.',
    },
    { what: 'Take the green spots off', why: 'They are at rest, and rubbing costs more surface than they do.' },
  ],
  evidence: ['Rounds of 2023, 2024 and 2025: green spots under 1 % on the backs, at rest, no zone worse.'],
  consulted: [{ role: 'Conservator' }],
  wires: [
    { id: 'backs', sort: 'green share over', letter: 'A', level: 3 },
    { id: 'worse', sort: 'surely worse' },
  ],
  review: '2027-11-25',
  signed: [{ role: 'Steward', on: '2025-11-25' }],
};

const rope: Decided = {
  title: 'Let visitors polish the rope',
  chosen:
    'People may go on sitting on the bench. Knees, hands and seat may stay bright; the local colour of 2024 is not renewed.',
  refused: [
    { what: 'A fence', why: 'The bench was made to be sat on.' },
    {
      what: 'Local colour every second year',
      why: 'A year of hands wore through it, and each time the bright metal is worked on again.',
    },
  ],
  evidence: ['Round of 13 May 2025: bare metal is back on knees and laps, eleven months after the local colour.'],
  consulted: [{ role: 'Conservator' }, { role: 'Estate of the artist' }],
  dissent: 'Conservator: nobody has measured how much metal the hands take.',
  wires: [
    { id: 'bare', sort: 'bare over', level: 0.6 },
    { id: 'three-years', sort: 'day comes', by: '2028-11-25' },
  ],
  review: '2026-12-01',
  signed: [{ role: 'Steward', on: '2025-11-25' }],
};

const decide = (garden: PlantedGarden, number: string, day: string, said: () => Decided): DemoEvent => ({
  day,
  run: async () => {
    const work = garden.works.get(number);
    const { wires, ...rest } = said();
    const tripwires = wires.map(({ letter, ...wire }) => {
      const zone = letter && work?.zones.get(letter);
      return zone ? { ...wire, zone } : wire;
    });
    const body = { ...rest, sculpture: work?.sculpture ?? '', date: day, tripwires };
    const { thing } = await done(addPlanned(garden.desk, 'decision', body));
    garden.things.set(`decision ${number}`, thing);
  },
});

/** The mounds of October 2025 made one tripwire of the stair go; two days after the conservator's word it was answered. */
const answered = (garden: PlantedGarden): DemoEvent => ({
  day: '2025-11-20',
  run: async () => {
    const { desk, works } = garden;
    const decision = madeBefore(garden, 'decision SW-02');
    const on = '2025-11-20';
    await done(
      setPlanned(desk, 'tripwireAnswer', nameOf.tripwireAnswer(decision, 'stop-word', on), {
        sculpture: works.get('SW-02')?.sculpture ?? '',
        decision,
        tripwire: 'stop-word',
        seen: 'Pale powdery mounds on zone I, base ring, 9 October 2025: ask the conservator.',
        on,
        answer: 'look again',
        why: 'Chloride in I, says the conservator. The proposal gets a desalting step before any colour; the decision stands.',
        by: 'Steward',
      }),
    );
  },
});

/** Decisions with their tripwires, and what was answered. */
export const decideEvents = (garden: PlantedGarden): DemoEvent[] => [
  decide(garden, 'SW-02', '2024-11-20', () => stair(garden)),
  answered(garden),
  decide(garden, 'SW-04', '2025-11-25', () => geese),
  decide(garden, 'SW-05', '2025-11-25', () => rope),
];
