import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { describe, expect, it } from 'vitest';
import { PeopleEntry } from '../../../src/screens/parts/PeopleEntry';
import { type PersonSaid, peopleKept, peopleWhole, type SignedSaid } from '../../../src/screens/parts/peopleSaid';
import { SignedEntry } from '../../../src/screens/parts/SignedEntry';
import { axeFaults } from '../axe';

let kept: readonly PersonSaid[] = [];

function Signing() {
  const [signed, setSigned] = useState<readonly SignedSaid[]>([]);
  kept = signed;
  return <SignedEntry label="Signed by" signed={signed} onChange={setSigned} today="2026-10-15" tried />;
}

function Asking({ people }: { readonly people: readonly PersonSaid[] }) {
  const [rows, setRows] = useState(people);
  kept = rows;
  return <PeopleEntry label="Consulted" people={rows} onChange={setRows} />;
}

describe('People by role', () => {
  it('signs for today unless another day is said, and asks for the role where only a name was given', async () => {
    const user = userEvent.setup();
    render(<Signing />);
    await user.click(screen.getByRole('button', { name: 'Add a signature' }));
    const row = within(screen.getByRole('group', { name: 'Person 1' }));
    await user.type(row.getByRole('textbox', { name: /Name/ }), 'Ada');
    expect(row.getByText(/Say in what role/)).toBeDefined();
    expect(peopleWhole(kept)).toBe(false);
    await user.type(row.getByRole('textbox', { name: /Role/ }), 'conservator');
    expect(row.queryByText(/Say in what role/)).toBeNull();
    expect(kept).toEqual([{ role: 'conservator', name: 'Ada', on: '2026-10-15' }]);
    expect(await axeFaults()).toEqual([]);
  });

  it('takes away the one that was touched and leaves the others as they were', async () => {
    const user = userEvent.setup();
    render(<Asking people={[{ role: 'estate' }, { role: 'gardener', name: 'Bo' }, { role: 'insurer' }]} />);
    await user.click(screen.getByRole('button', { name: 'Take away gardener' }));
    expect(kept).toEqual([{ role: 'estate' }, { role: 'insurer' }]);
    expect(screen.getAllByRole('textbox', { name: /Role/ }).map((box) => (box as HTMLInputElement).value)).toEqual([
      'estate',
      'insurer',
    ]);
  });

  it('keeps no empty row and no empty name', () => {
    expect(
      peopleKept([
        { role: ' estate ', name: ' ' },
        { role: '', name: '' },
      ]),
    ).toEqual([{ role: 'estate' }]);
    expect(peopleWhole([{ role: '', name: '' }])).toBe(true);
    expect(peopleWhole([{ role: 'estate', on: '' }])).toBe(false);
  });
});
