import { addPlanned, editPlanned, keepPhoto, setPlanned } from '../../actions';
import type { QuantityLine } from '../../engine/campaign';
import { moneyOf, noCurrency } from '../../engine/money';
import { type BodyOf, nameOf } from '../../engine/record';
import { bidCriteria, paperItems } from '../../engine/trade';
import { paintPanel } from '../drawing/panel';
import { done } from '../walkRound';
import {
  approvalsOfTheTable,
  bidsForTheStair,
  type DemoCause,
  type DemoPaper,
  limes,
  markedByHand,
  panelPhotos,
  papersOfTheStair,
  papersOfTheTable,
  pricesOfTheTable,
  scorersOfTheStair,
  seenOnTheStair,
  seenOnTheTable,
  spray,
  weepHole,
} from './bidsTables';
import { type DemoEvent, madeBefore, type PlantedGarden, type PlantedWork } from './plantedGarden';

/** Campaigns: causes, quantities, bids, papers, approvals, the agreed colour. */
export const bidsEvents = (garden: PlantedGarden): DemoEvent[] => {
  const stair = garden.works.get('SW-02');
  const table = garden.works.get('SW-03');
  return [...(stair ? eventsOfStair(garden, stair) : []), ...(table ? eventsOfTable(garden, table) : [])];
};

const minor = (units: number): number => moneyOf(units, noCurrency).minor;

const lettersIn = ({ zones }: PlantedWork, letters: string): string[] =>
  [...letters].flatMap((letter) => zones.get(letter) ?? []);

const eventsOfStair = (garden: PlantedGarden, work: PlantedWork): DemoEvent[] => {
  const { desk } = garden;
  const { sculpture } = work;
  const campaign = () => madeBefore(garden, 'campaign SW-02');
  return [
    {
      day: '2024-11-21',
      run: async () => {
        const { thing } = await done(
          addPlanned(desk, 'campaign', {
            ...{ sculpture, title: 'Strip and hot patina', opened: '2024-11-21', step: 'money' },
            ...{ option: garden.things.get('option SW-02 C'), decision: garden.things.get('decision SW-02') },
            fund: garden.things.get('fund SW-02'),
          }),
        );
        garden.things.set('campaign SW-02', thing);
        await findCause(garden, work, spray);
      },
    },
    { day: '2025-04-10', run: () => findCause(garden, work, weepHole) },
    ...papersOfTheStair.map((paper) => ({
      day: paper.letterSent ?? paper.date,
      run: () => lookThrough(garden, sculpture, campaign(), paper),
    })),
    {
      day: '2026-03-02',
      run: async () =>
        keepSchedule(garden, work, campaign(), '2026-03-02', await zoneLines(garden, work, seenOnTheStair)),
    },
    ...bidsForTheStair.map(({ prices, measured = {}, ...bid }) => ({
      day: bid.date,
      run: async () => {
        const letters = [...work.zones.keys()];
        const lines = prices.flatMap((price, i) => {
          const area = measured[letters[i] ?? ''];
          return price === null
            ? []
            : [{ item: `i${i + 1}`, minor: minor(price), ...(area ? { measured: area } : {}) }];
        });
        const body = { sculpture, campaign: campaign(), currency: noCurrency, lines, ...bid };
        garden.things.set(`bid ${bid.who}`, (await done(addPlanned(desk, 'bid', body))).thing);
      },
    })),
    { day: '2026-03-03', run: () => weighBids(garden, sculpture, campaign()) },
    { day: '2026-04-13', run: () => markBids(garden, sculpture, campaign()) },
  ];
};

