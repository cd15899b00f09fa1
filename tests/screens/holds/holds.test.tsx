import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { recordTreatment, undoLast } from '../../../src/actions';
import { adviceOf, holdsOf, livesOf } from '../../../src/engine/hold';
import { HoldsScreen } from '../../../src/screens/holds';
import { HoldsView } from '../../../src/screens/holds/HoldsView';
import { LogbookScreen } from '../../../src/screens/logbook';
import { NextStepsScreen } from '../../../src/screens/next-steps';
import { SculptureScreen } from '../../../src/screens/sculptures/SculptureScreen';
import { demoDay, saltlamp } from '../../engine/hold/saltlamp';
import { withStopWord } from '../../engine/hold/withStopWord';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const all = saltlamp.map((record) => ({ record, zones: holdsOf(record, demoDay) }));
const lives = livesOf(all, 1);
const garden = {
  lives,
  perWork: all.map(({ record, zones }) => ({
    record,
    need: null,
    holds: zones,
    advice: adviceOf(record, zones, lives, demoDay),
  })),
  workingOut: 0,
};
const showGarden = async (mayWrite = true) =>
  show(await freshDesk(), <HoldsView insights={garden} own={null} mayWrite={mayWrite} />);
const card = (name: RegExp) => screen.getByRole('article', { name });

describe('the holds of the demo', () => {
  it('start with the zone where waxing does not hold, and say there only to ask the conservator', async () => {
    await showGarden();
    const folds = card(/^D · Coat folds, weather side/);
    const ask = screen
      .getAllByText('Waxing does not hold here: ask the conservator')
      .map((one) => one.closest('article'));
    expect(ask).toContain(folds);
    expect(screen.getAllByRole('article').slice(0, ask.length)).toEqual(ask);
    expect(within(folds).getByText('Waxing does not hold here: ask the conservator')).toBeDefined();
    expect(within(folds).getByText('Looks shorter, not proven.')).toBeDefined();
    expect(within(folds).getByText('If waxed on 20 May 2027: look on 22 July 2027')).toBeDefined();
  });

  it('ask for no wax where a stop word stands, whatever day the holds come to', async () => {
    const told = garden.perWork.find(({ advice }) => advice.some((one) => one.waxAgainBy && !one.asksConservator));
    const { record, advice } = told!;
    const zone = advice.find((one) => one.waxAgainBy && !one.asksConservator)!.zone;
    const stopped = withStopWord(record, zone);
    const perWork = garden.perWork.map((work) => (work === told ? { ...work, record: stopped } : work));
    show(await freshDesk(), <HoldsView insights={{ ...garden, perWork }} own={null} mayWrite />);
    expect(screen.getAllByText('Not yet: a stop word was seen here. Ask the conservator').length).toBeGreaterThan(0);
  });

  it('show each hold as a stretch of months, never as a point', async () => {
    const user = userEvent.setup();
    await showGarden();
    const folds = card(/^D · Coat folds, weather side/);
    await user.click(within(folds).getByRole('button', { name: 'Why, for D · Coat folds, weather side' }));
    const rows = within(within(folds).getByRole('table', { name: 'Its holds' })).getAllByRole('row');
    expect(rows.slice(1).map((row) => within(row).getAllByRole('cell')[2]?.textContent)).toEqual([
      'up to 11.7',
      'up to 4.6',
      'over 1.8, up to 3.7',
      'over 1.6, up to 3',
      'over 1.4, up to 2.8',
      'over 1.4, up to 2.5',
    ]);
  });

  it('draw the bars open where holds look shorter', async () => {
    await showGarden();
    const folds = card(/^D · Coat folds, weather side/);
    expect(
      within(folds).getByRole('img', { name: /How long each coating held: D · Coat folds, weather side/ }),
    ).toBeDefined();
    expect(within(card(/^G · Feet and base plate/)).queryByRole('img')).toBeNull();
  });

  it('say why a coating has no hold', async () => {
    const user = userEvent.setup();
    await showGarden();
    const band = card(/^H · Lower arcs, spray band/);
    await user.click(within(band).getByRole('button', { name: /^Why/ }));
    expect(within(band).getAllByText(/No clean start: green was there on 2[23] May 202[56]/)).toHaveLength(2);
  });

  it('put zones away of which nothing is asked, and count them', async () => {
    await showGarden();
    expect(screen.getByRole('button', { name: /^Show \d+ zones where nothing is asked for/ })).toBeDefined();
    const bellies = screen.getByText('B · Bellies').closest('article') as HTMLElement;
    expect(within(bellies).getByText('No need for a date shows')).toBeDefined();
    expect(within(bellies).getByText('The yearly round will do')).toBeDefined();
  });

  it('give the group its counts, its steps as a table, and the reason why there is no median', async () => {
    await showGarden();
    const open = card(/^Faces up, splash from the ground/);
    expect(within(open).getByText('11 holds in 3 zones; 10 of them were seen to end.')).toBeDefined();
    expect(within(open).getByText(/gives no shape to borrow either/)).toBeDefined();
    const masses = within(open).getByRole('table', { name: /^Share still clear/, hidden: true });
    const shares = within(masses).getAllByRole('cell', { hidden: true });
    expect(shares.map((cell) => cell.textContent)).toEqual(['91 %', '9 %']);
  });

  it('set the holds with the sprinkler beside those since it is gone, and name no cause', async () => {
    await showGarden();
    const whole = card(/^The whole collection told by looks/);
    const sides = within(whole).getByRole('group', { name: 'With and without a cause' });
    const told = lives.find(({ group, event }) => group === 'all' && event === 'spot')?.withAndWithout;
    const counts = [told?.with, told?.without].map((side) => `${side?.holds} holds in ${side?.zones} zones; `);
    const shown = within(sides).getAllByText(/holds? in/);
    expect(shown.map((one, i) => one.textContent?.startsWith(counts[i] ?? '?'))).toEqual([true, true]);
    expect(sides.textContent).not.toMatch(/because|due to|thanks to|leads? to/i);
  });

  it('show one work alone', async () => {
    const user = userEvent.setup();
    await showGarden();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Show' }), 'SW-04 Geese, Wind Dropping');
    expect(screen.queryByText('D · Coat folds, weather side')).toBeNull();
    expect(screen.getByText('B · Bellies')).toBeDefined();
  });

  it('never show a number that is none', async () => {
    const { container } = await showGarden();
    expect(container.textContent).not.toMatch(/NaN|Infinity|undefined|null|∞/);
  });

  it('have no faults axe can find', async () => {
    await showGarden();
    expect(await axeFaults()).toEqual([]);
  });
});

