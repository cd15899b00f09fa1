import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addInsert, addSculpture, openPersonCheck } from '../../../src/actions';
import { idPart, nameOf } from '../../../src/engine/record';
import { EditSculptureScreen } from '../../../src/screens/sculptures/EditSculptureScreen';
import { NewSculptureScreen } from '../../../src/screens/sculptures/NewSculptureScreen';
import { SculptureScreen } from '../../../src/screens/sculptures/SculptureScreen';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

describe('A sculpture’s page', () => {
  it('shows each zone with its area, its index and its classes, and the ways on', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] });
    await aRound(desk, work, '2026-05-10', [{ 'even-green-film': 0.5 }, { notLooked: 'wet' }]);
    show(desk, <SculptureScreen sculpture={work.sculpture} />);
    const row = await screen.findByRole('row', { name: /part A/ });
    await within(row).findByRole('img', { name: /Zone A, part A: condition index/ });
    expect(within(row).getByText('2.00 m²')).toBeDefined();
    expect(row.textContent).toMatch(/UC\d.*CC\d/);
    const other = screen.getByRole('row', { name: /part B/ });
    expect(within(other).getByRole('img', { name: /Zone B, part B: no condition index, not looked at/ })).toBeDefined();
    expect(screen.getByRole('link', { name: 'Start a round' }).getAttribute('href')).toBe(
      `/sculpture/${idPart(work.sculpture)}/round/start`,
    );
    expect(screen.getByRole('link', { name: 'Look' })).toBeDefined();
    expect(screen.getByRole('link', { name: 'Then & now' })).toBeDefined();
    expect(screen.getByRole('link', { name: 'Logbook' })).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('goes on with a round that was left, in place of starting a second one', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2] });
    const round = await aRound(desk, work, '2026-05-10', [], { round: { ended: undefined } });
    show(desk, <SculptureScreen sculpture={work.sculpture} />);
    const on = await screen.findByRole('link', { name: 'Go on with the round' });
    expect(on.getAttribute('href')).toBe(`/round/${idPart(round)}`);
    expect(screen.queryByRole('link', { name: 'Start a round' })).toBeNull();
  });

  it('offers no round while there are no zones to look at', async () => {
    const desk = await freshDesk();
    const { sculpture } = await done(addSculpture(desk, { number: '3', title: 'Bather' }));
    show(desk, <SculptureScreen sculpture={sculpture} />);
    expect(await screen.findByRole('link', { name: 'Draw up its zones' })).toBeDefined();
    expect(screen.queryByRole('link', { name: 'Start a round' })).toBeNull();
    expect(screen.getByText('No zones yet')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('stands with forty zones of long names', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, {
      title: 'Frieze '.repeat(40),
      number: '4',
      areas: Array.from({ length: 40 }, () => 1),
    });
    show(desk, <SculptureScreen sculpture={work.sculpture} />);
    expect(await screen.findByRole('row', { name: /All zones/ })).toBeDefined();
    expect(screen.getAllByRole('row')).toHaveLength(42);
    expect(screen.getByText('40.0 m²')).toBeDefined();
  });

  it('sets a person check in a few words and closes it only with a name', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2] });
    show(desk, <SculptureScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Report a danger to people' }));
    await user.click(screen.getByRole('button', { name: 'Set the check' }));
    expect(screen.getByText('Say in a few words what could hurt someone.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: /What could hurt someone/ }), 'Beak is loose');
    await user.click(screen.getByRole('button', { name: 'Set the check' }));
    const danger = await screen.findByRole('note', { name: /keep people away/ });
    expect(within(danger).getByText('Beak is loose')).toBeDefined();
    await user.click(within(danger).getByRole('button', { name: 'Close this check' }));
    await user.click(screen.getByRole('button', { name: 'It is safe: close it' }));
    expect(screen.getByText('Write the name of the person who says it is safe.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: /Name of the person/ }), 'E. Marsh');
    await user.click(screen.getByRole('button', { name: 'It is safe: close it' }));
    expect(
      await screen.findByText(/Beak is loose\. Open 15 October 2026 to 15 October 2026, closed by E\. Marsh/),
    ).toBeDefined();
    expect(screen.queryByRole('note', { name: /keep people away/ })).toBeNull();
  });

  it('lists inserts with the caution that goes with them', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2] });
    await done(addInsert(desk, work.sculpture, { material: 'cast glass', count: 5, removable: 'not known' }));
    show(desk, <SculptureScreen sculpture={work.sculpture} />);
    expect(await screen.findByRole('note', { name: /Fragile inserts/ })).toBeDefined();
    await user.click(screen.getByRole('button', { name: /5 × cast glass/ }));
    await user.clear(screen.getByRole('textbox', { name: /How many/ }));
    await user.type(screen.getByRole('textbox', { name: /How many/ }), '4.5');
    await user.click(screen.getByRole('button', { name: 'Keep the insert' }));
    expect(screen.getByText('Give a whole number, 1 or more.')).toBeDefined();
    await user.clear(screen.getByRole('textbox', { name: /How many/ }));
    await user.type(screen.getByRole('textbox', { name: /How many/ }), '4');
    await user.click(screen.getByRole('button', { name: 'Keep the insert' }));
    expect(await screen.findByRole('button', { name: /4 × cast glass/ })).toBeDefined();
  });

  it('says where an insert sits, who made it, and that nobody knows its material', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2] });
    const { insert } = await done(
      addInsert(desk, work.sculpture, { material: 'clear lens', count: 1, removable: 'no' }),
    );
    show(desk, <SculptureScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: /clear lens/ }));
    await user.click(screen.getByRole('radio', { name: 'Material not known' }));
    await user.click(screen.getByRole('checkbox', { name: 'Looked for: maker not known' }));
    await user.type(screen.getByRole('textbox', { name: /Where it sits/ }), 'Left eye, from the front');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep the insert' }));
    const row = await screen.findByRole('button', { name: /Left eye, from the front/ });
    expect(row.textContent).toContain('Material not known · Looked for: maker not known');
    const body = async () => (await desk.store.current(insert))?.lead.body;
    expect(await body()).toMatchObject({
      materialBy: 'not known',
      makerKnown: false,
      where: 'Left eye, from the front',
    });
    await user.click(row);
    await user.type(screen.getByRole('textbox', { name: /Who made it/ }), 'A glass house');
    expect(screen.queryByRole('checkbox', { name: /maker not known/ })).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Keep the insert' }));
    expect(await screen.findByText(/made by A glass house/)).toBeDefined();
    expect(await body()).toMatchObject({ maker: 'A glass house', makerKnown: true });
  });

  it('keeps what an insert is worth with the insert, in one deed, and refuses half a number', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2] });
    const { insert } = await done(
      addInsert(desk, work.sculpture, { material: 'cast glass', count: 5, removable: 'not known' }),
    );
    show(desk, <SculptureScreen sculpture={work.sculpture} />);
    await user.click(await screen.findByRole('button', { name: /5 × cast glass/ }));
    await user.type(await screen.findByRole('textbox', { name: /What it is worth/ }), '12,5x');
    await user.type(screen.getByRole('textbox', { name: /urrency/ }), 'eur');
    await user.click(screen.getByRole('button', { name: 'Keep the insert' }));
    expect(await screen.findByText(/12,5x/)).toBeDefined();
    await user.clear(screen.getByRole('textbox', { name: /What it is worth/ }));
    await user.type(screen.getByRole('textbox', { name: /What it is worth/ }), '1 250,50');
    await user.click(screen.getByRole('button', { name: 'Keep the insert' }));
    await expect
      .poll(async () => (await desk.store.current(nameOf.insertValue(insert)))?.lead.body.value)
      .toEqual({ minor: 125050, currency: 'EUR' });
    await user.click(await screen.findByRole('button', { name: /5 × cast glass/ }));
    expect((await screen.findByRole<HTMLInputElement>('textbox', { name: /What it is worth/ })).value).toBe('1250.50');
    await user.clear(screen.getByRole('textbox', { name: /What it is worth/ }));
    await user.click(screen.getByRole('button', { name: 'Keep the insert' }));
    await expect.poll(async () => (await desk.store.current(nameOf.insertValue(insert)))?.gone).toBe(true);
  });

  it('says so when the work is not on this device', async () => {
    show(await freshDesk(), <SculptureScreen sculpture="sculpture/elsewhere" />);
    expect(await screen.findByText('This sculpture is not on this device')).toBeDefined();
  });

  it('keeps a person check of another work off this page', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2] });
    const other = await aWork(desk, { title: 'Boat', number: '3', areas: [2] });
    await done(openPersonCheck(desk, other.sculpture, { what: 'Mast leans' }));
    show(desk, <SculptureScreen sculpture={work.sculpture} />);
    await screen.findByRole('link', { name: 'Start a round' });
    expect(screen.queryByText('Mast leans')).toBeNull();
  });
});

