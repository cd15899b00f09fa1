import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { describe, expect, it, vi } from 'vitest';
import {
  Button,
  Choice,
  Choices,
  ClassBadge,
  Field,
  FigureText,
  FileButton,
  IndexDial,
  levelOf,
  Sheet,
} from '../../../src/screens/parts';
import { axeFaults } from '../axe';

function Asked() {
  const [value, setValue] = useState<'a' | 'b'>('a');
  return (
    <Choice
      label="Which?"
      hint="One of two."
      value={value}
      onChange={setValue}
      options={[
        { value: 'a', label: 'First' },
        { value: 'b', label: 'Second', detail: 'the other one' },
      ]}
    />
  );
}

function Opens() {
  const [open, setOpen] = useState(false);
  return (
    <>
      <Button onClick={() => setOpen(true)}>Open</Button>
      <Sheet open={open} title="A sheet" onClose={() => setOpen(false)}>
        <p>Inside</p>
      </Sheet>
    </>
  );
}

describe('The index dial', () => {
  it('says the index, its range and its word to ears', () => {
    render(<IndexDial of="Zone B" figure={{ value: 63.6, low: 58.2, high: 69.1 }} />);
    expect(
      screen.getByRole('img', { name: 'Zone B: condition index 64 of 100, between 58 and 69, marked' }),
    ).toBeDefined();
  });

  it('is an open ring where nothing was looked at, never a nought', () => {
    render(<IndexDial of="Zone B" figure={null} />);
    expect(screen.getByRole('img', { name: 'Zone B: no condition index, not looked at' }).textContent).not.toMatch(/0/);
  });

  it.each([0.01, 50, 99.9999, 100])('draws %d without a broken path', (value) => {
    const { container } = render(
      <IndexDial of="x" figure={{ value, low: Math.max(0, value - 5), high: Math.min(100, value + 5) }} />,
    );
    for (const path of container.querySelectorAll('path')) expect(path.getAttribute('d')).not.toMatch(/NaN|undefined/);
  });

  it('changes its step at the edges of the condition classes', () => {
    expect([100, 90, 89.9, 80, 79.9, 55, 54.9, 35, 34.9, 0.1].map(levelOf)).toEqual([1, 1, 2, 2, 3, 3, 4, 4, 5, 5]);
  });
});

describe('Controls', () => {
  it('a button acts on release, and not at all while it may not', async () => {
    const user = userEvent.setup();
    const press = vi.fn();
    render(
      <>
        <Button onClick={press}>Go</Button>
        <Button onClick={press} disabled>
          Not now
        </Button>
      </>,
    );
    await user.pointer({ keys: '[MouseLeft>]', target: screen.getByRole('button', { name: 'Go' }) });
    expect(press).not.toHaveBeenCalled();
    await user.pointer({ keys: '[/MouseLeft]' });
    expect(press).toHaveBeenCalledOnce();
    await user.click(screen.getByRole('button', { name: 'Not now' }));
    expect(press).toHaveBeenCalledOnce();
  });

  it('a choice is a radio group the keyboard walks, with hints read out', async () => {
    const user = userEvent.setup();
    // What the keyboard walk looks radio groups up with, and this page has not.
    vi.stubGlobal('CSS', { escape: (text: string) => text });
    render(<Asked />);
    await user.tab();
    await user.keyboard('{ArrowDown}');
    expect(screen.getByRole('radio', { name: 'Second', description: 'the other one' })).toHaveProperty('checked', true);
    expect(screen.getByRole('group', { name: 'Which?', description: 'One of two.' })).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('many choices stay in the order they are offered in, whichever was touched first', async () => {
    const user = userEvent.setup();
    const chosen = vi.fn();
    const options = ['a', 'b', 'c'].map((value) => ({ value, label: value }));
    render(<Choices label="Which?" options={options} values={['c']} onChange={chosen} />);
    await user.click(screen.getByRole('checkbox', { name: 'a' }));
    expect(chosen).toHaveBeenCalledWith(['a', 'c']);
  });

  it('an entry reads out its hint and what is wrong with it', () => {
    render(
      <Field label="Area" hint="In square metres." error="Give an area above 0." value="" onChange={() => undefined} />,
    );
    const entry = screen.getByRole('textbox', { name: 'Area', description: 'In square metres. Give an area above 0.' });
    expect(entry.getAttribute('aria-invalid')).toBe('true');
  });

  it('a file can be chosen twice running', async () => {
    const user = userEvent.setup();
    const got = vi.fn();
    render(
      <FileButton accept="image/*" onFile={got}>
        Choose a file
      </FileButton>,
    );
    const file = new File(['x'], 'west.png', { type: 'image/png' });
    await user.upload(screen.getByLabelText('Choose a file'), file);
    await user.upload(screen.getByLabelText('Choose a file'), file);
    expect(got).toHaveBeenCalledTimes(2);
  });

  it('a sheet gives the focus back to what opened it', async () => {
    const user = userEvent.setup();
    render(<Opens />);
    await user.click(screen.getByRole('button', { name: 'Open' }));
    expect(screen.getByRole('dialog', { name: 'A sheet' })).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Close' }));
    expect(screen.queryByRole('dialog')).toBeNull();
    expect(document.activeElement).toBe(screen.getByRole('button', { name: 'Open' }));
  });
});

describe('Figures', () => {
  it('never stand bare', () => {
    const { container } = render(<FigureText figure={{ value: 8.3, low: 7.1, high: 9.42 }} as="m2" />);
    expect(container.textContent).toBe('8.30 m² (7.10 to 9.42)');
  });

  it('a class says its words to ears even where only its letters show', () => {
    const { container } = render(<ClassBadge family="UC" level={2} />);
    expect(container.textContent).toMatch(/UC2.*soon/);
  });
});
