import { addPlanned, type Desk, type PlannedBody, setPlanned } from '../../../src/actions';
import { nameOf } from '../../../src/engine/record';
import { aRound, aWork, done, freshDesk, type Work } from '../deskwork';

export interface Opened {
  readonly desk: Desk;
  readonly work: Work;
  readonly campaign: string;
}

/** A heron of two zones, seen green in A, with a campaign that stands at the request. */
export const heronWithCampaign = async (body: Partial<PlannedBody<'campaign'>> = {}): Promise<Opened> => {
  const desk = await freshDesk();
  const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] });
  await aRound(desk, work, '2026-05-12', [{ 'even-green-film': 0.2 }, 'nothing']);
  const { thing } = await done(
    addPlanned(desk, 'campaign', {
      ...{ sculpture: work.sculpture, title: 'Heron, whole', opened: '2026-03-02', step: 'request' },
      ...body,
    }),
  );
  return { desk, work, campaign: thing };
};

/** With a schedule of two lines, i1 on zone A and i2 on zone B. */
export const withSchedule = async (opened: Opened): Promise<Opened> => {
  const { desk, work, campaign } = opened;
  const line = (id: string, at: number, name: string, amount: number) => ({
    ...{ id, zone: work.zones[at], name, task: 'clean down', unit: 'm2' as const },
    ...{ amount, low: amount * 0.9, high: amount * 1.1 },
  });
  await done(
    setPlanned(desk, 'quantities', nameOf.quantities(campaign), {
      ...{ sculpture: work.sculpture, campaign, date: '2026-03-03' },
      items: [line('i1', 0, 'A part A', 2), line('i2', 1, 'B part B', 1)],
    }),
  );
  return opened;
};

/** A bid in euros: prices of i1 and i2 in cents. */
export const aBid = async (
  { desk, work, campaign }: Opened,
  who: string,
  prices: readonly number[],
  body: Partial<PlannedBody<'bid'>> = {},
): Promise<string> => {
  const { thing } = await done(
    addPlanned(desk, 'bid', {
      ...{ sculpture: work.sculpture, campaign, who, date: '2026-03-20', validUntil: '2026-12-31', currency: 'EUR' },
      lines: prices.map((minor, i) => ({ item: `i${i + 1}`, minor })),
      ...body,
    }),
  );
  return thing;
};

export const kept = async <K extends Parameters<typeof addPlanned>[1]>(desk: Desk, kind: K) =>
  (await desk.store.ofKind(kind)).filter(({ gone }) => !gone).map(({ lead }) => lead.body as PlannedBody<K>);