describe('Adding and editing a sculpture', () => {
  it('asks for no more than a title, and says when it is missing', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { history } = show(desk, <NewSculptureScreen />);
    await user.click(await screen.findByRole('button', { name: 'Add it' }));
    expect(screen.getByText('Give the work a title.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: 'Title' }), 'Grey heron');
    await user.type(screen.getByRole('textbox', { name: /Where it stands/ }), 'West quay');
    await user.click(screen.getByRole('button', { name: 'Add it' }));
    await waitFor(() => expect(history.at(-1)).toMatch(/^\/sculpture\/.+/));
    const [work] = await desk.store.ofKind('sculpture');
    expect(work?.lead.body).toMatchObject({ title: 'Grey heron' });
    expect((await desk.store.ofKind('place'))[0]?.lead.body.text).toBe('West quay');
    expect(await axeFaults()).toEqual([]);
  });

  it('keeps the same letters whichever way they were typed', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    show(desk, <NewSculptureScreen />);
    await user.click(await screen.findByRole('textbox', { name: 'Title' }));
    await user.paste('Cafe\u0301');
    await user.click(screen.getByRole('button', { name: 'Add it' }));
    await waitFor(async () => expect((await desk.store.ofKind('sculpture'))[0]?.lead.body.title).toBe('Caf\u00e9'));
  });

  it('changes what is known, and keeps place and access apart from it', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { sculpture } = await done(addSculpture(desk, { number: '3', title: 'Bather' }, { place: 'Pond' }));
    const { history } = show(desk, <EditSculptureScreen sculpture={sculpture} />);
    const place = await screen.findByRole('textbox', { name: /Where it stands/ });
    expect((place as HTMLInputElement).value).toBe('Pond');
    await user.type(screen.getByRole('textbox', { name: /Maker/ }), 'not known');
    await user.clear(place);
    await user.click(screen.getByRole('button', { name: 'Keep the changes' }));
    await waitFor(() => expect(history.at(-1)).toBe(`/sculpture/${idPart(sculpture)}`));
    expect((await desk.store.current(sculpture))?.lead.body).toMatchObject({ maker: 'not known' });
    expect((await desk.store.ofKind('place')).filter(({ gone }) => !gone)).toEqual([]);
    expect(await axeFaults()).toEqual([]);
  });
});
