import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addInsert } from '../../../src/actions';
import { QuantitiesScreen } from '../../../src/screens/campaign';
import { axeFaults } from '../axe';
import { done, show } from '../deskwork';
import { heronWithCampaign, kept, withSchedule } from './opened';

describe('The schedule of quantities', () => {
  it('is made from zones by two touches: area with its range, reach, and what the last round saw', async () => {
    const user = userEvent.setup();
    const { desk, campaign } = await heronWithCampaign();
    show(desk, <QuantitiesScreen campaign={campaign} />);
    expect(await screen.findByText('No lines yet')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Make lines from zones' }));
    await user.click(screen.getByRole('button', { name: 'Make the lines' }));
    expect(screen.getByText('Choose what is to be done.')).toBeDefined();
    await user.click(screen.getByRole('checkbox', { name: /Clean down, desalt/ }));
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Make the lines' }));
    const row = within((await screen.findByRole('rowheader', { name: /A part A/ })).closest('tr') as HTMLElement);
    expect(row.getByText('2 m²')).toBeDefined();
    expect(row.getByText('1.8 to 2.2')).toBeDefined();
    expect(row.getByText('12 May 2026: even green film, 18 % to 25 %, moderate')).toBeDefined();
    expect(screen.getByText('3.00 m²')).toBeDefined();
    expect(screen.getByText(/±10 % to 25 %/)).toBeDefined();
    expect(await axeFaults()).toEqual([]);
    expect(await kept(desk, 'quantities')).toMatchObject([{ date: '2026-10-15', items: [{ id: 'i1' }, { id: 'i2' }] }]);
  });

  it('says where an insert of a treated zone has no line that protects it, until it has one', async () => {
    const user = userEvent.setup();
    const opened = await withSchedule(await heronWithCampaign());
    const { desk, work, campaign } = opened;
    await done(
      addInsert(desk, work.sculpture, { material: 'cast glass', count: 5, removable: 'no', zone: work.zones[0] }),
    );
    show(desk, <QuantitiesScreen campaign={campaign} />);
    expect(await screen.findByText('No line protects cast glass (A).')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Make lines from zones' }));
    await user.click(screen.getByRole('checkbox', { name: /Shield and watch/ }));
    await user.click(screen.getByRole('button', { name: 'Make the lines' }));
    expect(await screen.findByText('5 pieces')).toBeDefined();
    await waitFor(() => expect(screen.queryByText('No line protects cast glass (A).')).toBeNull());
  });

  it('takes a line put right, never one whose range does not hold its amount', async () => {
    const user = userEvent.setup();
    const { desk, campaign } = await withSchedule(await heronWithCampaign());
    show(desk, <QuantitiesScreen campaign={campaign} />);
    await user.click(await screen.findByRole('button', { name: 'Change line A part A' }));
    const amount = screen.getByRole('textbox', { name: /^Amount/ });
    await user.clear(amount);
    await user.type(amount, '2.5');
    await user.click(screen.getByRole('button', { name: 'Keep the line' }));
    expect(screen.getByText('At least and at most hold the amount between them.')).toBeDefined();
    const most = screen.getByRole('textbox', { name: /At most/ });
    await user.clear(most);
    await user.type(most, '2,75');
    await user.click(screen.getByRole('button', { name: 'Keep the line' }));
    expect(await screen.findByText('1.8 to 2.75')).toBeDefined();
    expect(screen.getByText(/Zone A was 2.50 m² when the line was made and is 2.00 m² now/)).toBeDefined();
  });

  it('takes a line out', async () => {
    const user = userEvent.setup();
    const { desk, campaign } = await withSchedule(await heronWithCampaign());
    show(desk, <QuantitiesScreen campaign={campaign} />);
    await user.click(await screen.findByRole('button', { name: 'Change line B part B' }));
    await user.click(screen.getByRole('button', { name: 'Take out' }));
    await waitFor(() => expect(screen.queryByRole('rowheader', { name: /B part B/ })).toBeNull());
    expect(await screen.findByText(/No line treats zone B/)).toBeDefined();
  });
});
