import { firstPass } from '../../../src/engine/reckoning';
import type { BodyOf, Entry, KindOfThing, SculptureRecord, Thing } from '../../../src/engine/record';
import type { MoneyLists, TripwireFacts } from '../../../src/engine/watch';
import { zoneName } from '../change/invented';
import { today } from '../hold/garden';

export const work = 'sculpture/w';

/** A planned thing with an entry behind it. */
export const planned = <K extends KindOfThing>(kind: K, id: string, body: BodyOf<K>): Thing<K> => {
  const thing = `${kind}/${id}`;
  const lead: Entry = {
    id: '00000000-0000-7000-8000-000000000000',
    thing,
    kind,
    within: work,
    v: 1,
    at: '2026-10-15T10:00:00.000+00:00',
    by: '',
    device: 'invented',
    n: 0,
    deed: '00000000-0000-7000-8000-000000000001',
    replaces: [],
    body: body as Record<string, unknown>,
  };
  return { thing, body, lead, heads: [lead.id] };
};

type Wire = BodyOf<'decision'>['tripwires'][number];

export const wire = (sort: string, more: Partial<Wire> = {}): Wire => ({ id: 't1', sort, ...more });
export const zoneA = zoneName('A');
export const zoneB = zoneName('B');

export const noMoney: MoneyLists = { quote: [], fund: [], gift: [] };

/** What is known of a work, as the first pass leaves it; with all rounds. */
export const factsOf = (record: SculptureRecord, lists: MoneyLists = noMoney, day = today): TripwireFacts => {
  const { score, clearlyWorse, holds } = firstPass(record, day);
  return { record, score, clearlyWorse, holds, lists };
};

export const decision = (more: Partial<BodyOf<'decision'>> = {}, id = 'd1'): Thing<'decision'> =>
  planned('decision', id, {
    sculpture: work,
    date: '2024-11-20',
    title: 'Go on waxing',
    chosen: 'Wax every May',
    refused: [],
    evidence: [],
    consulted: [],
    tripwires: [],
    signed: [],
    ...more,
  });
