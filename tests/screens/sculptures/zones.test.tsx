import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { idPart } from '../../../src/engine/record';
import { EditZoneScreen } from '../../../src/screens/sculptures/EditZoneScreen';
import { NewZoneScreen } from '../../../src/screens/sculptures/NewZoneScreen';
import { ZonesScreen } from '../../../src/screens/sculptures/ZonesScreen';
import { axeFaults } from '../axe';
import { aRound, aWork, freshDesk, show } from '../deskwork';

const heron = async (areas: readonly number[]) => {
  const desk = await freshDesk();
  return { desk, work: await aWork(desk, { title: 'Grey heron', number: '2', areas }) };
};

const names = () =>
  screen.getAllByRole('link', { name: /part [A-Z]/ }).map((link) => link.textContent?.match(/part [A-Z]/)?.[0]);

describe('The zones in walking order', () => {
  it('moves a zone by a button, never by dragging', async () => {
    const user = userEvent.setup();
    const { desk, work } = await heron([1, 1, 1]);
    show(desk, <ZonesScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Move zone A, part A, down' }));
    await waitFor(() => expect(names()).toEqual(['part B', 'part A', 'part C']));
    expect(screen.getByRole('button', { name: 'Move zone B, part B, up' })).toHaveProperty('disabled', true);
    expect(screen.getByRole('button', { name: 'Move zone C, part C, down' })).toHaveProperty('disabled', true);
    expect(await axeFaults()).toEqual([]);
  });

  it('warns of too many zones, and of one that speaks for nearly all', async () => {
    const { desk, work } = await heron([20, ...Array.from({ length: 12 }, () => 1)]);
    show(desk, <ZonesScreen sculpture={work.sculpture} />);
    expect(await screen.findByText('13 zones: a round will be long')).toBeDefined();
    expect(screen.getByText('Zone A is 63 % of the work')).toBeDefined();
  });

  it('is quiet about four zones alike', async () => {
    const { desk, work } = await heron([1, 1, 1, 1]);
    show(desk, <ZonesScreen sculpture={work.sculpture} />);
    await screen.findByRole('button', { name: 'Move zone A, part A, down' });
    expect(screen.queryByRole('note')).toBeNull();
  });

  it('joins zones into one and keeps the old ones readable', async () => {
    const user = userEvent.setup();
    const { desk, work } = await heron([1, 2, 3]);
    show(desk, <ZonesScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Join zones' }));
    await user.click(screen.getByRole('checkbox', { name: /part A/ }));
    await user.click(screen.getByRole('button', { name: 'Join them' }));
    expect(screen.getByText('Choose at least two zones.')).toBeDefined();
    await user.click(screen.getByRole('checkbox', { name: /part B/ }));
    await user.type(screen.getByRole('textbox', { name: /Name of the new zone/ }), 'Both legs');
    await user.click(screen.getByRole('button', { name: 'Join them' }));
    expect(await screen.findByRole('link', { name: /Both legs.*3.00 m²/ })).toBeDefined();
    expect(screen.getByText('A, part A: joined on 15 October 2026')).toBeDefined();
  });
});

describe('Adding a zone', () => {
  it('sums strips to an area with its range while they are typed, and keeps how it was found', async () => {
    const user = userEvent.setup();
    const { desk, work } = await heron([]);
    const { history } = show(desk, <NewZoneScreen sculpture={work.sculpture} />);
    await user.type(await screen.findByRole('textbox', { name: 'Name' }), 'Left leg');
    await user.click(screen.getByRole('radio', { name: 'From strips' }));
    const strip = screen.getByRole('group', { name: 'Strip 1' });
    await user.type(within(strip).getByRole('textbox', { name: 'girth' }), '0,8');
    await user.type(within(strip).getByRole('textbox', { name: /height/ }), '1.5');
    expect(screen.getByText('1.20 m²')).toBeDefined();
    expect(screen.getByText('(1.08 to 1.32)')).toBeDefined();
    await user.click(screen.getByRole('checkbox', { name: 'faces up' }));
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Add the zone' }));
    await waitFor(() => expect(history.at(-1)).toBe(`/sculpture/${idPart(work.sculpture)}/zones`));
    const [zone] = await desk.store.ofKind('zone');
    expect(zone?.lead.body).toMatchObject({ letter: 'A', name: 'Left leg', exposure: ['up'] });
    const versions = zone?.lead.body.versions as { area: { m2: number; method: string } }[];
    expect(versions[0]?.area.method).toBe('strips');
    expect(versions[0]?.area.m2).toBeCloseTo(1.2);
  });

  it('says what is missing and stores nothing', async () => {
    const user = userEvent.setup();
    const { desk, work } = await heron([]);
    show(desk, <NewZoneScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Add the zone' }));
    expect(screen.getByText('Give the zone a name.')).toBeDefined();
    expect(screen.getByText('Give an area above 0.')).toBeDefined();
    expect(await desk.store.ofKind('zone')).toEqual([]);
  });

  it('goes on to the next zone with its setting taken over, and its name and area not', async () => {
    const user = userEvent.setup();
    const { desk, work } = await heron([]);
    show(desk, <NewZoneScreen sculpture={work.sculpture} />);
    await user.type(await screen.findByRole('textbox', { name: 'Name' }), 'Left leg');
    await user.type(screen.getByRole('textbox', { name: 'Area' }), '0.6');
    await user.click(screen.getByRole('radio', { name: 'from a ladder' }));
    await user.click(screen.getByRole('button', { name: 'Add it and go on' }));
    await waitFor(() => expect(screen.getByRole('textbox', { name: 'Name' })).toHaveProperty('value', ''));
    expect(screen.getByRole('textbox', { name: 'Area' })).toHaveProperty('value', '');
    expect(screen.getByRole('radio', { name: 'from a ladder' })).toHaveProperty('checked', true);
  });
});

describe('Editing a zone', () => {
  const visited = async () => {
    const { desk, work } = await heron([2]);
    await aRound(desk, work, '2026-05-10', ['nothing']);
    const zone = work.zones[0] ?? '';
    const view = show(desk, <EditZoneScreen sculpture={work.sculpture} zone={zone} />);
    return { desk, zone, ...view };
  };
  const versionsOf = async (desk: Awaited<ReturnType<typeof freshDesk>>, zone: string) =>
    (await desk.store.current(zone))?.lead.body.versions as { n: number; since: string; area: { m2: number } }[];

  it('says that a new area makes a version after the first visit, from which day, and makes it', async () => {
    const user = userEvent.setup();
    const { desk, zone } = await visited();
    expect(await screen.findByText('Looked at once.')).toBeDefined();
    const area = screen.getByRole('textbox', { name: 'Area' });
    await user.clear(area);
    await user.type(area, '2.4');
    expect(screen.getByText('This makes a new version')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep the changes' }));
    await waitFor(async () => expect(await versionsOf(desk, zone)).toHaveLength(2));
    expect((await versionsOf(desk, zone))[1]).toMatchObject({ n: 2, since: '2026-10-15' });
    expect((await versionsOf(desk, zone))[0]?.area.m2).toBe(2);
  });

  it('only edits when the name alone is changed', async () => {
    const user = userEvent.setup();
    const { desk, zone } = await visited();
    const name = await screen.findByRole('textbox', { name: 'Name' });
    await user.clear(name);
    await user.type(name, 'Neck');
    expect(screen.queryByText('This makes a new version')).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Keep the changes' }));
    await waitFor(async () => expect((await desk.store.current(zone))?.lead.body.name).toBe('Neck'));
    expect(await versionsOf(desk, zone)).toHaveLength(1);
  });

  it('does not offer to remove a zone that was looked at', async () => {
    await visited();
    await screen.findByRole('button', { name: 'Keep the changes' });
    expect(screen.queryByRole('button', { name: 'Remove the zone' })).toBeNull();
  });

  it('splits only when the shares make 100 %', async () => {
    const user = userEvent.setup();
    const { desk, zone } = await visited();
    await user.click(await screen.findByRole('button', { name: 'Split this zone' }));
    const second = screen.getByRole('group', { name: 'Part 2' });
    await user.clear(within(second).getByRole('textbox', { name: 'Share of the area' }));
    await user.type(within(second).getByRole('textbox', { name: 'Share of the area' }), '30');
    expect(screen.getByText('Together: 80 %. They need to make 100 %.')).toBeDefined();
    expect(screen.getByRole('button', { name: 'Split it' })).toHaveProperty('disabled', true);
    const first = screen.getByRole('group', { name: 'Part 1' });
    await user.clear(within(first).getByRole('textbox', { name: 'Share of the area' }));
    await user.type(within(first).getByRole('textbox', { name: 'Share of the area' }), '70');
    await user.click(screen.getByRole('button', { name: 'Split it' }));
    await waitFor(async () => expect((await desk.store.current(zone))?.lead.body.split).toBeDefined());
    expect(await desk.store.ofKind('zone')).toHaveLength(3);
  });
});
