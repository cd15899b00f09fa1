import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addPlanned, editZone } from '../../../src/actions';
import { CampaignScreen, CampaignsScreen } from '../../../src/screens/campaign';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';
import { heronWithCampaign, kept } from './opened';

describe('Campaigns of a work', () => {
  it('say what one is for while there is none, and open one with a name', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] });
    const { history } = show(desk, <CampaignsScreen sculpture={work.sculpture} />);
    expect(await screen.findByText('No campaign yet')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Open a campaign' }));
    const name = screen.getByRole('textbox', { name: /Name/ });
    await user.clear(name);
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(screen.getByText('Give it a name.')).toBeDefined();
    await user.type(name, 'Heron, whole');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    await waitFor(() => expect(history.at(-1)).toMatch(/^\/campaign\//));
    expect(await kept(desk, 'campaign')).toMatchObject([
      { title: 'Heron, whole', step: 'trigger', opened: '2026-10-15' },
    ]);
  });

  it('ask for causes first: what the zones make likely is answered, and the warning goes', async () => {
    const user = userEvent.setup();
    const { desk, work } = await heronWithCampaign();
    await done(editZone(desk, work.zones[0] as string, { exposure: ['open', 'sprinkler'] }));
    show(desk, <CampaignsScreen sculpture={work.sculpture} />);
    expect(await screen.findByText(/Nobody has written down what feeds the damage/)).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Answer: Sprinkler' }));
    expect(screen.getByRole<HTMLInputElement>('checkbox', { name: /part A/ }).checked).toBe(true);
    await user.click(screen.getByRole('radio', { name: 'not a cause here' }));
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText('Say why: whoever comes next will ask.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: /Why/ }), 'shut off since 2020');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(await screen.findByText(/zone A · not a cause here/)).toBeDefined();
    expect(screen.queryByRole('button', { name: 'Answer: Sprinkler' })).toBeNull();
    expect(screen.queryByText(/Nobody has written down/)).toBeNull();
  });
});

describe('A campaign', () => {
  it('says what now, and goes on to the next step though something is lacking, which then stands as left open', async () => {
    const user = userEvent.setup();
    const { desk, campaign } = await heronWithCampaign({ step: 'money' });
    show(desk, <CampaignScreen campaign={campaign} />);
    const now = within(await screen.findByRole('region', { name: 'Now' }));
    expect(now.getByRole('heading', { name: 'Money' })).toBeDefined();
    expect(now.getByText('No fund belongs to it yet.')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
    await user.click(now.getByRole('button', { name: 'Go on all the same: Request and bids' }));
    expect(await screen.findByRole('heading', { name: 'Request and bids' })).toBeDefined();
    expect(within(screen.getByRole('list', { name: 'Money' })).getByText('No fund belongs to it yet.')).toBeDefined();
    expect((await kept(desk, 'campaign'))[0]?.step).toBe('request');
  });

  it('keeps warning while a cause is open, and stops once the work is over', async () => {
    const { desk, work, campaign } = await heronWithCampaign({ step: 'strip', began: '2026-09-01' });
    await done(
      addPlanned(desk, 'cause', {
        ...{ sculpture: work.sculpture, sort: 'sprinkler', zones: [work.zones[0] as string], found: '2026-03-01' },
        state: 'open',
      }),
    );
    const { unmount } = show(desk, <CampaignScreen campaign={campaign} />);
    const warning = await screen.findByRole('note', { name: /Take care Causes first/ });
    expect(within(warning).getByText(/Sprinkler: still at work on zone A/)).toBeDefined();
    unmount();
    const over = await heronWithCampaign({ step: 'watch', began: '2026-09-01', ended: '2026-09-20' });
    show(over.desk, <CampaignScreen campaign={over.campaign} />);
    await screen.findByRole('region', { name: 'Now' });
    expect(screen.queryByRole('note', { name: /Take care Causes first/ })).toBeNull();
  });

  it('marks each step by a word, the one it stands at for ears too', async () => {
    const { desk, campaign } = await heronWithCampaign();
    show(desk, <CampaignScreen campaign={campaign} />);
    const current = (await screen.findAllByRole('listitem')).filter(
      (one) => one.getAttribute('aria-current') === 'step',
    );
    expect(current.map((one) => within(one).getAllByText(/./)[0]?.textContent)).toEqual(['Request and bids']);
  });

  it('refuses days that are out of order with a sentence that names both', async () => {
    const user = userEvent.setup();
    const { desk, campaign } = await heronWithCampaign();
    show(desk, <CampaignScreen campaign={campaign} />);
    await user.click(await screen.findByRole('button', { name: 'Change' }));
    await user.type(screen.getByLabelText(/First day of work/), '2026-09-20');
    await user.type(screen.getByLabelText(/Last day of work/), '2026-09-04');
    await user.click(screen.getByRole('button', { name: 'Keep' }));
    expect(
      await screen.findByText(
        /The last day of work, 4 September 2026, lies before the first day of work, 20 September 2026/,
      ),
    ).toBeDefined();
    expect((await kept(desk, 'campaign'))[0]?.began).toBeUndefined();
  });

  it('that is not on this device says so', async () => {
    show(await freshDesk(), <CampaignScreen campaign="campaign/elsewhere" />);
    expect(await screen.findByText('This campaign is not on this device')).toBeDefined();
  });
});
