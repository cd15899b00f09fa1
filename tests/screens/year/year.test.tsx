import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addPlanned, type Desk, recordTreatment, setPlanned } from '../../../src/actions';
import { nameOf } from '../../../src/engine/record';
import { YearScreen } from '../../../src/screens/year';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const kept = async <K extends 'yearPlan' | 'yearVerdict'>(desk: Desk, kind: K) =>
  (await desk.store.ofKind(kind)).filter(({ gone }) => !gone).map(({ lead }) => lead.body);

/** A quiet work with three rounds, waxed each year; and one nobody has looked at. */
const garden = async () => {
  const desk = await freshDesk();
  const quiet = await aWork(desk, { title: 'Heron', number: '1', areas: [2, 1] });
  for (const date of ['2024-05-10', '2025-05-12', '2026-05-11'])
    await aRound(desk, quiet, date, ['nothing', 'nothing']);
  for (const date of ['2024-05-20', '2025-05-20', '2026-05-20'])
    await done(recordTreatment(desk, quiet.sculpture, { zones: [], type: 'wax', date }));
  const fresh = await aWork(desk, { title: 'Otter', number: '2', areas: [1] });
  return { desk, quiet, fresh };
};

const row = async (name: RegExp) => {
  const header = await screen.findByRole('rowheader', { name });
  return header.closest('tr') as HTMLElement;
};

