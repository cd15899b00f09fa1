import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import type { AgreedColourFields, Desk, ReadingFields } from '../../../src/actions';
import { addReading, recordTreatment, setAgreedColour, undoLast } from '../../../src/actions';
import { ColourScreen } from '../../../src/screens/colour';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show, type Work } from '../deskwork';

const conditions = { illuminant: 'D65', observer: '10', geometry: 'd/8 included', aperture: 8 } as const;
const placings = (L: number, a: number, b: number) => [
  { L, a, b },
  { L: L + 0.2, a: a - 0.1, b: b + 0.1 },
  { L: L - 0.2, a: a + 0.1, b: b - 0.1 },
];
const kept = (desk: Desk, work: Work, date: string, fields: Partial<ReadingFields> = {}) =>
  done(
    addReading(desk, work.sculpture, {
      date,
      values: placings(30, 6, 9),
      surface: 'dry',
      zone: work.zones[0],
      position: 'third hole of the template',
      ...conditions,
      ...fields,
    }),
  );
const agreed = (desk: Desk, work: Work, fields: Partial<AgreedColourFields> = {}) =>
  done(
    setAgreedColour(desk, work.sculpture, {
      name: 'Brown of the panel',
      by: 'owner and estate',
      date: '2023-09-21',
      value: { L: 30, a: 6, b: 9 },
      zone: work.zones[0],
      ...conditions,
      ...fields,
    }),
  );
const work = (desk: Desk) => aWork(desk, { title: 'Supper', number: 'SW-03', areas: [1, 2] });
const spot = async (name = 'A, part A') =>
  within((await screen.findByRole('heading', { name })).closest('article') as HTMLElement);
const sheet = () => within(screen.getByRole('dialog'));

