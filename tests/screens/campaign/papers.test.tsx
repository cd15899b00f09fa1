import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { paperItems } from '../../../src/engine/trade';
import { CompletenessScreen } from '../../../src/screens/campaign';
import { axeFaults } from '../axe';
import { show } from '../deskwork';
import { aBid, heronWithCampaign, kept } from './opened';

const mark = (name: RegExp, state: string) =>
  within(screen.getByRole('group', { name })).getByRole('radio', { name: state });

describe('What a paper must hold', () => {
  it('is looked through line by line, each touch kept at once, the quick ones too', async () => {
    const user = userEvent.setup();
    const { desk, campaign } = await heronWithCampaign();
    show(desk, <CompletenessScreen campaign={campaign} of="report" />);
    expect(await screen.findByText('Nobody has looked through the report yet.')).toBeDefined();
    await Promise.all([
      user.click(mark(/Work, dates and names/, 'there')),
      user.click(mark(/The layer log/, 'missing')),
    ]);
    await waitFor(async () => {
      const items = (await kept(desk, 'completeness'))[0]?.items ?? [];
      expect([...items].sort((a, b) => a.id.localeCompare(b.id))).toEqual([
        { id: 'identity', state: 'there' },
        { id: 'layers', state: 'missing' },
      ]);
    });
    expect(await screen.findByText('Until then the last payment waits.')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('comes as a letter of what is missing and nothing else, noted as sent', async () => {
    const user = userEvent.setup();
    const { desk, campaign } = await heronWithCampaign();
    show(desk, <CompletenessScreen campaign={campaign} of="report" />);
    await screen.findByText('Nobody has looked through the report yet.');
    for (const name of [/The layer log/, /Temperatures at the inserts/]) await user.click(mark(name, 'missing'));
    await user.click(mark(/What was found out/, 'there'));
    await user.click(screen.getByRole('button', { name: 'Letter of what is missing' }));
    const letter = within(screen.getByRole('article'));
    expect(letter.getAllByRole('listitem').map((one) => one.textContent)).toEqual([
      'The layer log',
      'Temperatures at the inserts',
    ]);
    expect(letter.getByText('2 Grey heron: Heron, whole')).toBeDefined();
    expect(letter.getByText(/The last payment follows once these have reached us/)).toBeDefined();
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Sent today' }));
    expect(await screen.findByText('Letter sent on 15 October 2026.')).toBeDefined();
    expect((await kept(desk, 'completeness'))[0]).toMatchObject({ of: 'report', letterSent: '2026-10-15' });
  });

  it('says of a line where in the paper it stands, and keeps that when the line is marked anew', async () => {
    const user = userEvent.setup();
    const { desk, campaign } = await heronWithCampaign();
    show(desk, <CompletenessScreen campaign={campaign} of="request" />);
    await screen.findByText('Nobody has looked through the request yet.');
    expect(screen.queryByRole('button', { name: /Say where/ })).toBeNull();
    await user.click(mark(/Water and power/, 'there'));
    await user.click(await screen.findByRole('button', { name: /Say where: Water and power/ }));
    await user.type(screen.getByRole('textbox', { name: /Where in the paper/ }), 'page 3');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText('Where: page 3')).toBeDefined();
    await user.click(mark(/Water and power/, 'missing'));
    await waitFor(async () =>
      expect((await kept(desk, 'completeness'))[0]?.items).toMatchObject([{ state: 'missing', where: 'page 3' }]),
    );
  });

  it('writes no letter where nothing is missing', async () => {
    const user = userEvent.setup();
    const { desk, campaign } = await heronWithCampaign();
    show(desk, <CompletenessScreen campaign={campaign} of="request" />);
    await screen.findByText('Nobody has looked through the request yet.');
    await user.click(mark(/Water and power/, 'there'));
    await user.click(screen.getByRole('button', { name: 'Letter of what is missing' }));
    expect(screen.getByText(/there is no letter to write/)).toBeDefined();
    expect(screen.queryByRole('article')).toBeNull();
  });

  it('is kept for each proposal apart', async () => {
    const user = userEvent.setup();
    const opened = await heronWithCampaign();
    const north = await aBid(opened, 'North foundry', []);
    await aBid(opened, 'South workshop', []);
    show(opened.desk, <CompletenessScreen campaign={opened.campaign} of="proposal" />);
    const whose = await screen.findByRole('combobox', { name: 'Whose proposal' });
    await user.selectOptions(whose, 'North foundry');
    await user.click(mark(/The aim/, 'missing'));
    await waitFor(async () => expect(await kept(opened.desk, 'completeness')).toMatchObject([{ bid: north }]));
    await user.selectOptions(whose, 'South workshop');
    expect((mark(/The aim/, 'missing') as HTMLInputElement).checked).toBe(false);
    await user.selectOptions(whose, 'North foundry');
    expect((mark(/The aim/, 'missing') as HTMLInputElement).checked).toBe(true);
    await user.click(screen.getByRole('button', { name: 'Letter of what is missing' }));
    expect(screen.getByText('To: North foundry')).toBeDefined();
  });

  it('is told with where its list comes from', async () => {
    const user = userEvent.setup();
    const { desk, campaign } = await heronWithCampaign();
    show(desk, <CompletenessScreen campaign={campaign} of="proposal" />);
    await user.click(await screen.findByRole('button', { name: 'Where this list comes from' }));
    expect(screen.getByText(/guidelines 24 to 28 .*from memory/)).toBeDefined();
    expect(screen.getAllByRole('group').length).toBe(paperItems.proposal.length);
  });
});
