import { screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addPlanned, type Desk } from '../../../src/actions';
import { GroundsScreen } from '../../../src/screens/grounds';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';

const agreements = async (desk: Desk) =>
  (await desk.store.ofKind('groundsAgreement')).filter(({ gone }) => !gone).map(({ lead }) => lead.body);

describe('Agreements with the grounds staff', () => {
  it('begin with a sentence, and name whom they were made with', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    show(desk, <GroundsScreen />);
    expect(await screen.findByText('Nothing agreed yet.')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Write an agreement' }));
    await user.click(screen.getByRole('radio', { name: 'Salt in winter' }));
    await user.click(screen.getByRole('button', { name: 'A sentence to begin with' }));
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(screen.getByText('Say with whom: a role or a name.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: /Agreed with/ }), 'Head gardener');
    await user.click(screen.getByRole('checkbox', { name: '1 Heron' }));
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    await waitFor(async () =>
      expect(await agreements(desk)).toMatchObject([
        { topic: 'salt', who: { role: 'Head gardener' }, works: [sculpture], agreed: '2026-10-15' },
      ]),
    );
    expect(await screen.findByText(/No salt within/)).toBeDefined();
  });

  it('refuses a review before the day it was agreed', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    show(desk, <GroundsScreen />);
    await user.click(await screen.findByRole('button', { name: 'Write an agreement' }));
    await user.type(screen.getByRole('textbox', { name: 'What was agreed' }), 'No salt');
    await user.type(screen.getByRole('textbox', { name: /Agreed with/ }), 'Gardener');
    await user.type(screen.getByLabelText(/Look at it again on/), '2026-10-01');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText('1 October 2026 comes before 15 October 2026. Put the days right.')).toBeDefined();
    expect(await agreements(desk)).toEqual([]);
  });

  it('says which is to be looked at again', async () => {
    const desk = await freshDesk();
    const said = { who: { role: 'Gardener' }, topic: 'salt', text: 'No salt', agreed: '2025-10-01' };
    await done(addPlanned(desk, 'groundsAgreement', { ...said, review: '2026-10-01' }));
    show(desk, <GroundsScreen />);
    expect(await screen.findByText('To be looked at again since 1 October 2026')).toBeDefined();
  });
});
