import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { recordTreatment } from '../../../src/actions';
import { kindOf } from '../../../src/engine/trade';
import { ThenAndNowScreen } from '../../../src/screens/then-and-now';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const greenId = 'even-green-film';
const green = kindOf(greenId)?.name ?? '';

const heron = async () => {
  const desk = await freshDesk();
  const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1, 1] });
  return { desk, work };
};

describe('Then & now', () => {
  it('says that two rounds are needed, and offers to start one, where there is one', async () => {
    const { desk, work } = await heron();
    await aRound(desk, work, '2025-05-10', ['nothing']);
    show(desk, <ThenAndNowScreen sculpture={work.sculpture} earlier={undefined} later={undefined} />);
    expect(await screen.findByText(/There is one round so far/)).toBeDefined();
    expect(screen.getByRole('link', { name: 'Start a round' })).toBeDefined();
  });

  it('calls a fivefold growth clearly worse, with the smallest difference it would call real', async () => {
    const { desk, work } = await heron();
    await aRound(desk, work, '2025-05-10', [{ [greenId]: 0.05 }, 'nothing', 'nothing']);
    await aRound(desk, work, '2026-05-10', [{ [greenId]: 0.5 }, 'nothing', 'nothing']);
    show(desk, <ThenAndNowScreen sculpture={work.sculpture} earlier={undefined} later={undefined} />);
    const zone = await screen.findByRole('article', { name: /Zone A:\s*part A/ });
    const row = within(zone).getByRole('row', { name: new RegExp(green) });
    expect(within(row).getByText('Clearly worse')).toBeDefined();
    expect(within(row).getByText(/smallest difference we would call real here: from 5 % /)).toBeDefined();
    expect(within(row).getByText(/5 %, moderate, active/)).toBeDefined();
  });

  it('puts what did not surely change away, and opens it on request', async () => {
    const { desk, work } = await heron();
    await aRound(desk, work, '2025-05-10', [{ [greenId]: 0.2 }, 'nothing', 'nothing']);
    await aRound(desk, work, '2026-05-10', [{ [greenId]: 0.15 }, 'nothing', 'nothing']);
    show(desk, <ThenAndNowScreen sculpture={work.sculpture} earlier={undefined} later={undefined} />);
    expect(await screen.findByText('No finding changed for sure between these two rounds.')).toBeDefined();
    const fold = screen.getByRole('button', { name: /Show 1 finding with no sure change in 3 zones/ });
    expect(fold.getAttribute('aria-expanded')).toBe('false');
    await userEvent.click(fold);
    expect(fold.getAttribute('aria-expanded')).toBe('true');
    expect(screen.getAllByText('No change you can be sure of').length).toBeGreaterThan(0);
  });

  it('warns when the rounds are not alike, and says why', async () => {
    const { desk, work } = await heron();
    await aRound(desk, work, '2025-05-10', [{ [greenId]: 0.2 }]);
    await aRound(desk, work, '2026-05-10', [{ [greenId]: 0.2 }], { round: { wet: 'wet' } });
    show(desk, <ThenAndNowScreen sculpture={work.sculpture} earlier={undefined} later={undefined} />);
    const notice = await screen.findByRole('note', { name: /not alike/ });
    expect(within(notice).getByText('The surface was dry then and is wet now.')).toBeDefined();
  });

  it('names what is new, and says how many false ones a page like this raises', async () => {
    const { desk, work } = await heron();
    await aRound(desk, work, '2025-05-10', ['nothing', 'nothing', 'nothing']);
    await aRound(desk, work, '2026-05-10', [{ [greenId]: 0.3 }, 'nothing', 'nothing']);
    show(desk, <ThenAndNowScreen sculpture={work.sculpture} earlier={undefined} later={undefined} />);
    const zone = await screen.findByRole('article', { name: /Zone A/ });
    expect(within(zone).getByText('New')).toBeDefined();
    expect(screen.getByText(/By chance alone, about [\d.]+ of/)).toBeDefined();
  });

  it('sets what was done between beside the verdict', async () => {
    const { desk, work } = await heron();
    await aRound(desk, work, '2025-05-10', [{ [greenId]: 0.5 }]);
    await done(recordTreatment(desk, work.sculpture, { zones: [], type: 'wax', date: '2025-06-01' }));
    await aRound(desk, work, '2026-05-10', [{ [greenId]: 0.03 }]);
    show(desk, <ThenAndNowScreen sculpture={work.sculpture} earlier={undefined} later={undefined} />);
    const zone = await screen.findByRole('article', { name: /Zone A/ });
    expect(within(zone).getAllByText('Clearly better').length).toBeGreaterThan(0);
    expect(within(zone).getByText('Done between: Cold wax, 1 June 2025.')).toBeDefined();
    expect(screen.getByText(/It does not say what caused it/)).toBeDefined();
  });

  it('says which zones carry the growth, in square metres', async () => {
    const { desk, work } = await heron();
    await aRound(desk, work, '2025-05-10', [{ [greenId]: 0.05 }, { [greenId]: 0.5 }, 'nothing']);
    await aRound(desk, work, '2026-05-10', [{ [greenId]: 0.5 }, { [greenId]: 0.05 }, 'nothing']);
    show(desk, <ThenAndNowScreen sculpture={work.sculpture} earlier={undefined} later={undefined} />);
    expect(await screen.findByText('grew by 0.90 m²')).toBeDefined();
    expect(screen.getByText('shrank by 0.45 m²')).toBeDefined();
  });

  it('goes to any other pair of rounds that is chosen', async () => {
    const { desk, work } = await heron();
    const first = await aRound(desk, work, '2024-05-10', ['nothing']);
    await aRound(desk, work, '2025-05-10', ['nothing']);
    const last = await aRound(desk, work, '2026-05-10', ['nothing']);
    const { history } = show(
      desk,
      <ThenAndNowScreen sculpture={work.sculpture} earlier={undefined} later={undefined} />,
    );
    const then = await screen.findByRole('combobox', { name: 'Then: the earlier round' });
    await userEvent.selectOptions(then, first);
    const tail = (name: string) => name.slice(name.indexOf('/') + 1);
    expect(history.at(-1)).toBe(`/sculpture/${tail(work.sculpture)}/then-and-now/${tail(first)}/${tail(last)}`);
  });
});