const eventsOfTable = (garden: PlantedGarden, work: PlantedWork): DemoEvent[] => {
  const { desk, things } = garden;
  const { sculpture } = work;
  const campaign = () => madeBefore(garden, 'campaign SW-03');
  const edit = (day: string, patch: Partial<BodyOf<'campaign'>>): DemoEvent => ({
    day,
    run: async () => void (await done(editPlanned(desk, 'campaign', campaign(), patch))),
  });
  return [
    {
      day: '2023-05-09',
      run: async () => {
        const { thing } = await done(
          addPlanned(desk, 'campaign', {
            ...{ sculpture, title: 'Colour anew', opened: '2023-05-09', step: 'trigger' },
            note: 'The colour of the table top is gone; wax holds no longer than a summer.',
          }),
        );
        things.set('campaign SW-03', thing);
      },
    },
    { day: '2023-06-20', run: () => findCause(garden, work, limes) },
    ...papersOfTheTable.map((paper) => ({
      day: paper.letterSent ?? paper.date,
      run: () => lookThrough(garden, sculpture, campaign(), paper),
    })),
    { day: '2023-06-26', run: () => scheduleOfTable(garden, work, campaign()) },
    edit('2023-09-04', { began: '2023-09-04', step: 'strip' }),
    ...approvalsOfTheTable.map(({ letter, ...said }) => ({
      day: said.date,
      run: async () => {
        const zone = letter === undefined ? undefined : work.zones.get(letter);
        await done(
          addPlanned(desk, 'approval', { sculpture, campaign: campaign(), ...(zone ? { zone } : {}), ...said }),
        );
      },
    })),
    { day: '2023-09-08', run: () => cardOfTable(garden, work, campaign()) },
    edit('2023-09-22', { ended: '2023-09-22', step: 'report' }),
    edit('2023-11-22', {
      ...{ accepted: '2023-11-22', step: 'watch', warrantyUntil: '2026-11-22', warrantyWho: 'Foundry team' },
      warrantyTerms: 'Comes back for colour that fails where it was laid; not for touch, spray or a blow.',
    }),
    { day: '2026-05-12', run: () => panelHeldAgain(garden, work) },
  ];
};

/** The usual weights, said before any bid is in. */
const weighBids = async ({ desk }: PlantedGarden, sculpture: string, campaign: string): Promise<void> =>
  void (await done(
    setPlanned(desk, 'bidCriteria', nameOf.bidCriteria(campaign), {
      ...{ sculpture, campaign, date: '2026-03-03' },
      criteria: bidCriteria.map(({ id, weight }) => ({ id, weight })),
      scorers: scorersOfTheStair.map(({ id, role }) => ({ id, role })),
    }),
  ));

const markBids = async (garden: PlantedGarden, sculpture: string, campaign: string): Promise<void> => {
  const date = '2026-04-13';
  for (const { id, marks } of scorersOfTheStair)
    await done(
      setPlanned(garden.desk, 'bidScore', nameOf.bidScore(campaign, id), {
        ...{ sculpture, campaign, scorer: id, date, handedIn: date },
        marks: bidsForTheStair.flatMap(({ who }, i) =>
          markedByHand.map((criterion, j) => ({
            ...{ bid: madeBefore(garden, `bid ${who}`), criterion },
            mark: Number(marks[i]?.[j]),
          })),
        ),
      }),
    );
};

const findCause = async ({ desk }: PlantedGarden, work: PlantedWork, { letters, ...said }: DemoCause): Promise<void> =>
  void (await done(addPlanned(desk, 'cause', { sculpture: work.sculpture, zones: lettersIn(work, letters), ...said })));

const zoneLines = async (
  { desk }: PlantedGarden,
  { zones }: PlantedWork,
  seen: Readonly<Record<string, string>>,
): Promise<QuantityLine[]> => {
  const lines: QuantityLine[] = [];
  for (const [letter, zone] of zones) {
    const body = (await desk.store.current(zone))?.lead.body as BodyOf<'zone'>;
    const { m2, low, high } = body.versions.at(-1)?.area ?? { m2: 0, low: 0, high: 0 };
    lines.push({
      ...{ id: `i${lines.length + 1}`, zone, name: `${letter} ${body.name}`, task: 'strip and repatinate', unit: 'm2' },
      ...{ amount: m2, low, high, reach: body.reach, condition: seen[letter] },
    });
  }
  return lines;
};

const keepSchedule = async (
  { desk }: PlantedGarden,
  { sculpture }: PlantedWork,
  campaign: string,
  date: string,
  items: QuantityLine[],
): Promise<void> =>
  void (await done(setPlanned(desk, 'quantities', nameOf.quantities(campaign), { sculpture, campaign, date, items })));

