import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addInterpretation, addSurveyor, type Desk } from '../../../src/actions';
import { SettingsScreen } from '../../../src/screens/settings';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';
import { hold } from '../hold';

const named = async (): Promise<Desk> => {
  const desk = await freshDesk();
  const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2] });
  await done(addSurveyor(desk, { role: 'Helper', name: 'Ann Lee' }));
  await done(addInterpretation(desk, work.sculpture, { statement: 'Ann Lee thinks it is the pond', by: 'Curator' }));
  await done(addInterpretation(desk, work.sculpture, { statement: 'The wind, says ANN LEE', by: 'Curator' }));
  return desk;
};
const said = async (desk: Desk) => JSON.stringify(await desk.store.allEntries());

describe('Erasing a name from the settings', () => {
  it('says what goes, where else it stands and what it cannot reach, asks twice, and erases where ticked', async () => {
    const user = userEvent.setup();
    const desk = await named();
    show(desk, <SettingsScreen />);
    await user.click(await screen.findByRole('button', { name: 'Erase a name …' }));
    const sheet = await screen.findByRole('dialog', { name: 'Erase a name' });
    expect(await within(sheet).findByText('“Ann Lee” goes from this survey for good.')).toBeDefined();
    expect(
      within(sheet).getByText(/Files, bags and other devices keep it until they meet this survey again/),
    ).toBeDefined();
    expect(within(sheet).getByText(/Not reached: nicknames/)).toBeDefined();
    const wind = within(sheet).getByRole('checkbox', { name: /The wind, says ANN LEE/ });
    expect(within(sheet).getByRole('checkbox', { name: /thinks it is the pond/ })).toHaveProperty('checked', true);
    expect(await axeFaults()).toEqual([]);
    await user.click(wind);

    await user.click(within(sheet).getByRole('button', { name: 'Erase for good' }));
    expect(within(sheet).getByText('Write why: it is all that stays.')).toBeDefined();
    await user.type(within(sheet).getByRole('textbox', { name: 'Reason' }), 'Asked for it');
    await user.click(within(sheet).getByRole('button', { name: 'Erase for good' }));
    expect(within(sheet).getByText('Really erase? It cannot be undone.')).toBeDefined();
    expect(await said(desk), 'nothing is erased before it is asked twice').toContain('Ann Lee');
    await hold(within(sheet).getByRole('button', { name: 'Yes, erase it now' }));

    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
    expect(await said(desk)).not.toContain('Ann Lee');
    expect(await said(desk)).toContain('Helper thinks it is the pond');
    expect(await said(desk)).toContain('The wind, says ANN LEE');
    expect(await screen.findByText('A name, 15 October 2026: Asked for it')).toBeDefined();
    expect(screen.queryByRole('button', { name: 'Erase a name …' })).toBeNull();
  });

  it('asks again where the reason is changed, and says where the reason holds the name', async () => {
    const user = userEvent.setup();
    const desk = await named();
    show(desk, <SettingsScreen />);
    await user.click(await screen.findByRole('button', { name: 'Erase a name …' }));
    await screen.findByText('“Ann Lee” goes from this survey for good.');
    const reason = screen.getByRole('textbox', { name: 'Reason' });
    await user.type(reason, 'Ann Lee left');
    await user.click(screen.getByRole('button', { name: 'Erase for good' }));
    await hold(screen.getByRole('button', { name: 'Yes, erase it now' }));
    expect(await screen.findByText(/The reason holds the very name/)).toBeDefined();
    expect(await said(desk)).toContain('Ann Lee');
    await user.clear(reason);
    await user.type(reason, 'Left');
    expect(screen.queryByRole('button', { name: 'Yes, erase it now' })).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Close' }));
    expect(await said(desk)).toContain('Ann Lee');
  });

  it('is not offered where no name is kept', async () => {
    const desk = await freshDesk();
    await done(addSurveyor(desk, { role: 'Helper' }));
    show(desk, <SettingsScreen />);
    expect(await screen.findByRole('radio', { name: 'Helper' })).toBeDefined();
    expect(screen.queryByRole('button', { name: 'Erase a name …' })).toBeNull();
  });
});
