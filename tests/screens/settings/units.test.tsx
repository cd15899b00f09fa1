import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { setSetting, settings } from '../../../src/actions';
import { NewZoneScreen } from '../../../src/screens/sculptures/NewZoneScreen';
import { SettingsScreen } from '../../../src/screens/settings';
import { speak } from '../../../src/words/tongue';
import { aWork, freshDesk, show } from '../deskwork';

const reload = vi.fn();
beforeEach(() => {
  reload.mockClear();
  vi.stubGlobal('location', { ...window.location, hash: '', reload });
});
afterEach(() => {
  vi.unstubAllGlobals();
  setSetting('tongue', 'en-GB');
  setSetting('units', 'metric');
  speak({ language: 'en', locale: 'en-GB', units: 'metric' });
});

describe('Language and units', () => {
  it('are chosen by a touch each, in words of their own, and begin anew with the page', async () => {
    const user = userEvent.setup();
    show(await freshDesk(), <SettingsScreen />);
    await user.click(await screen.findByRole('radio', { name: /^Deutsch/ }));
    expect(settings.get().tongue).toBe('de-DE');
    await user.click(screen.getByRole('radio', { name: /^United States/ }));
    expect(settings.get().units).toBe('us');
    expect(reload).toHaveBeenCalledTimes(2);
    expect(screen.getByText(/not yet read by a native speaker/)).toBeDefined();
  });

  it('an area typed in square feet is kept in square metres, and shown in feet', async () => {
    speak({ language: 'en', locale: 'en-US', units: 'us' });
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { sculpture } = await aWork(desk, { number: 'Q-1', title: 'Quay work', areas: [] });
    show(desk, <NewZoneScreen sculpture={sculpture} />);
    const entry = await screen.findByRole('textbox', { name: /area/i });
    await user.type(screen.getByRole('textbox', { name: 'Name' }), 'Base');
    await user.type(entry, '10.5');
    expect(screen.getByRole('status').textContent).toMatch(/10\.5 ft²/);
    await user.click(screen.getByRole('button', { name: 'Add the zone' }));
    await waitFor(async () => {
      const zones = await desk.store.within(sculpture, ['zone']);
      const [zone] = zones;
      const versions = zone?.lead.body.versions as { area: { m2: number } }[] | undefined;
      expect(versions?.[0]?.area.m2).toBeCloseTo(10.5 * 0.09290304, 9);
    });
  });
});
