import { cleanup, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addSurveyor, leaveZone, skipAskingAgain, startRound, touchZone } from '../../../src/actions';
import { EndRoundScreen, RoundScreen, StartRoundScreen } from '../../../src/screens/round';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';

const start = { type: 'annual', wet: 'dry', washed: 'before wash', ownEye: true } as const;

describe('A round from pencil cards', () => {
  it('is begun with the day on the cards, who looked then and who enters now, and no word of the own eye', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1, 1] });
    const helper = (await done(addSurveyor(desk, { role: 'Helper' }))).surveyor;
    await done(addSurveyor(desk, { role: 'Steward' }));
    show(desk, <StartRoundScreen sculpture={sculpture} />);
    expect(await screen.findByRole('checkbox', { name: /Own eye first/ })).toBeDefined();
    await user.click(screen.getByRole('checkbox', { name: /From paper cards/ }));
    expect(screen.queryByRole('checkbox', { name: /Own eye first/ })).toBeNull();
    await user.clear(screen.getByLabelText(/Day it was seen/));
    await user.type(screen.getByLabelText(/Day it was seen/), '2026-10-12');
    await user.click(screen.getByRole('radio', { name: 'Dry' }));
    await user.click(screen.getByRole('radio', { name: 'Before washing' }));
    const looked = await screen.findByRole('group', { name: 'Who looked, by the cards?' });
    await user.click(within(looked).getByRole('radio', { name: 'Helper' }));
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Start the round of 12 October 2026' }));
    await waitFor(async () =>
      expect((await desk.store.ofKind('round')).map(({ lead }) => lead.body)).toMatchObject([
        { date: '2026-10-12', surveyor: helper, ownEye: true, fromPaper: { entered: '2026-10-15' } },
      ]),
    );
  });

  it('leads to the cards of the work, for the next time', async () => {
    const desk = await freshDesk();
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    show(desk, <StartRoundScreen sculpture={sculpture} />);
    const link = await screen.findByRole('link', { name: /Pencil cards for this work/ });
    expect(link.getAttribute('href')).toContain(`/papers/zone-cards/${encodeURIComponent(sculpture)}`);
  });

  it('says wherever it is told that it was entered from paper, and asks for no photo', async () => {
    const desk = await freshDesk();
    const { sculpture, zones } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    const walked = async (fromPaper: boolean) => {
      const more = fromPaper ? { fromPaper: { looked: '' } } : {};
      const { round } = await done(startRound(desk, sculpture, { ...start, date: '2026-10-12', ...more }));
      const [zone = ''] = zones;
      await done(touchZone(desk, round, zone, { do: 'kind', kind: 'black-crust', measure: 'area' }));
      await done(touchZone(desk, round, zone, { do: 'origin', origin: 'metal' }));
      const coverage = { value: 0.1, low: 0.075, high: 0.125, method: 'ladder' } as const;
      await done(touchZone(desk, round, zone, { do: 'cover', coverage }));
      await done(touchZone(desk, round, zone, { do: 'severity', severity: 'slight' }));
      await done(leaveZone(desk, round, zone, { how: 'next' }));
      return round;
    };
    const round = await walked(true);
    const { unmount } = show(desk, <RoundScreen round={round} />);
    expect(await screen.findByText('Entered from paper on 15 October 2026.')).toBeDefined();
    unmount();
    show(desk, <EndRoundScreen round={round} />);
    expect(await screen.findByText('Entered from paper on 15 October 2026.')).toBeDefined();
    expect(screen.queryByText(/without a photo/)).toBeNull();
    cleanup();
    const own = await walked(false);
    await done(skipAskingAgain(desk, own));
    show(desk, <EndRoundScreen round={own} />);
    expect(await screen.findByText(/without a photo/)).toBeDefined();
  });
});
