import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addPlanned, commitChanges } from '../../../src/actions';
import { nameOf } from '../../../src/engine/record';
import { ApprovalsScreen } from '../../../src/screens/campaign';
import { axeFaults } from '../axe';
import { done, show } from '../deskwork';
import { heronWithCampaign, kept } from './opened';

describe('Approvals', () => {
  it('are no yes without a signature', async () => {
    const user = userEvent.setup();
    const { desk, work, campaign } = await heronWithCampaign();
    show(desk, <ApprovalsScreen campaign={campaign} />);
    expect(await screen.findByText('Nothing was put to anybody yet')).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'New approval' }));
    await user.selectOptions(screen.getByRole('combobox', { name: 'Zone' }), work.zones[0] as string);
    await user.type(screen.getByRole('textbox', { name: /Size of the sample/ }), '0,04');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(screen.getByText('Say what was shown.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: 'What was shown and said' }), 'Tool marks stand.');
    await user.click(screen.getByRole('radio', { name: 'yes' }));
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText(/A yes is somebody’s/)).toBeDefined();
    expect(await kept(desk, 'approval')).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Add a signature' }));
    await user.type(screen.getByRole('textbox', { name: /Role/ }), 'conservator');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText('Signed: conservator, 15 October 2026')).toBeDefined();
    expect(screen.getByText('Zone A · 0.04 m² · 15 October 2026')).toBeDefined();
    expect(await kept(desk, 'approval')).toMatchObject([{ of: 'sample area', answer: 'yes', m2: 0.04, campaign }]);
    expect(await axeFaults()).toEqual([]);
  });
});

describe('The agreed-colour card', () => {
  it('is kept with words, zones and signatures, and shows which of its four photos are not there', async () => {
    const user = userEvent.setup();
    const { desk, campaign } = await heronWithCampaign();
    show(desk, <ApprovalsScreen campaign={campaign} />);
    await user.click(await screen.findByRole('button', { name: 'Make a colour card' }));
    await user.click(screen.getByRole('button', { name: 'Keep the card' }));
    expect(await screen.findByText(/Say in words what colour was agreed/)).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: 'The colour in words' }), 'Deep brown, warmer than the panel');
    await user.click(screen.getByRole('checkbox', { name: /part A/ }));
    await user.type(screen.getByRole('textbox', { name: /Number of the panel/ }), 'P-2');
    await user.type(screen.getByRole('textbox', { name: /Where it is kept/ }), 'store, shelf 4');
    await user.click(screen.getByRole('button', { name: 'Add a signature' }));
    await user.type(screen.getByRole('textbox', { name: /Role/ }), 'estate');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep the card' }));
    const card = within(await screen.findByRole('article'));
    expect(card.getByText('Panel: P-2 · Kept at: store, shelf 4')).toBeDefined();
    expect(card.getAllByText('no photo')).toHaveLength(4);
    expect(card.getByText('Agreed 15 October 2026 for zone A')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('leads to the comparison of its photo with the latest one like it', async () => {
    const { desk, work, campaign } = await heronWithCampaign();
    const { sculpture } = work;
    const photo = (mark: string, taken: string) => {
      const sha256 = mark.repeat(64);
      const facts = {
        mime: 'image/webp',
        bytes: 1,
        role: 'zone',
        zone: work.zones[0],
        wet: 'dry',
        light: 'overcast',
      } as const;
      const body = { sculpture, sha256, ...facts, taken: `${taken}T10:00:00` };
      return { thing: nameOf.photo(sha256), kind: 'photo', within: sculpture, body } as const;
    };
    const [own, later] = [photo('a', '2025-09-08'), photo('b', '2026-05-12')];
    await done(commitChanges(desk, { code: 'deed: photo kept', params: {} }, [own, later]));
    const dryShade = own.thing;
    await done(
      addPlanned(desk, 'colourCard', {
        ...{
          sculpture,
          campaign,
          zones: [work.zones[0] as string],
          date: '2025-09-08',
          words: 'Deep brown',
          signed: [],
        },
        dryShade,
      }),
    );
    const { history } = show(desk, <ApprovalsScreen campaign={campaign} />);
    const link = await screen.findByRole('link', { name: 'Hold a later photo against it: dry, in shade' });
    await userEvent.setup().click(link);
    await waitFor(() => expect(history.at(-1)).toContain(`/compare/${'a'.repeat(64)}/${'b'.repeat(64)}`));
  });
});
