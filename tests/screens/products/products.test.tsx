import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { addPlanned, recordTreatment } from '../../../src/actions';
import { ProductsScreen } from '../../../src/screens/products';
import { axeFaults } from '../axe';
import { aWork, done, freshDesk, show } from '../deskwork';

const kept = async (desk: Awaited<ReturnType<typeof freshDesk>>) =>
  (await desk.store.ofKind('product')).filter(({ gone }) => !gone).map(({ lead }) => lead.body);

describe('Products in store', () => {
  it('says what it is for while it is empty', async () => {
    const desk = await freshDesk();
    show(desk, <ProductsScreen />);
    expect(await screen.findByText('Nothing in store yet')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('takes a tin with its batch and what is left, counted today', async () => {
    const desk = await freshDesk();
    const user = userEvent.setup();
    show(desk, <ProductsScreen />);
    await user.click(await screen.findByRole('button', { name: 'Add a product' }));
    await user.click(screen.getByRole('button', { name: 'Keep it' }));
    expect(screen.getByText('Give its name.')).toBeDefined();
    await user.type(screen.getByRole('textbox', { name: 'Name, as on the label' }), 'Cold paste wax');
    await user.type(screen.getByRole('textbox', { name: /^Batch/ }), 'W-26A');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Counted in' }), 'g');
    await user.type(screen.getByRole('textbox', { name: /^Left/ }), '4x');
    await user.click(screen.getByRole('button', { name: 'Keep it' }));
    expect(screen.getByText('A number, or leave it empty.')).toBeDefined();
    await user.clear(screen.getByRole('textbox', { name: /^Left/ }));
    await user.type(screen.getByRole('textbox', { name: /^Left/ }), '400');
    expect(await axeFaults()).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Keep it' }));
    expect(await screen.findByText('Cold paste wax, W-26A')).toBeDefined();
    expect(await kept(desk)).toEqual([
      { name: 'Cold paste wax', sort: 'microcrystalline', batch: 'W-26A', unit: 'g', left: 400, counted: '2026-10-15' },
    ]);
  });

  it('tells grams for a square metre from the logbooks of all works, and takes what was used off what is left', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Heron', number: '1', areas: [3, 1] });
    const tin = {
      name: 'Wax',
      sort: 'microcrystalline',
      unit: 'g',
      left: 500,
      counted: '2026-05-01',
      sheet: 'Shelf 2',
    } as const;
    const { thing: stock } = await done(addPlanned(desk, 'product', tin));
    const wax = { zones: [], type: 'wax', date: '2026-05-21', stock, used: 80, coats: 2 };
    await done(recordTreatment(desk, work.sculpture, wax));
    show(desk, <ProductsScreen />);
    const row = await screen.findByRole('button', { name: /Wax/ });
    expect(within(row).getByText(/420 g/)).toBeDefined();
    expect(within(row).getByText(/10 \(9\.1 to 11\) g\/m² and coat/)).toBeDefined();
    expect(within(row).getByText(/42 \(38 to 46\) m², one coat/)).toBeDefined();
    expect(within(row).getByText(/From the logbook: 1 time, 4\.00 m² in all/)).toBeDefined();
    expect(within(row).queryByText('No safety sheet named')).toBeNull();
  });

  it('lists what to order, and says what is past its day or has no sheet', async () => {
    const desk = await freshDesk();
    const tin = {
      name: 'Wax',
      sort: 'microcrystalline',
      unit: 'tin',
      left: 1,
      least: 1,
      expires: '2026-10-01',
    } as const;
    await done(addPlanned(desk, 'product', tin));
    show(desk, <ProductsScreen />);
    const order = await screen.findByRole('note', { name: /To order/ });
    expect(within(order).getByText('Wax: 0 tins left, 1 tins at least')).toBeDefined();
    expect(screen.getByText('Past its day')).toBeDefined();
    expect(screen.getByText('No safety sheet named')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('refuses days out of order in a sentence, and puts what is no longer used away', async () => {
    const desk = await freshDesk();
    const user = userEvent.setup();
    await done(addPlanned(desk, 'product', { name: 'Wax', sort: 'microcrystalline', opened: '2026-05-01' }));
    await done(addPlanned(desk, 'product', { name: 'Old wax', sort: 'microcrystalline', ended: '2025-05-01' }));
    show(desk, <ProductsScreen />);
    await user.click(await screen.findByRole('button', { name: /^Wax/ }));
    await user.type(screen.getByLabelText(/Good until/), '2026-04-01');
    await user.click(screen.getByRole('button', { name: 'Keep it' }));
    expect(await screen.findByText(/1 April 2026 lies before 1 May 2026/)).toBeDefined();
    await user.clear(screen.getByLabelText(/Good until/));
    await user.click(screen.getByRole('button', { name: 'Remove it' }));
    await waitFor(async () => expect(await kept(desk)).toHaveLength(1));
    expect(screen.getByRole('button', { name: 'No longer used' }).getAttribute('aria-expanded')).toBe('false');
  });
});