describe('The year', () => {
  it('without a work says what is missing', async () => {
    show(await freshDesk(), <YearScreen year={undefined} />);
    expect(await screen.findByText('No sculpture yet.')).toBeDefined();
    expect(screen.getByRole('heading', { level: 1, name: 'The year 2026' })).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('proposes a look and a wax for a quiet work and a full round for one nobody has seen, and says why', async () => {
    const user = userEvent.setup();
    const { desk } = await garden();
    show(desk, <YearScreen year="2027" />);
    await waitFor(async () => expect(within(await row(/Heron/)).getByText(/Look from the ground/)).toBeDefined());
    expect(within(await row(/Heron/)).getByText('once')).toBeDefined();
    expect(within(await row(/Otter/)).getByText(/Full round/)).toBeDefined();
    await user.click(within(await row(/Otter/)).getByRole('button', { name: 'Why' }));
    expect(within(await row(/Otter/)).getByText('Nobody has made a round of it yet.')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('keeps what she says of one work, and leaves the other as proposed', async () => {
    const user = userEvent.setup();
    const { desk, quiet } = await garden();
    show(desk, <YearScreen year="2027" />);
    await screen.findByText(/Look from the ground/);
    await user.click(screen.getByRole('button', { name: 'Change what 1 Heron gets' }));
    await user.click(screen.getByRole('radio', { name: 'Full round' }));
    await user.click(screen.getByRole('radio', { name: 'Twice' }));
    await user.type(screen.getByLabelText(/Day of the round/), '2027-05-12');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    await waitFor(async () =>
      expect(await kept(desk, 'yearPlan')).toEqual([
        { year: 2027, works: [{ work: quiet.sculpture, survey: 'full', waxes: 2, day: '2027-05-12' }] },
      ]),
    );
    await waitFor(async () => expect(within(await row(/Heron/)).getByText('set')).toBeDefined());
    expect(within(await row(/Otter/)).getByText('proposed')).toBeDefined();
  });

  it('refuses a day of another year with a sentence, and keeps nothing', async () => {
    const user = userEvent.setup();
    const { desk } = await garden();
    show(desk, <YearScreen year="2027" />);
    await screen.findByText(/Look from the ground/);
    await user.click(screen.getByRole('button', { name: 'Change what 1 Heron gets' }));
    await user.type(screen.getByLabelText(/Day of the round/), '2026-05-12');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText('12 May 2026 is not in 2027. Give a day of that year.')).toBeDefined();
    expect(await kept(desk, 'yearPlan')).toEqual([]);
  });

  it('keeps all as proposed with one touch, and her own order of visits', async () => {
    const user = userEvent.setup();
    const { desk, quiet, fresh } = await garden();
    show(desk, <YearScreen year="2027" />);
    await screen.findByText(/Look from the ground/);
    await user.click(screen.getByRole('button', { name: 'Keep all as proposed' }));
    await waitFor(() => expect(screen.queryByText('proposed')).toBeNull());
    await user.click(screen.getByRole('button', { name: '2 Otter one place up' }));
    await waitFor(async () =>
      expect(await kept(desk, 'yearPlan')).toMatchObject([
        { works: [{ work: fresh.sculpture }, { work: quiet.sculpture, survey: 'look', waxes: 1 }] },
      ]),
    );
  });

  it('puts the works in the order of the shortest walk once they stand on the site plan', async () => {
    const user = userEvent.setup();
    const { desk, quiet, fresh } = await garden();
    await done(
      setPlanned(desk, 'sitePlan', nameOf.sitePlan(desk.collection), {
        spots: [
          { work: quiet.sculpture, x: 0.9, y: 0.5 },
          { work: fresh.sculpture, x: 0.2, y: 0.5 },
        ],
        start: { x: 0, y: 0.5 },
      }),
    );
    show(desk, <YearScreen year="2027" />);
    await screen.findByText(/Look from the ground/);
    await user.click(screen.getByRole('button', { name: 'Order by the shortest walk' }));
    await waitFor(async () =>
      expect(await kept(desk, 'yearPlan')).toMatchObject([
        { works: [{ work: fresh.sculpture }, { work: quiet.sculpture }] },
      ]),
    );
  });

  it('adds lift days up and names the work that has none', async () => {
    const user = userEvent.setup();
    const { desk, quiet } = await garden();
    const lift = {
      year: 2027,
      works: [{ work: quiet.sculpture, survey: 'full' as const, waxes: 1, lift: true as const, day: '2027-05-12' }],
    };
    await done(setPlanned(desk, 'yearPlan', nameOf.yearPlan(desk.collection, 2027), lift));
    show(desk, <YearScreen year="2027" />);
    expect(await screen.findByText('A lift is needed and none is booked: 1 Heron.')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Add a lift day' }));
    await user.type(screen.getByLabelText('Day'), '2027-05-12');
    await user.type(screen.getByLabelText(/^Cost/), '380');
    await user.type(await screen.findByLabelText(/^Currency/), 'EUR');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText('1 day: EUR 380')).toBeDefined();
    expect(screen.queryByText(/none is booked/)).toBeNull();
  });

  it('keeps whom a helper calls', async () => {
    const user = userEvent.setup();
    const { desk } = await garden();
    show(desk, <YearScreen year="2027" />);
    await user.type(await screen.findByRole('textbox', { name: /Whom to call/ }), 'Steward, 555');
    await user.click(screen.getByRole('button', { name: 'Keep helpers and numbers' }));
    await waitFor(async () => expect(await kept(desk, 'yearPlan')).toMatchObject([{ contacts: 'Steward, 555' }]));
  });
});

describe('The verdict of the year', () => {
  it('is proposed with its reasons, and stands once a named person has said it', async () => {
    const user = userEvent.setup();
    const { desk, quiet } = await garden();
    await done(
      addPlanned(desk, 'incident', {
        ...{ sculpture: quiet.sculpture, date: '2026-09-01', sort: 'storm', what: 'A branch', danger: 'none' },
      }),
    );
    show(desk, <YearScreen year="2026" />);
    expect(await screen.findByText('The incident of 1 September 2026 is still open.')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Say it: 1 Heron' }));
    await user.click(screen.getByRole('button', { name: 'Keep the verdict' }));
    expect(screen.getByText('Say who says it.')).toBeDefined();
    expect(await kept(desk, 'yearVerdict')).toEqual([]);
    await user.click(screen.getByRole('radio', { name: 'Hold' }));
    await user.type(screen.getByRole('textbox', { name: 'Why' }), 'The branch left no mark');
    await user.type(screen.getByRole('textbox', { name: 'Said by' }), 'Steward');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep the verdict' }));
    await waitFor(async () =>
      expect(await kept(desk, 'yearVerdict')).toMatchObject([{ verdict: 'hold', by: 'Steward', year: 2026 }]),
    );
    expect(await screen.findByText('The branch left no mark')).toBeDefined();
  });
});

describe('A year that is over', () => {
  it('shows what was said of it and proposes nothing: today knows too much', async () => {
    const { desk, quiet } = await garden();
    await done(
      setPlanned(desk, 'yearVerdict', nameOf.yearVerdict(quiet.sculpture, 2025), {
        ...{
          sculpture: quiet.sculpture,
          year: 2025,
          verdict: 'hold',
          why: 'It holds',
          by: 'Steward',
          date: '2025-12-01',
        },
      }),
    );
    show(desk, <YearScreen year="2025" />);
    expect(await screen.findByText('It holds')).toBeDefined();
    expect(within(await row(/Heron/)).getByText('nothing written down')).toBeDefined();
    expect(screen.queryByRole('button', { name: 'Keep all as proposed' })).toBeNull();
    expect(screen.queryByText(/^Proposed/)).toBeNull();
  });

  it('and one to come has no verdict yet', async () => {
    const { desk } = await garden();
    show(desk, <YearScreen year="2027" />);
    await screen.findByText(/Look from the ground/);
    expect(screen.queryByRole('heading', { name: 'Verdict of the year' })).toBeNull();
  });
});