describe('The longer view', () => {
  it('holds the last round against the first in one touch, and says what all rounds show together', async () => {
    const user = userEvent.setup();
    const { desk, work } = await heron();
    for (const [i, cover] of [0.05, 0.08, 0.15, 0.2, 0.3].entries()) {
      await aRound(desk, work, `${2022 + i}-05-10`, [{ [greenId]: cover }, 'nothing', 'nothing']);
    }
    show(desk, <ThenAndNowScreen sculpture={work.sculpture} />);
    expect(await screen.findAllByText(/a trend over 5 rounds/)).toHaveLength(2);
    expect(screen.getByRole('radio', { name: 'Since the last round' })).toHaveProperty('checked', true);
    await user.click(screen.getByRole('radio', { name: 'Since the first round' }));
    expect(screen.getByRole('link', { name: 'Over the years' })).toBeDefined();
  });

  it('says the smallest difference it would call real, of the index, the zones and each area', async () => {
    const { desk, work } = await heron();
    await aRound(desk, work, '2025-05-10', [{ [greenId]: 0.1 }, 'nothing', 'nothing']);
    await aRound(desk, work, '2026-05-10', [{ [greenId]: 0.4 }, 'nothing', 'nothing']);
    show(desk, <ThenAndNowScreen sculpture={work.sculpture} />);
    expect((await screen.findAllByText(/smallest difference we would call real here: [\d.]+ points/)).length).toBe(2);
    expect(screen.getByText(/smallest difference we would call real here: [\d.]+ m²/)).toBeDefined();
  });
});
