import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { undoLast } from '../../../src/actions';
import { scoreFinding } from '../../../src/engine/condition';
import { nameOf } from '../../../src/engine/record';
import { kindOf, kinds, ladder, ladderStepOf, scaleOf } from '../../../src/engine/trade';
import { MethodScreen } from '../../../src/screens/method';
import { freshDesk, show } from '../deskwork';

const first = kinds[0];
const hazard = (first?.hazard ?? 0).toFixed(2);

describe('How is this worked out?', () => {
  it('shows every kind of finding with the hazard the engine uses and its why', async () => {
    show(await freshDesk(), <MethodScreen />);
    for (const kind of kinds) {
      const rows = await screen.findAllByRole('row', { name: new RegExp(escaped(kind.name)) });
      expect(
        rows.some((row) => within(row).queryByText(kind.hazard.toFixed(2)) !== null),
        kind.id,
      ).toBe(true);
      expect(
        rows.some((row) => row.textContent?.includes(kind.why)),
        kind.id,
      ).toBe(true);
    }
  });

  it('says that the scale is the project’s own, and names its version', async () => {
    show(await freshDesk(), <MethodScreen />);
    expect(await screen.findByRole('note', { name: new RegExp(escaped(scaleOf(null).id)) })).toBeDefined();
    expect(screen.getByText(/Our thresholds, not a standard’s\. A score names/)).toBeDefined();
  });

  it('works the example out anew with each change, to what the engine says', async () => {
    const user = userEvent.setup();
    show(await freshDesk(), <MethodScreen />);
    await user.selectOptions(await screen.findByRole('combobox', { name: 'Kind of finding' }), 'green-spots');
    await user.click(screen.getByRole('radio', { name: '40 %' }));
    await user.click(within(screen.getByRole('group', { name: 'Severity' })).getByRole('radio', { name: /Severe/ }));
    const { value, low, high } = ladderStepOf(0.4);
    const score = scoreFinding(
      {
        sculpture: 's/1',
        round: 'r/1',
        zone: 'z/1',
        kind: 'green-spots',
        origin: 'metal',
        coverage: { value, low, high, method: 'ladder' },
        severity: 'severe',
        activity: 'active',
      },
      scaleOf(null),
    );
    const result = screen.getByRole('status', { name: 'The steps, worked out' });
    const loss = within(result).getByRole('row', { name: /^Loss/ });
    expect(within(loss).getByText(String(Math.round(score.loss * 1000) / 1000))).toBeDefined();
    expect(within(result).getByText(kindOf('green-spots')?.why ?? '')).toBeDefined();
  });

  it('takes nothing off for dirt, and says to look again after washing', async () => {
    show(await freshDesk(), <MethodScreen />);
    await userEvent.click(await screen.findByRole('radio', { name: /^Dirt/ }));
    const result = screen.getByRole('status', { name: 'The steps, worked out' });
    expect(within(result).getByRole('note', { name: /takes nothing off/ })).toBeDefined();
    expect(within(result).getByText(/Look again after washing/)).toBeDefined();
  });

  it('shows the whole ladder with bins that meet', async () => {
    show(await freshDesk(), <MethodScreen />);
    await screen.findByRole('heading', { name: 'Coverage ladder' });
    for (const { label } of ladder) expect(screen.getAllByText(`${label} %`).length).toBeGreaterThan(0);
  });

  it('keeps a changed hazard as a new version, and the undo brings the project’s number back', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    show(desk, <MethodScreen />);
    await user.click(await screen.findByRole('button', { name: 'Change hazards for this collection' }));
    expect(screen.getByText('Nothing is changed yet.')).toBeDefined();
    await user.click(screen.getByRole('button', { name: `Raise the hazard of ${first?.name}` }));
    expect(screen.getByText('1 number changed')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Keep as version 1' }));
    expect(await screen.findByRole('note', { name: /\+ 1/ })).toBeDefined();
    const kept = async () => desk.store.current(nameOf.scale(desk.collection));
    expect((await kept())?.lead.body).toEqual({
      version: 1,
      hazards: { [first?.id ?? '']: Math.round(((first?.hazard ?? 0) + 0.05) * 100) / 100 },
      actionLevel: 75,
    });
    await undoLast(desk);
    expect((await kept())?.gone).toBe(true);
    const row = await screen.findByRole('row', { name: new RegExp(`^${escaped(first?.name ?? '')}`) });
    expect(await within(row).findByText(hazard)).toBeDefined();
  });

  it('refuses an action level over 100 with a sentence, and stores nothing', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    show(desk, <MethodScreen />);
    await user.click(await screen.findByRole('button', { name: 'Change hazards for this collection' }));
    const level = screen.getByRole('textbox', { name: /Action level/ });
    await user.clear(level);
    await user.type(level, '120');
    await user.click(screen.getByRole('button', { name: /Keep as version/ }));
    expect(screen.getByRole('alert').textContent).toContain('Write a number from 0 to 100.');
    expect(await desk.store.current(nameOf.scale(desk.collection))).toBeUndefined();
  });

  it('lists its sources with how sure each is', async () => {
    show(await freshDesk(), <MethodScreen />);
    await screen.findByRole('heading', { name: 'Sources, and how sure they are' });
    expect(screen.getAllByText('from memory').length).toBeGreaterThan(0);
    expect(screen.getAllByText('this project’s own choice').length).toBeGreaterThan(0);
  });
});

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