describe('before there is anything to tell', () => {
  it('says to add zones first', async () => {
    show(await freshDesk(), <HoldsScreen />);
    expect(await screen.findByText('There is no zone yet to coat or to look at.')).toBeDefined();
    expect(screen.getByRole('link', { name: 'Go to the sculptures' })).toBeDefined();
  });

  it('says to write the waxings down first', async () => {
    const desk = await freshDesk();
    await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    show(desk, <HoldsScreen />);
    expect(await screen.findByText('No coating is written down yet.')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('says to look, once there is a coating nobody has looked at', async () => {
    const desk = await freshDesk();
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    await done(recordTreatment(desk, sculpture, { zones: [], type: 'wax', date: '2026-05-21' }));
    show(desk, <HoldsScreen />);
    expect(await screen.findByText('Coatings are written down, but nobody has looked since.')).toBeDefined();
    expect(screen.getByRole('link', { name: 'Go for a walk' })).toBeDefined();
    expect(screen.getByText('Cold wax, 21 May 2026')).toBeDefined();
  });
});

describe('what counts as back', () => {
  const withOnePercent = async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    await done(recordTreatment(desk, work.sculpture, { zones: [], type: 'wax', date: '2025-06-01' }));
    await aRound(desk, work, '2026-05-12', [{ 'green-spots': 0.01 }]);
    return desk;
  };

  it('is changed by the curator, and the holds are told anew; Undo brings the old ones back', async () => {
    const user = userEvent.setup();
    const desk = await withOnePercent();
    show(desk, <HoldsScreen />);
    expect(await screen.findByText('seen clear on 12 May 2026')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Change these two' }));
    const level = screen.getByRole('textbox', { name: 'Green counts as back from' });
    await user.clear(level);
    await user.type(level, '1');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText('green seen on 12 May 2026')).toBeDefined();
    expect(screen.getByText(/Version 1, set by this collection/)).toBeDefined();
    await done(undoLast(desk));
    expect(await screen.findByText('seen clear on 12 May 2026')).toBeDefined();
  });

  it.each([
    ['none', 'Write both as numbers of percent.'],
    ['0', 'The level must be a share from 0.5 to 100 %.'],
  ])('%j as a level is refused with a sentence', async (typed, sentence) => {
    const user = userEvent.setup();
    show(await withOnePercent(), <HoldsScreen />);
    await user.click(await screen.findByRole('button', { name: 'Change these two' }));
    const level = screen.getByRole('textbox', { name: 'Green counts as back from' });
    await user.clear(level);
    await user.type(level, typed);
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    await waitFor(() => expect(screen.getByRole('alert').textContent).toContain(sentence));
  });

  it('cannot be changed in a tab that only reads', async () => {
    await showGarden(false);
    expect(screen.queryByRole('button', { name: 'Change these two' })).toBeNull();
  });
});

describe('the way to this page', () => {
  it.each([
    ['next steps', () => <NextStepsScreen />],
    ['a sculpture', (work: string) => <SculptureScreen sculpture={work} />],
    ['its logbook', (work: string) => <LogbookScreen sculpture={work} />],
  ])('is on %s', async (_, page) => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    await aRound(desk, work, '2026-05-12', ['nothing']);
    show(desk, page(work.sculpture));
    const link = await screen.findByRole('link', { name: 'How long the wax holds' });
    expect(link.getAttribute('href')).toBe('/holds');
  });
});