describe('the page of colour', () => {
  it('says that no figure comes from a photo, and what to ask the conservator for, before anything was read', async () => {
    const desk = await freshDesk();
    const { sculpture } = await work(desk);
    show(desk, <ColourScreen sculpture={sculpture} />);
    expect(await screen.findByRole('note', { name: /No figure on this page comes from a photo/ })).toBeDefined();
    expect(screen.getByText('No colour was read yet')).toBeDefined();
    expect(screen.getByText(/three placings or more on each spot/)).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('holds the last reading against the agreed colour and the reading before, and says which way it went', async () => {
    const desk = await freshDesk();
    const here = await work(desk);
    await agreed(desk, here);
    await kept(desk, here, '2024-05-14');
    await kept(desk, here, '2026-05-12', { values: placings(27, 6, 9) });
    show(desk, <ColourScreen sculpture={here.sculpture} />);
    const card = await spot();
    expect(card.getByRole('heading', { name: 'From the agreed colour “Brown of the panel”' })).toBeDefined();
    expect(card.getByRole('heading', { name: 'Since 14 May 2024' })).toBeDefined();
    expect(card.getAllByText('darker by 3.0')).toHaveLength(2);
    // Of greys the step would be 3 over 1.28; of this brown CIEDE2000 says much the same.
    expect(card.getAllByText(/^2\.[0-9] units \(\d\.\d to \d\.\d\)$/)).toHaveLength(2);
    expect(card.getByRole('img', { name: /^Agreed and Read 12 May 2026, edge to edge/ })).toBeDefined();
    const rows = within(card.getByRole('table', { name: 'All readings of this spot' })).getAllByRole('row');
    expect(rows.slice(1).map((row) => row.textContent?.slice(0, 11))).toEqual(['12 May 2026', '14 May 2024']);
    expect(await axeFaults()).toEqual([]);
  });

  it('says of a step as small as the spread that it does not stand out', async () => {
    const desk = await freshDesk();
    const here = await work(desk);
    await kept(desk, here, '2024-05-14');
    await kept(desk, here, '2026-05-12', { values: placings(30.1, 6, 9) });
    show(desk, <ColourScreen sculpture={here.sculpture} />);
    expect((await spot()).getByText(/Nothing that stands out/)).toBeDefined();
    expect((await spot()).getByText('No colour was agreed for it by then.')).toBeDefined();
  });

  it.each([
    ['illuminant', { illuminant: 'C' }, /illuminant D65 and one for C|illuminant C and one for D65/],
    ['observer', { observer: '2' }, /10° observer and one for the 2°/],
    ['geometry', { geometry: 'd/8 excluded' }, /geometry d\/8 included and one with d\/8 excluded/],
    ['opening', { aperture: 4 }, /opening of 8 mm and one of 4 mm/],
    ['wet surface', { surface: 'wet' }, /on a dry surface and one on a wet/],
  ] as const)('tells no figure anywhere where one was read with another %s', async (_, fields, why) => {
    const desk = await freshDesk();
    const here = await work(desk);
    await kept(desk, here, '2024-05-14');
    await kept(desk, here, '2026-05-12', { values: placings(27, 6, 9), ...fields });
    show(desk, <ColourScreen sculpture={here.sculpture} />);
    const card = await spot();
    expect(card.getByText('No difference is told.')).toBeDefined();
    expect(card.getByText(why)).toBeDefined();
    expect(card.queryByText(/\d units/)).toBeNull();
  });

  it('tells no change across a repatination, and names it', async () => {
    const desk = await freshDesk();
    const here = await work(desk);
    await kept(desk, here, '2024-05-14');
    await done(recordTreatment(desk, here.sculpture, { zones: [], type: 'repatination', date: '2025-06' }));
    await kept(desk, here, '2026-05-12', { values: placings(27, 6, 9) });
    show(desk, <ColourScreen sculpture={here.sculpture} />);
    expect((await spot()).getByText(/In between: Repatination, June 2025\. The surface is another one/)).toBeDefined();
    expect((await spot()).queryByText(/\d units/)).toBeNull();
  });
});

describe('the years of a spot', () => {
  it('are drawn from three readings that may be compared on; one made in another way is in the table and not in the drawing', async () => {
    const desk = await freshDesk();
    const here = await work(desk);
    await agreed(desk, here);
    await kept(desk, here, '2024-05-14');
    await kept(desk, here, '2025-05-13', { values: placings(28.5, 6, 9) });
    await kept(desk, here, '2025-11-18', { values: placings(20, 6, 9), geometry: '45/0', aperture: 4 });
    const { unmount } = show(desk, <ColourScreen sculpture={here.sculpture} />);
    const table = within((await spot()).getByRole('table', { name: 'All readings of this spot' }));
    const other = within(table.getByRole('row', { name: /18 November 2025/ }));
    expect(other.getAllByText('not told: other geometry and opening')).toHaveLength(2);
    expect((await spot()).queryByText('Distance from the agreed colour')).toBeNull();
    unmount();
    await kept(desk, here, '2026-05-12', { values: placings(27, 6, 9) });
    show(desk, <ColourScreen sculpture={here.sculpture} />);
    const drawn = await screen.findByRole('img', { name: /^Distance from the agreed colour in 3 readings/ });
    expect(drawn.getAttribute('aria-label')).toMatch(/: 0\.0 units in the first, 2\.\d in the last\.$/);
    expect((await spot()).getByText('Since 13 May 2025')).toBeDefined();
  });
});

describe('writing a reading down', () => {
  const first = async (user: ReturnType<typeof userEvent.setup>) => {
    await user.click(await screen.findByRole('button', { name: 'Write down a reading' }));
    await user.selectOptions(sheet().getByRole('combobox', { name: 'Where on the work' }), 'B, part B');
    await user.type(sheet().getByLabelText('Just where (optional)'), 'hand left of the seam');
    await user.click(sheet().getByRole('radio', { name: 'Dry' }));
  };
  const way = async (user: ReturnType<typeof userEvent.setup>) => {
    await user.click(sheet().getByRole('radio', { name: 'D65' }));
    await user.click(sheet().getByRole('radio', { name: '10°' }));
    await user.click(sheet().getByRole('radio', { name: 'd/8, shine included' }));
  };

  it('takes three placings with decimal commas, reads them back, and shows the spot; undo takes it away', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { sculpture } = await work(desk);
    show(desk, <ColourScreen sculpture={sculpture} />);
    await first(user);
    await way(user);
    await user.type(sheet().getByLabelText('Placings'), '32,1 -4,2 9,8{Enter}31,8 -4,4 9,1{Enter}32,7 -4,0 10,2');
    expect(within(sheet().getByRole('table')).getByRole('row', { name: 'Mean 32.2 −4.2 9.7' })).toBeDefined();
    expect(await axeFaults()).toEqual([]);
    await user.click(sheet().getByRole('button', { name: 'Keep the reading' }));
    const card = await spot('B, part B');
    expect(card.getByText('hand left of the seam')).toBeDefined();
    expect(card.getByText('32.2, −4.2, 9.7')).toBeDefined();
    expect(card.getByText(/D65 · 10° · d\/8, shine included · Dry/)).toBeDefined();
    await done(undoLast(desk));
    expect(await screen.findByText('No colour was read yet')).toBeDefined();
  });

  it('keeps nothing while it is not said how it was read, and chooses no illuminant by itself', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { sculpture } = await work(desk);
    show(desk, <ColourScreen sculpture={sculpture} />);
    await first(user);
    await user.type(sheet().getByLabelText('Placings'), '32.1 -4.2 9.8');
    await user.click(sheet().getByRole('button', { name: 'Keep the reading' }));
    expect(sheet().getAllByText(/Say how it was read/)).toHaveLength(3);
    expect(sheet().getByRole('button', { name: 'Keep the reading' })).toBeDefined();
    expect((await desk.store.within(sculpture, ['reading'])).length).toBe(0);
  });

  it('names the line that is no three figures, and the one that lies far off', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const { sculpture } = await work(desk);
    show(desk, <ColourScreen sculpture={sculpture} />);
    await first(user);
    const box = sheet().getByLabelText('Placings');
    await user.type(box, '32.1 -4.2 9.8{Enter}31.8 -4.4{Enter}');
    expect(sheet().getByText(/Line 2 is not three figures/)).toBeDefined();
    await user.clear(box);
    await user.type(box, '32.1 -4.2 9.8{Enter}31.8 -4.4 9.1{Enter}62.7 -4.0 10.2');
    expect(sheet().getByText(/Line 3 lies far from the others/)).toBeDefined();
  });

  it('warns while the instrument is still here that, read like this, it can be held against nothing', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const here = await work(desk);
    await agreed(desk, here);
    await kept(desk, here, '2024-05-14');
    show(desk, <ColourScreen sculpture={here.sculpture} />);
    await user.click((await spot()).getByRole('button', { name: 'Read this spot again' }));
    expect(sheet().queryByRole('radio', { name: 'D65' })).toBeNull();
    await user.click(sheet().getByRole('radio', { name: 'In another way' }));
    await user.click(sheet().getByRole('radio', { name: 'C' }));
    await user.click(sheet().getByRole('radio', { name: '2°' }));
    await user.click(sheet().getByRole('radio', { name: 'd/8, shine included' }));
    expect(
      sheet().getByRole('note', { name: /cannot be held against the agreed colour, nor against the readings before/ }),
    ).toBeDefined();
    await user.click(sheet().getByRole('radio', { name: 'The same way as on 14 May 2024' }));
    expect(sheet().queryByRole('note', { name: /cannot be held/ })).toBeNull();
    await user.type(sheet().getByLabelText('Placings'), '30 6 9{Enter}30 6 9{Enter}30 6 9');
    await user.click(sheet().getByRole('button', { name: 'Keep the reading' }));
    expect(await screen.findByRole('heading', { name: 'Since 14 May 2024' })).toBeDefined();
    expect(screen.getAllByRole('article')).toHaveLength(1);
  });

  it('does not take the way of a reading of years ago for granted', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const here = await work(desk);
    await kept(desk, here, '2024-05-14');
    show(desk, <ColourScreen sculpture={here.sculpture} />);
    await user.click((await spot()).getByRole('button', { name: 'Read this spot again' }));
    await user.type(sheet().getByLabelText('Placings'), '30 6 9');
    await user.click(sheet().getByRole('button', { name: 'Keep the reading' }));
    expect(sheet().getByText('Say whether it was read the same way.')).toBeDefined();
  });

  it('puts a slip right without touching the rest, and takes a reading away', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const here = await work(desk);
    await kept(desk, here, '2024-05-14', { instrument: 'Sphere no. 3' });
    show(desk, <ColourScreen sculpture={here.sculpture} />);
    await user.click(await screen.findByRole('button', { name: 'Change the reading of 14 May 2024' }));
    const box = sheet().getByLabelText('Placings') as HTMLTextAreaElement;
    expect(box.value).toBe('30 6 9\n30.2 5.9 9.1\n29.8 6.1 8.9');
    await user.clear(box);
    await user.type(box, '40 6 9');
    await user.click(sheet().getByRole('button', { name: 'Keep the reading' }));
    expect(await screen.findByText('40.0, 6.0, 9.0')).toBeDefined();
    expect(screen.getByText(/8 mm · Dry · Sphere no\. 3/)).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Change the reading of 14 May 2024' }));
    await user.click(sheet().getByRole('button', { name: 'Remove it' }));
    expect(await screen.findByText('No colour was read yet')).toBeDefined();
  });
});

describe('agreed colours', () => {
  it('are written from the last reading of a spot by naming them and who agreed', async () => {
    const user = userEvent.setup();
    const desk = await freshDesk();
    const here = await work(desk);
    await kept(desk, here, '2024-05-14');
    show(desk, <ColourScreen sculpture={here.sculpture} />);
    await user.click((await spot()).getByRole('button', { name: 'Take the last reading as agreed colour' }));
    await user.click(sheet().getByRole('button', { name: 'Keep the agreed colour' }));
    expect(sheet().getByText('Give it a name.')).toBeDefined();
    expect(sheet().getByText('Write who agreed.')).toBeDefined();
    await user.type(sheet().getByLabelText('What it is called'), 'Brown, waxed');
    await user.type(sheet().getByLabelText('Agreed by'), 'owner');
    expect(await axeFaults()).toEqual([]);
    await user.click(sheet().getByRole('button', { name: 'Keep the agreed colour' }));
    expect(await screen.findByRole('heading', { name: 'Brown, waxed' })).toBeDefined();
    expect(screen.getByText('Agreed 14 May 2024, by owner')).toBeDefined();
    expect((await spot()).getByText(/Nothing that stands out/)).toBeDefined();
  });
});
