import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { type ReactNode, useState } from 'react';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';

/** A control with what is typed into it. */
function Holding<T>({
  start,
  draw,
}: {
  readonly start: T;
  readonly draw: (held: T, hold: (next: T) => void) => ReactNode;
}) {
  const [held, hold] = useState(start);
  return draw(held, hold);
}

type Parts = typeof import('../../../src/screens/parts');
type Hours = typeof import('../../../src/screens/parts/HoursEntry');
type HoursRows = Parameters<Hours['HoursEntry']>[0]['people'];
type Words = typeof import('../../../src/words');

/** The controls with the words of a language, which are taken up as they are loaded. */
const spokenIn = async (locale: string, units: string) => {
  vi.resetModules();
  const { speakAs, tongueOf } = await import('../../../src/words/speakAs');
  await speakAs(tongueOf(locale, units));
  return {
    parts: await import('../../../src/screens/parts'),
    hours: await import('../../../src/screens/parts/HoursEntry'),
    words: await import('../../../src/words'),
  };
};
afterAll(() => vi.resetModules());

const plain = (text: string | null | undefined) => text?.replaceAll('\u00a0', ' ');
/** What is read out with a field. */
const toldWith = (field: HTMLElement): string =>
  (field.getAttribute('aria-describedby') ?? '')
    .split(' ')
    .map((id) => plain(document.getElementById(id)?.textContent) ?? '')
    .join(' ')
    .trim();

describe.each([
  {
    ...{ locale: 'en-GB', units: 'metric', unit: 'm', big: '1,500', keypad: '1.5' },
    ...{
      bigTold: 'Read as 1500 m, not as 1.5.',
      none: 'This cannot be read as a number here. Write it like 1500 or 2.5.',
    },
    ...{ money: '46.000', moneyTold: 'Read as 46000, not as 46.', percent: '12.5 %', row: /^Hours/ },
    ...{ hoursTold: 'Read as 2.5.' },
  },
  {
    ...{ locale: 'de-DE', units: 'metric', unit: 'm', big: '1.500', keypad: '1.5' },
    ...{ bigTold: 'Gelesen als 1500 m, nicht als 1,5.' },
    ...{ none: 'Das lässt sich hier nicht als Zahl lesen. Schreiben Sie sie wie 1500 oder 2,5.' },
    ...{ money: '46,000', moneyTold: 'Gelesen als 46000, nicht als 46.', percent: '12,5 %', row: /^Stunden/ },
    ...{ hoursTold: 'Gelesen als 2,5.' },
  },
])('A number typed in $locale', (said) => {
  let parts: Parts;
  let hours: Hours;
  let words: Words;
  beforeAll(async () => {
    ({ parts, hours, words } = await spokenIn(said.locale, said.units));
  }, 120_000);

  it('a measure says how it was read where it could be read a thousandfold off, and is silent elsewhere', async () => {
    const kept: (number | undefined)[] = [];
    const draw = (text: string, setText: (text: string) => void) => {
      kept.push(words.typedMeasure('length', text));
      return <parts.Field label="Height" takes="length" value={text} onChange={setText} />;
    };
    render(<Holding start="" draw={draw} />);
    const field = screen.getByRole('textbox', { name: 'Height' });
    expect(screen.getByText(said.unit)).toBeDefined();
    await userEvent.type(field, said.big);
    expect([kept.at(-1), toldWith(field)]).toEqual([1500, said.bigTold]);
    await userEvent.clear(field);
    await userEvent.type(field, said.keypad);
    expect([kept.at(-1), toldWith(field)]).toEqual([1.5, '']);
  });

  it('what is no number is said when the field is left, not while it is being typed', async () => {
    render(
      <Holding
        start=""
        draw={(text, setText) => <parts.Field label="Height" takes="length" value={text} onChange={setText} />}
      />,
    );
    const field = screen.getByRole('textbox', { name: 'Height' });
    await userEvent.type(field, '12 kg');
    expect(toldWith(field)).toBe('');
    await userEvent.tab();
    expect(toldWith(field)).toBe(said.none);
    expect(field.getAttribute('aria-invalid')).toBe('true');
    await userEvent.clear(field);
    await userEvent.tab();
    expect(toldWith(field)).toBe('');
  });

  it('an amount with the mark of decimals before three figures says that it was read as thousands', async () => {
    render(
      <Holding
        start=""
        draw={(text, setText) => <parts.MoneyField label="Price" currency="EUR" value={text} onChange={setText} />}
      />,
    );
    const field = screen.getByRole('textbox', { name: 'Price' });
    await userEvent.type(field, said.money);
    expect(toldWith(field)).toBe(said.moneyTold);
    await userEvent.clear(field);
    await userEvent.type(field, '1 200,50 €');
    await userEvent.tab();
    expect(toldWith(field)).toBe('');
    await userEvent.type(field, ' x');
    await userEvent.tab();
    expect(toldWith(field)).not.toBe('');
  });

  it('a share takes its sign along', async () => {
    const kept: (number | undefined)[] = [];
    const draw = (text: string, setText: (text: string) => void) => {
      kept.push(words.typedPercent(text));
      return <parts.Field label="Share" takes="percent" value={text} onChange={setText} />;
    };
    render(<Holding start="" draw={draw} />);
    const field = screen.getByRole('textbox', { name: 'Share' });
    await userEvent.type(field, said.percent);
    await userEvent.tab();
    expect([kept.at(-1), toldWith(field)]).toEqual([12.5, '']);
  });

  it('hours and minutes are told as hours', async () => {
    const one: HoursRows = [{ role: 'Helper', hours: '' }];
    render(
      <Holding
        start={one}
        draw={(people, setPeople) => (
          <hours.HoursEntry label="Who" people={people} onChange={setPeople} tried wrong={false} />
        )}
      />,
    );
    const field = screen.getByRole('textbox', { name: said.row });
    await userEvent.type(field, '2:30');
    expect(toldWith(field)).toBe(said.hoursTold);
    expect(words.typedHours('2:30')).toBe(2.5);
  });
});
