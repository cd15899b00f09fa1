import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addPlanned, type Desk } from '../../../src/actions';
import { IncidentsScreen } from '../../../src/screens/incidents';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';

const bodies = async (desk: Desk, kind: 'incident' | 'personCheck') =>
  (await desk.store.ofKind(kind)).filter(({ gone }) => !gone).map(({ lead }) => lead.body);

describe('Incidents', () => {
  it('puts people first: who is in danger is asked first, what to do first stands there, a check is opened', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { sculpture, zones } = await aWork(desk, { title: 'Heron', number: '1', areas: [1, 1] });
    show(desk, <IncidentsScreen />);
    expect(await screen.findByText('Nothing reported.')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Report something' }));
    const [first] = screen.getAllByRole('group');
    expect(first?.querySelector('legend')?.textContent).toBe('People');
    await user.click(screen.getByRole('button', { name: 'Report it' }));
    expect(screen.getByText('Say first whether anybody is in danger.')).toBeDefined();
    await user.click(screen.getByRole('radio', { name: 'Somebody might get hurt' }));
    expect(screen.getByRole('note', { name: /People first/ })).toBeDefined();
    expect(screen.getByText(/Choose the work, and a person check/)).toBeDefined();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Which work' }), '1 Heron');
    await user.click(screen.getByRole('checkbox', { name: /part B/ }));
    await user.click(screen.getByRole('button', { name: 'Report it' }));
    expect(screen.getByText('Say what happened.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: /What happened/ }), 'A branch on the wing');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Report it' }));
    await waitFor(async () =>
      expect(await bodies(desk, 'personCheck')).toMatchObject([
        { sculpture, zone: zones[1], what: 'A branch on the wing' },
      ]),
    );
    expect(await bodies(desk, 'incident')).toMatchObject([{ sort: 'storm', danger: 'possible', date: '2026-10-15' }]);
    expect(await screen.findByText('A branch on the wing')).toBeDefined();
  });

  it('is closed on a day, and says that its person check is not closed with it', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    const { reportIncident } = await import('../../../src/actions');
    await done(
      reportIncident(desk, { sculpture, date: '2026-10-10', sort: 'blow', what: 'A mower', danger: 'possible' }),
    );
    show(desk, <IncidentsScreen />);
    await user.click(await screen.findByRole('button', { name: 'Close it' }));
    expect(screen.getByText(/A person check of this work is still open/)).toBeDefined();
    await user.click(screen.getAllByRole('button', { name: 'Close it' }).at(-1) as HTMLElement);
    await waitFor(async () => expect(await bodies(desk, 'incident')).toMatchObject([{ closed: { on: '2026-10-15' } }]));
    expect(await bodies(desk, 'personCheck')).not.toMatchObject([{ closed: {} }]);
  });

  it('lists danger before all else, whatever came last', async () => {
    const desk = await freshDesk();
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    const said = { sculpture, sort: 'storm' };
    await done(addPlanned(desk, 'incident', { ...said, date: '2026-10-14', what: 'later', danger: 'none' }));
    await done(addPlanned(desk, 'incident', { ...said, date: '2026-10-01', what: 'dangerous', danger: 'yes' }));
    show(desk, <IncidentsScreen />);
    await screen.findByText('later');
    const text = document.body.textContent ?? '';
    expect(text.indexOf('dangerous')).toBeLessThan(text.indexOf('later'));
  });
});
