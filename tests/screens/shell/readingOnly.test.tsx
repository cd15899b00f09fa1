import { render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addSculpture, deskOn } from '../../../src/actions';
import { Shell } from '../../../src/screens/shell/Shell';
import { done, freshDesk } from '../deskwork';

describe('A second tab', () => {
  it('says that it only reads, offers no undo, and takes over when asked', async () => {
    const user = userEvent.setup();
    const written = await freshDesk();
    await done(addSculpture(written, { number: '1', title: 'Bather' }));
    const { store } = written;
    const told = new Set<() => void>();
    let mode: 'reading' | 'writing' = 'reading';
    const reading = Object.create(store, {
      mode: { get: () => mode },
      why: { get: () => undefined },
      canTakeOver: { value: true },
      watchMode: {
        value: (changed: () => void) => {
          told.add(changed);
          return () => told.delete(changed);
        },
      },
      takeOver: {
        value: async () => {
          mode = 'writing';
          for (const changed of told) changed();
        },
      },
    }) as typeof store;
    location.hash = '#/settings';
    render(<Shell desk={deskOn(reading, {})} />);
    expect(await screen.findByText('This tab only reads')).toBeDefined();
    expect(screen.queryByRole('button', { name: /Undo/ })).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Take over here' }));
    await waitFor(() => expect(screen.queryByText('This tab only reads')).toBeNull());
    expect(await screen.findByRole('button', { name: /Undo/ })).toBeDefined();
  });
});
