import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import {
  acceptImport,
  type Desk,
  editSculpture,
  openSurveyFile,
  prepareSurvey,
  removeSculpture,
  setUpCollection,
} from '../../../src/actions';
import { SettleScreen } from '../../../src/screens/settle';
import { aRound, aWork, done, freshDesk, show, type Work } from '../deskwork';

const take = async (desk: Desk, from: Desk) => {
  const { prepared } = await done(prepareSurvey(from));
  const opened = await openSurveyFile(desk, new File([prepared.bytes], prepared.name));
  if (!opened.ok) throw new Error(opened.reason.code);
  await done(acceptImport(desk, opened.preview));
};

/** Two tablets that hold the same work. */
const two = async (): Promise<{ readonly here: Desk; readonly there: Desk; readonly work: Work }> => {
  const here = await freshDesk();
  await done(setUpCollection(here, { name: 'Quay garden', role: 'Steward' }));
  const work = await aWork(here, { title: 'Grey heron', number: '2', areas: [2] });
  const there = await freshDesk(55);
  await take(there, here);
  return { here, there, work };
};

describe('Two versions to settle', () => {
  it('says so when there is nothing to settle', async () => {
    const { here } = await two();
    show(here, <SettleScreen />);
    expect(await screen.findByText(/Nothing to settle/)).toBeDefined();
  });

  it('chooses beforehand what one side changed alone, asks for the rest, and settles on what was chosen', async () => {
    const user = userEvent.setup();
    const { here, there, work } = await two();
    await done(editSculpture(here, work.sculpture, { number: '2', title: 'Heron', maker: 'not known' }));
    await done(editSculpture(there, work.sculpture, { number: '2', title: 'The grey heron', date: '1961' }));
    await take(here, there);
    show(here, <SettleScreen />);
    await user.click(await screen.findByRole('button', { name: 'Settle this one' }));
    const field = (name: string) => screen.getByRole('group', { name });
    expect(within(field('Maker')).getByRole('radio', { name: /not known/ })).toHaveProperty('checked', true);
    expect(within(field('Date')).getByRole('radio', { name: /1961/ })).toHaveProperty('checked', true);
    expect(within(field('Title')).queryByRole('radio', { checked: true })).toBeNull();
    expect(within(field('Title')).getByText(/Before: Grey heron/)).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Settle it so' }));
    expect(screen.getByRole('alert').textContent).toContain('Choose a version for each field');
    await user.click(within(field('Title')).getByRole('radio', { name: /The grey heron/ }));
    await user.click(screen.getByRole('button', { name: 'Settle it so' }));
    expect(await screen.findByText(/Nothing to settle/)).toBeDefined();
    const settled = await here.store.current(work.sculpture);
    expect(settled?.heads).toHaveLength(1);
    expect(settled?.lead.body).toMatchObject({ title: 'The grey heron', maker: 'not known', date: '1961' });
  });

  it('asks whether to keep what one side took away and the other went on with', async () => {
    const user = userEvent.setup();
    const { here, there, work } = await two();
    await done(removeSculpture(here, work.sculpture));
    await done(editSculpture(there, work.sculpture, { number: '2', title: 'The grey heron' }));
    await take(here, there);
    show(here, <SettleScreen />);
    const [first] = await screen.findAllByRole('button', { name: 'Settle this one' });
    if (first) await user.click(first);
    expect(screen.getByRole('note', { name: /One side took this away/ })).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Keep it' }));
    await screen.findByText(/Nothing to settle/);
    const settled = await here.store.current(work.sculpture);
    expect(settled?.gone).toBe(false);
    expect(settled?.heads).toHaveLength(1);
  });

  it('asks whether two rounds begun apart are one, and joins them only when told', async () => {
    const user = userEvent.setup();
    const { here, there, work } = await two();
    const mine = await aRound(here, work, '2026-05-10', [{ 'even-green-film': 0.2 }]);
    const theirs = await aRound(there, work, '2026-05-11', ['nothing']);
    await take(here, there);
    show(here, <SettleScreen />);
    expect(await screen.findByRole('heading', { name: 'Is this one round?' })).toBeDefined();
    expect((await here.store.current(theirs))?.lead.body.partOf).toBeUndefined();
    await user.click(screen.getByRole('button', { name: 'They are two rounds' }));
    expect(await screen.findByText(/Nothing to settle/)).toBeDefined();
    expect((await here.store.current(theirs))?.lead.body.apartFrom).toEqual([mine]);
  });
});
