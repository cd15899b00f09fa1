import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addPlanned, type Desk } from '../../../src/actions';
import type { BodyOf } from '../../../src/engine/record';
import { DecisionsScreen } from '../../../src/screens/decisions';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show, type Work } from '../deskwork';

const heron = async () => {
  const desk = await freshDesk();
  return { desk, work: await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] }) };
};
const decided = (work: Work, more: Partial<BodyOf<'decision'>> = {}): BodyOf<'decision'> => ({
  ...{ sculpture: work.sculpture, date: '2024-11-20', title: 'Go on waxing', chosen: 'Wax every May', refused: [] },
  ...{ evidence: [], consulted: [], tripwires: [], signed: [], ...more },
});
const kept = async (desk: Desk, kind: 'decision' | 'tripwireAnswer') =>
  (await desk.store.ofKind(kind)).filter(({ gone }) => !gone).map(({ lead }) => lead.body);
const greenOver30 = (work: Work) => [{ id: 't1', sort: 'green share over', zone: work.zones[0]!, level: 30 }];
const met = async () => {
  const { desk, work } = await heron();
  await aRound(desk, work, '2025-05-12', [{ 'green-spots': 0.6 }, 'nothing']);
  await done(addPlanned(desk, 'decision', decided(work, { tripwires: greenOver30(work) })));
  return { desk, work };
};

describe('The journal of decisions', () => {
  it('says what it is for while nothing is decided', async () => {
    const { desk, work } = await heron();
    show(desk, <DecisionsScreen sculpture={work.sculpture} />);
    expect(await screen.findByText('Nothing decided yet')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('keeps what was chosen, what was refused and why, picked from the record, and what would change a mind', async () => {
    const user = userEvent.setup();
    const { desk, work } = await heron();
    await aRound(desk, work, '2025-05-12', [{ 'green-spots': 0.6 }, 'nothing']);
    const cost = { sort: 'keep waxing', costs: [], irreversible: 0 };
    for (const title of ['A: wax', 'B: strip'])
      await done(addPlanned(desk, 'option', { ...cost, sculpture: work.sculpture, title }));
    show(desk, <DecisionsScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Write a decision' }));
    await user.click(screen.getByRole('button', { name: 'Keep the decision' }));
    expect(screen.getByText('Say in a few words what it is about.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: 'What it is about' }), 'Wax or strip');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Which option was chosen' }), 'A: wax');
    await user.type(screen.getByRole('textbox', { name: /What was decided/ }), 'Wax every May');
    await user.click(screen.getByRole('button', { name: 'Add the other options' }));
    await user.click(screen.getByRole('button', { name: 'Keep the decision' }));
    expect(screen.getByText('Say why it was refused.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: 'Why not' }), 'Not reversible');
    await user.click(await screen.findByRole('checkbox', { name: /^Round of 12 May 2025: green not at rest/ }));
    await user.click(screen.getByRole('button', { name: 'Add a tripwire' }));
    const wire = within(screen.getByRole('group', { name: 'Tripwire 1' }));
    await user.click(screen.getByRole('button', { name: 'Keep the decision' }));
    expect(wire.getByText('Choose a zone.')).toBeDefined();
    await user.selectOptions(wire.getByRole('combobox', { name: 'On which zone' }), work.zones[1]!);
    await user.type(wire.getByRole('textbox', { name: 'Level' }), '6');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep the decision' }));
    expect(await screen.findByText('Wax holds over 6 months on zone B, part B for 2 seasons in a row')).toBeDefined();
    expect(await screen.findByText('cannot be told yet')).toBeDefined();
    const [body] = await kept(desk, 'decision');
    expect(body).toMatchObject({
      title: 'Wax or strip',
      refused: [{ what: 'B: strip', why: 'Not reversible' }],
      evidence: [expect.stringMatching(/^Round of 12 May 2025: green not at rest 1\.\d\d m²/)],
      tripwires: [{ sort: 'hold over', zone: work.zones[1], level: 6, times: 2 }],
    });
  });

  it('tells that what would change a mind has come, with what was seen, and rests once somebody answered', async () => {
    const user = userEvent.setup();
    const { desk, work } = await met();
    show(desk, <DecisionsScreen sculpture={work.sculpture} />);
    expect(await screen.findByRole('note', { name: /A reason to decide anew has come/ })).toBeDefined();
    expect(
      screen.getByText(/Green that is not at rest on zone A, part A: 60 % \(.* to .*\) on 12 May 2025, against 30 %/),
    ).toBeDefined();
    await user.click(screen.getByRole('button', { name: /^Answer: Green not at rest covers over 30 % of zone A/ }));
    await user.click(screen.getByRole('button', { name: 'Keep the answer' }));
    expect(screen.getByText('Choose an answer.')).toBeDefined();
    await user.click(screen.getByRole('radio', { name: /Keep to it/ }));
    await user.type(screen.getByRole('textbox', { name: /Who says so/ }), 'Steward');
    await user.click(screen.getByRole('button', { name: 'Keep the answer' }));
    expect(await screen.findByText(/15 October 2026: keep to it, said Steward/)).toBeDefined();
    await waitFor(() => expect(screen.queryByRole('note', { name: /A reason to decide anew/ })).toBeNull());
    expect((await kept(desk, 'tripwireAnswer'))[0]).toMatchObject({
      answer: 'keep to it',
      seen: expect.stringMatching(/60 %/),
    });
  });

  it('opens a new decision for who decides anew; the old one stays to be read and is no longer watched', async () => {
    const user = userEvent.setup();
    const { desk, work } = await met();
    show(desk, <DecisionsScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Decide anew: “Go on waxing”' }));
    expect(screen.getByText('It takes the place of “Go on waxing”, which stays to be read.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: /What was decided/ }), 'Ask a conservator');
    await user.click(await screen.findByRole('button', { name: 'Take away tripwire 1' }));
    await user.click(screen.getByRole('button', { name: 'Keep the decision' }));
    await user.click(await screen.findByRole('button', { name: 'Show 1 earlier decision' }));
    expect(screen.getByText('Replaced by “Go on waxing”')).toBeDefined();
    expect((await kept(desk, 'decision')).filter(({ replacedBy }) => replacedBy)).toHaveLength(1);
    expect(screen.queryByRole('button', { name: /^Answer:/ })).toBeNull();
  });

  it('says which day is out of order instead of keeping it', async () => {
    const user = userEvent.setup();
    const { desk, work } = await met();
    show(desk, <DecisionsScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Edit the decision: “Go on waxing”' }));
    const review = screen.getByLabelText(/Day to look at it again/);
    await user.clear(review);
    await user.type(review, '2024-11-01');
    await user.click(screen.getByRole('button', { name: 'Keep the decision' }));
    expect(await screen.findByText(/looked at again on 1 November 2024, before that/)).toBeDefined();
  });

  it('of all works says whose each is, and one of the whole collection watches days and money only', async () => {
    const user = userEvent.setup();
    const { desk, work } = await met();
    const wires = [{ id: 'd', sort: 'day comes', by: '2027-01-01' }];
    await done(
      addPlanned(desk, 'decision', {
        ...decided(work, { title: 'No lacquer', tripwires: wires }),
        sculpture: undefined,
      }),
    );
    show(desk, <DecisionsScreen />);
    expect(await screen.findByText('The whole collection · Decided on 20 November 2024')).toBeDefined();
    expect(screen.getByText('2 Grey heron · Decided on 20 November 2024')).toBeDefined();
    expect(await screen.findByText('not so far')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Edit the decision: “No lacquer”' }));
    expect(screen.getByText(/only days and money can be watched/)).toBeDefined();
  });
});
