import { render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { addSculpture, deskOn, editSculpture } from '../../../src/actions';
import { say } from '../../../src/screens/shell';
import { ErrorBoundary } from '../../../src/screens/shell/ErrorBoundary';
import { Shell } from '../../../src/screens/shell/Shell';
import { tellUpdateReady } from '../../../src/screens/shell/updateReady';
import { axeFaults } from '../axe';
import { done, freshDesk, show } from '../deskwork';

beforeEach(() => {
  vi.stubGlobal('matchMedia', () => ({ matches: false }));
  location.hash = '#/settings';
});
afterEach(() => vi.unstubAllGlobals());

describe('The shell', () => {
  it('names the deed it would undo, and takes it back', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { sculpture } = await done(addSculpture(desk, { number: '1', title: 'Bather' }));
    await done(editSculpture(desk, sculpture, { title: 'Grey heron' }));
    render(<Shell desk={desk} />);
    await user.click(await screen.findByRole('button', { name: /Undo: .*Grey heron/ }));
    await waitFor(async () => expect((await desk.store.current(sculpture))?.lead.body.title).toBe('Bather'));
    expect(screen.getByRole('status').textContent).toMatch(/Taken back/);
  });

  it('offers no undo where nothing was done', async () => {
    render(<Shell desk={await freshDesk()} />);
    await screen.findByRole('heading', { level: 1, name: 'Settings' });
    expect(screen.queryByRole('button', { name: /Undo/ })).toBeNull();
  });

  it('marks the invented collection on every screen, on the ladder too', async () => {
    const { store } = await freshDesk();
    const desk = deskOn(store, { invented: true });
    for (const hash of ['#/', '#/settings', '#/carry', '#/round/none']) {
      location.hash = hash;
      const { unmount } = render(<Shell desk={desk} />);
      expect(screen.getByText('Invented collection.')).toBeDefined();
      unmount();
    }
  });

  it('does not mark one’s own collection as invented', async () => {
    render(<Shell desk={await freshDesk()} />);
    await screen.findByRole('heading', { level: 1, name: 'Settings' });
    expect(screen.queryByText('Invented collection.')).toBeNull();
  });

  it('says which place is open, and has its landmarks', async () => {
    render(<Shell desk={await freshDesk()} />);
    await screen.findByRole('heading', { level: 1, name: 'Settings' });
    const nav = screen.getByRole('navigation', { name: 'Main' });
    expect(within(nav).getByRole('link', { current: 'page' }).textContent).toBe('Settings');
    expect(within(nav).getAllByRole('link')).toHaveLength(6);
    expect(screen.getByRole('main')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('moves the focus to the title of the screen that comes up', async () => {
    render(<Shell desk={await freshDesk()} />);
    const title = await screen.findByRole('heading', { level: 1, name: 'Settings' });
    expect(document.activeElement).toBe(title);
    expect(document.title).toBe('Settings · Patina Round');
  });

  it('says when there is no such screen', async () => {
    location.hash = '#/nowhere/at/all';
    render(<Shell desk={await freshDesk()} />);
    expect(await screen.findByText('There is no such screen')).toBeDefined();
  });

  it('says what was done in one live region, the same words twice too', async () => {
    render(<Shell desk={await freshDesk()} />);
    await screen.findByRole('heading', { level: 1, name: 'Settings' });
    const region = screen.getByRole('status');
    say('Zone A is added.');
    await waitFor(() => expect(region.textContent).toBe('Zone A is added.'));
    const first = region.firstChild;
    say('Zone A is added.');
    await waitFor(() => expect(region.firstChild).not.toBe(first));
  });

  it('tells of a version that waits, but never on the ladder', async () => {
    const start = vi.fn();
    tellUpdateReady(start);
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { unmount } = render(<Shell desk={desk} />);
    await user.click(await screen.findByRole('button', { name: 'Start it now' }));
    expect(start).toHaveBeenCalledOnce();
    unmount();
    location.hash = '#/round/some/zone/other';
    render(<Shell desk={desk} />);
    await screen.findByRole('main');
    expect(screen.queryByRole('button', { name: 'Start it now' })).toBeNull();
  });
});

function Broken(): never {
  throw new Error('no such zone');
}

describe('A screen that breaks', () => {
  it('says so, says that what was entered is kept, and shows the way to carry the survey out', async () => {
    const quiet = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    show(
      await freshDesk(),
      <ErrorBoundary place="/x">
        <Broken />
      </ErrorBoundary>,
    );
    expect(screen.getByRole('alert').textContent).toMatch(/What you entered is kept/);
    expect(screen.getByRole('link', { name: 'Carry the survey out' }).getAttribute('href')).toBe('/carry');
    quiet.mockRestore();
  });
});