/** Zones, the lenses that come out and those that stay, the report; and the one bid that was taken. */
const scheduleOfTable = async (garden: PlantedGarden, work: PlantedWork, campaign: string): Promise<void> => {
  const { desk } = garden;
  const zones = await zoneLines(garden, work, seenOnTheTable);
  const inserts = await desk.store.within(work.sculpture, ['insert']);
  const prices = pricesOfTheTable;
  const lenses = inserts
    .map(({ thing, lead }) => ({ thing, material: String(lead.body.material) }))
    .sort((a, b) => a.material.localeCompare(b.material))
    .map(({ thing, material }) => ({
      ...{ insert: thing, name: `B: ${material}`, unit: 'piece' as const, amount: 1, reach: 'ground' },
      task: /L[25]$/.test(material) ? 'shield and watch' : 'take out and refit',
    }));
  const rest = [
    ...lenses,
    { name: 'Photographs, layer log and report', task: 'report', unit: 'sum' as const, amount: 1 },
  ];
  const items = [...zones, ...rest.map((line, i) => ({ id: `i${zones.length + i + 1}`, ...line }))];
  await keepSchedule(garden, work, campaign, '2023-06-26', items);
  const priceOf = ({ task }: QuantityLine, i: number): number =>
    task === 'report' ? prices.report : task === 'shield and watch' ? prices.shield : (prices.zones[i] ?? prices.out);
  const lines = items.map((line, i) => ({ item: line.id, minor: minor(priceOf(line, i)) }));
  const { thing } = await done(
    addPlanned(desk, 'bid', {
      ...{ sculpture: work.sculpture, campaign, who: 'Foundry team', date: '2023-06-26', currency: noCurrency, lines },
      ...{ visited: '2023-06-19', validUntil: '2023-12-31', named: [{ role: 'Patineur' }, { role: 'Foreman' }] },
    }),
  );
  await done(editPlanned(desk, 'campaign', campaign, { takenBid: thing, step: 'access' }));
};

/** Every line there, but those the table names. */
const lookThrough = async (
  { desk }: PlantedGarden,
  sculpture: string,
  campaign: string,
  { of, but, ...said }: DemoPaper,
): Promise<void> => {
  const items = paperItems[of].map(({ id }) => ({ id, state: but[id] ?? ('there' as const) }));
  const name = nameOf.completeness(campaign, of, 'own');
  await done(setPlanned(desk, 'completeness', name, { sculpture, campaign, of, items, ...said }));
};

const panelPhoto = async (
  { desk, draw }: PlantedGarden,
  { sculpture, zones }: PlantedWork,
  taken: string,
  { file, wet, sun, light, green }: { file: string; wet: boolean; sun: boolean; light: number; green?: number },
): Promise<string> => {
  const bytes = await draw(`${file}.webp`, paintPanel({ wet, sun, ...(green ? { green } : {}) }), light);
  const zone = zones.get('A');
  const facts = {
    taken,
    wet: wet ? ('wet' as const) : ('dry' as const),
    light: sun ? ('sun' as const) : ('open shade' as const),
  };
  return (await done(keepPhoto(desk, sculpture, bytes, 'other', { ...facts, ...(zone ? { zone } : {}) }))).photo;
};

const cardOfTable = async (garden: PlantedGarden, work: PlantedWork, campaign: string): Promise<void> => {
  const photos: Record<string, string> = {};
  for (const { field, time, ...picture } of panelPhotos)
    photos[field] = await panelPhoto(garden, work, `2023-09-08T${time}:00`, picture);
  await done(
    addPlanned(garden.desk, 'colourCard', {
      ...{ sculpture: work.sculpture, campaign, zones: [...work.zones.values()], date: '2023-09-08' },
      words: 'Deep brown with red in the recesses, a shade warmer than the board of 1991; satin, not gloss.',
      ...{ panel: 'Panel 3 of the sample board', kept: 'Store, drawer 4, in the dark', ...photos },
      signed: [
        { role: 'Estate of the artist', on: '2023-09-08' },
        { role: 'Conservator', on: '2023-09-08' },
      ],
    }),
  );
};

/** The panel held to the table again, with a first green beside it. */
const panelHeldAgain = async (garden: PlantedGarden, work: PlantedWork): Promise<void> => {
  const picture = { file: 'SW-03-panel-2026', wet: false, sun: false, light: 0.88, green: 0.3 };
  await panelPhoto(garden, work, '2026-05-12T09:40:00', picture);
};
