import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it } from 'vitest';
import { setSetting, settings, setUpCollection } from '../../../src/actions';
import { SettingsScreen } from '../../../src/screens/settings';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';

afterEach(() => {
  setSetting('theme', 'light');
  setSetting('hand', 'right');
  setSetting('gloves', false);
  setSetting('ownEye', true);
});

describe('Settings', () => {
  it('hold as soon as they are touched', async () => {
    const user = userEvent.setup();
    show(await freshDesk(), <SettingsScreen />);
    expect(await screen.findByRole('checkbox', { name: 'Own eye first' })).toHaveProperty('checked', true);
    await user.click(screen.getByRole('radio', { name: 'In the sun' }));
    await user.click(screen.getByRole('radio', { name: 'Left' }));
    await user.click(screen.getByRole('checkbox', { name: 'Gloves' }));
    await user.click(screen.getByRole('checkbox', { name: 'Own eye first' }));
    expect(settings.get()).toMatchObject({ theme: 'sun', hand: 'left', gloves: true, ownEye: false });
  });

  it('say by one touch who is at work, and ask a new person for a role', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await done(setUpCollection(desk, { name: 'Quay walk', role: 'Curator' }));
    show(desk, <SettingsScreen />);
    const curator = await screen.findByRole('radio', { name: 'Curator' });
    expect(curator).toHaveProperty('checked', true);
    await user.click(screen.getByRole('button', { name: 'Add a person' }));
    await user.click(screen.getByRole('button', { name: 'Add and set to work' }));
    expect(screen.getByText('Say in what role this person surveys.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: 'Role' }), 'Helper');
    await user.click(screen.getByRole('button', { name: 'Add and set to work' }));
    await waitFor(() => expect(screen.getByRole('radio', { name: 'Helper' })).toHaveProperty('checked', true));
    await user.click(screen.getByRole('radio', { name: 'Curator' }));
    expect(settings.get().surveyor).toBe((await desk.store.ofKind('surveyor'))[0]?.thing);
  });

  it('count what is kept here, and lead to what can be done for it', async () => {
    const desk = await freshDesk();
    await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] });
    show(desk, <SettingsScreen />);
    expect(await screen.findByText(/3 entries, 0 photos/)).toBeDefined();
    expect(screen.getByRole('link', { name: 'Keeping it safe' })).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('rename the collection, never to nothing', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    await done(setUpCollection(desk, { name: 'Quay walk', role: 'Curator' }));
    show(desk, <SettingsScreen />);
    const name = await screen.findByRole('textbox', { name: /Name of the collection/ });
    await user.clear(name);
    await user.click(screen.getByRole('button', { name: 'Keep this name' }));
    await waitFor(() => expect(name.getAttribute('aria-invalid')).toBe('true'));
    expect((await desk.store.current(desk.collection))?.lead.body.name).toBe('Quay walk');
    await user.type(name, 'Old quay');
    await user.click(screen.getByRole('button', { name: 'Keep this name' }));
    await waitFor(async () => expect((await desk.store.current(desk.collection))?.lead.body.name).toBe('Old quay'));
  });
});
