import { useState } from 'react';
import { setClimate } from '../../actions';
import type { BodyOf } from '../../engine/record';
import { fieldText, fromUnit, typedNumber, w } from '../../words';
import { Button, Field, Notice, Section } from '../parts';
import { say, useDeed, useDesk } from '../shell';

const words = w.place;
const figures = ['temperature', 'humidity', 'so2', 'chloride'] as const;
type What = (typeof figures)[number];

/** A number that may lie under zero, as a person types it. */
const typed = (text: string): number | undefined => {
  const below = /^\s*[-−]/.test(text);
  const value = typedNumber(text.replace(/^\s*[-−]/, ''));
  return value === undefined ? undefined : below ? -value : value;
};

interface AirEntryProps {
  readonly climate: BodyOf<'climate'> | null;
  readonly onDone: () => void;
}

/** The four figures with their units, and where they come from. */
export function AirEntry({ climate, onDone }: AirEntryProps) {
  const desk = useDesk();
  const [texts, setTexts] = useState<Readonly<Record<What, string>>>({
    temperature: fieldText('temperature', climate?.temperature),
    humidity: climate ? String(climate.humidity) : '',
    so2: climate ? String(climate.so2) : '',
    chloride: climate ? String(climate.chloride) : '',
  });
  const [from, setFrom] = useState(climate?.from ?? '');
  const [faults, setFaults] = useState<Partial<Record<What, string>>>({});
  const { run, refused, busy } = useDeed();
  const keep = () => {
    const wrong = figures.filter((what) => typed(texts[what]) === undefined);
    setFaults(Object.fromEntries(wrong.map((what) => [what, words.notANumber(words[what])])));
    if (wrong.length > 0) return;
    const value = (what: What): number => typed(texts[what]) ?? 0;
    const said = from.trim();
    void run(
      () =>
        setClimate(desk, {
          temperature: fromUnit('temperature', value('temperature')),
          humidity: value('humidity'),
          so2: value('so2'),
          chloride: value('chloride'),
          ...(said ? { from: said } : {}),
        }),
      () => {
        say(words.kept);
        onDone();
      },
    );
  };
  return (
    <Section title={words.entry} lead={words.entryWhat}>
      <div className="stack">
        {figures.map((what) => (
          <Field
            key={what}
            label={words[what]}
            hint={words.hints[what]}
            unit={words.units[what]}
            kind={what === 'temperature' ? 'text' : 'number'}
            value={texts[what]}
            error={faults[what]}
            onChange={(text) => setTexts({ ...texts, [what]: text })}
            short
          />
        ))}
        <Field label={words.from} hint={words.fromHint} value={from} onChange={setFrom} maxLength={500} optional />
        {refused && <Notice kind="problem" title={refused} />}
        <div className="row by-hand">
          <Button onClick={onDone}>{words.stop}</Button>
          <Button kind="main" disabled={busy} onClick={keep}>
            {words.keep}
          </Button>
        </div>
      </div>
    </Section>
  );
}
