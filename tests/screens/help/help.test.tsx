import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, expect, it, vi } from 'vitest';
import { deskOn, setTourStep } from '../../../src/actions';
import { groups, helpPageOf } from '../../../src/screens/help/pages';
import { termsOf } from '../../../src/screens/help/termsOf';
import { helpNameOf } from '../../../src/screens/shell/helpNameOf';
import { routes } from '../../../src/screens/shell/routes';
import { Shell } from '../../../src/screens/shell/Shell';
import { w } from '../../../src/words';
import { axeFaults } from '../axe';
import { freshDesk } from '../deskwork';

const withHelp = routes.filter(({ path }) => !path.startsWith('/help'));
/** Two addresses of one screen share its page by saying so. */
const names = [...new Set(withHelp.map(helpNameOf))];
const unsaid = withHelp.filter(({ help }) => help === undefined).map(helpNameOf);
const pages = groups.flatMap(({ pages: these }) => Object.entries(these));
const wordsOf = (name: string): number => {
  const page = helpPageOf(name);
  const terms = (termsOf[name] ?? []).map((term) => w.helpTerms[term].join(' '));
  return [page?.what, page?.first, page?.from, ...terms].join(' ').split(/\s+/).length;
};

beforeEach(() => {
  vi.stubGlobal('matchMedia', () => ({ matches: false }));
  setTourStep(0);
});

it('every screen has a page of help of its own, and no page is left without a screen', () => {
  expect(new Set(unsaid).size, 'two screens share a page and do not say so').toBe(unsaid.length);
  expect(names.filter((name) => !helpPageOf(name))).toEqual([]);
  expect(pages.map(([name]) => name).filter((name) => !names.includes(name))).toEqual([]);
  expect(Object.keys(termsOf).filter((name) => !names.includes(name))).toEqual([]);
});

it('a page is read in half a minute, and says what its words mean', () => {
  const off = names.map((name) => ({ name, words: wordsOf(name) })).filter(({ words }) => words < 60 || words > 150);
  expect(off).toEqual([]);
  expect(names.filter((name) => !termsOf[name]?.length)).toEqual([]);
});

it('every word that is explained is spoken on some screen', () => {
  const used = new Set(Object.values(termsOf).flat());
  expect(Object.keys(w.helpTerms).filter((term) => !used.has(term as keyof typeof w.helpTerms))).toEqual([]);
});

it('the question mark leads to the page of the screen that is open, and back again', async () => {
  const user = userEvent.setup();
  location.hash = '#/settings';
  render(<Shell desk={await freshDesk()} />);
  await user.click(await screen.findByRole('link', { name: w.shell.help }));
  await screen.findByRole('heading', { level: 2, name: w.help.first });
  expect(location.hash).toBe('#/help/settings');
  expect(screen.getByText(w.helpWorks.settings.first)).toBeDefined();
  expect(await axeFaults()).toEqual([]);
  await user.click(screen.getByRole('link', { name: w.help.back }));
  expect(location.hash).toBe('#/settings');
});

it('a help page that is not there leads to the list of all', async () => {
  const user = userEvent.setup();
  location.hash = '#/help/nothing-such';
  render(<Shell desk={await freshDesk()} />);
  await screen.findByRole('heading', { level: 1, name: w.help.lost });
  await user.click(screen.getByRole('link', { name: w.help.all }));
  const main = screen.getByRole('main');
  expect(await within(main).findAllByRole('link')).toHaveLength(names.length + 1);
});

it('the tour is offered from the help of the demo and goes on where it was, never in one’s own collection', async () => {
  const user = userEvent.setup();
  const own = await freshDesk();
  location.hash = '#/help/carry';
  const { unmount } = render(<Shell desk={own} />);
  await screen.findByRole('heading', { level: 2, name: w.help.first });
  expect(screen.queryByRole('button', { name: w.tour.begin })).toBeNull();
  unmount();
  render(<Shell desk={deskOn(own.store, { invented: true })} />);
  await user.click(await screen.findByRole('button', { name: w.tour.begin }));
  expect(location.hash).toBe('#/');
  expect(await screen.findByText(w.tour.steps.works)).toBeDefined();
});
