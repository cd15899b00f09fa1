import { addPlanned, setPlanned } from '../../actions';
import { type BodyOf, nameOf } from '../../engine/record';
import { done } from '../walkRound';
import type { DemoEvent, PlantedGarden } from './plantedGarden';

type Row = BodyOf<'yearPlan'>['works'][number];

/** Where the six stand on a blank sheet of the quay, and what each got in 2026. Made up, as all of the garden is. */
const works: Readonly<
  Record<string, { readonly x: number; readonly y: number } & Pick<Row, 'survey' | 'waxes' | 'day' | 'lift'>>
> = {
  'SW-01': { x: 0.22, y: 0.55, survey: 'full', waxes: 1, day: '2026-05-12' },
  'SW-02': { x: 0.48, y: 0.22, survey: 'full', waxes: 1, day: '2026-05-12', lift: true },
  'SW-03': { x: 0.62, y: 0.5, survey: 'full', waxes: 1, day: '2026-05-12' },
  'SW-04': { x: 0.86, y: 0.34, survey: 'full', waxes: 0, day: '2026-05-12' },
  'SW-05': { x: 0.78, y: 0.7, survey: 'full', waxes: 1, day: '2026-05-12' },
  'SW-06': { x: 0.36, y: 0.82, survey: 'full', waxes: 1, day: '2026-05-12' },
};

const verdicts: Readonly<Record<string, Pick<BodyOf<'yearVerdict'>, 'verdict' | 'why'>>> = {
  'SW-01': {
    verdict: 'ask a conservator',
    why: 'On the weather side wax holds under three months, for the third year.',
  },
  'SW-02': { verdict: 'campaign', why: 'Half of it is green and the base ring is not sound; money is being gathered.' },
  'SW-03': { verdict: 'hold', why: 'The colour of 2023 stands; the bezels are looked at.' },
  'SW-04': { verdict: 'hold', why: 'Fine under its arcade. Waxed every second year.' },
  'SW-05': { verdict: 'watch', why: 'The knees are being polished again.' },
  'SW-06': { verdict: 'hold', why: 'The scale fades since the sprinkler was moved.' },
};

/** Plan of the year and of the site, incidents, moves, agreements, verdicts. */
export const yearEvents = ({ desk, works: planted }: PlantedGarden): DemoEvent[] => {
  const of = (number: string): string => planted.get(number)?.sculpture ?? '';
  const zonesOf = (number: string, letters: string): string[] =>
    [...letters].flatMap((letter) => planted.get(number)?.zones.get(letter) ?? []);
  const agreement = (
    day: string,
    body: Pick<BodyOf<'groundsAgreement'>, 'topic' | 'text' | 'works' | 'review'>,
  ): DemoEvent => ({
    day,
    run: async () =>
      void (await done(addPlanned(desk, 'groundsAgreement', { ...body, who: { role: 'Head gardener' }, agreed: day }))),
  });
  const incident = (
    day: string,
    body: Pick<BodyOf<'incident'>, 'sculpture' | 'sort' | 'zones' | 'time' | 'what' | 'done' | 'told' | 'closed'>,
  ): DemoEvent => ({
    day,
    run: async () => void (await done(addPlanned(desk, 'incident', { ...body, date: day, danger: 'none' }))),
  });
  return [
    {
      day: '2021-04-20',
      run: async () => {
        const spots = Object.entries(works).map(([number, { x, y }]) => ({ work: of(number), x, y }));
        const start = { x: 0.06, y: 0.9, words: 'Tool shed at the landward gate' };
        const body = { metresWide: 180, spots, start };
        await done(setPlanned(desk, 'sitePlan', nameOf.sitePlan(desk.collection), body));
      },
    },
    {
      day: '2022-10-03',
      run: async () =>
        void (await done(
          addPlanned(desk, 'move', {
            ...{
              sculpture: of('SW-04'),
              sort: 'loan out',
              from: 'Stone arcade',
              to: 'Foyer of the ferry hall, Vesperhythe',
            },
            ...{ left: '2022-10-03', backDue: '2023-03-31', back: '2023-03-20' },
            ...{
              who: 'Riggers, with a curator beside',
              how: 'On its base, lifted by slings under the plate, never by a neck',
            },
          }),
        )),
    },
    agreement('2023-07-11', {
      ...{ topic: 'sprinklers', text: 'The head on the west side stays where it is now and does not reach the metal.' },
      ...{ works: [of('SW-06')], review: '2027-04-01' },
    }),
    agreement('2023-11-06', {
      topic: 'salt',
      text: 'Grit on the quay path, no salt within 5 m of a work.',
      review: '2026-11-01',
    }),
    agreement('2024-04-15', {
      ...{ topic: 'mowing', text: 'The ground line of the fluke is trimmed by hand, 50 cm all round.' },
      ...{ works: [of('SW-06')], review: '2026-04-15' },
    }),
    incident('2025-01-12', {
      ...{ sculpture: of('SW-06'), sort: 'storm', zones: zonesOf('SW-06', 'E'), time: '08:10' },
      ...{
        what: 'A lime branch lay across the fluke tips after the westerly. No dent seen; two scratches in the wax.',
      },
      ...{ done: 'Photographed, branch lifted off by two, tips wiped.', told: [{ role: 'Insurer' }] },
      closed: { on: '2025-01-15', note: 'Seen by the conservator on photos: wax only.' },
    }),
    {
      day: '2025-12-02',
      run: async () => {
        for (const [number, said] of Object.entries(verdicts)) {
          const sculpture = of(number);
          const body = { ...said, sculpture, year: 2025, by: 'Steward', date: '2025-12-02' };
          await done(setPlanned(desk, 'yearVerdict', nameOf.yearVerdict(sculpture, 2025), body));
        }
      },
    },
    {
      day: '2026-01-20',
      run: async () => {
        const rows = Object.entries(works).map(([number, { x: _, y: __, ...row }]) => ({ work: of(number), ...row }));
        const lift = (day: string, note: string) => ({ day, cost: { minor: 42_000, currency: 'XXX' }, note });
        const body = {
          ...{ year: 2026, works: rows, helpers: 'Helper on both lift days, Stand-in in May' },
          liftDays: [lift('2026-05-12', 'Boom over the basin, 6 m'), lift('2026-05-21', 'The same, to wax')],
          contacts: 'Steward: the number on the shed door\nConservator: the card in the logbook\nEmergency: 112',
        };
        await done(setPlanned(desk, 'yearPlan', nameOf.yearPlan(desk.collection, 2026), body));
      },
    },
    incident('2026-10-11', {
      ...{ sculpture: of('SW-05'), sort: 'graffiti', zones: zonesOf('SW-05', 'E') },
      ...{ what: 'Marker on the bench seat, a hand wide. Left as it is.', told: [{ role: 'Conservator' }] },
    }),
    {
      day: '2026-10-12',
      run: async () => {
        const begun = ['covers', `weep-holes ${of('SW-01')}`, `weep-holes ${of('SW-06')}`];
        const ticked = begun.map((item) => ({ item, on: '2026-10-12' }));
        const body = { list: 'close-down' as const, of: '2026', ticked, own: ['Rope off the bench of SW-05'] };
        await done(setPlanned(desk, 'listTicks', nameOf.listTicks('close-down', '2026'), body));
      },
    },
  ];
};
