import { useState } from 'react';
import { setClimate } from '../../actions';
import type { BodyOf } from '../../engine/record';
import { fieldText, numberTyped, typedMeasure, typedNumber, typedPercent, w } from '../../words';
import { Button, Field, Notice, Section } from '../parts';
import { say, useDeed, useDesk, useTyped } from '../shell';

const words = w.place;
const figures = ['temperature', 'humidity', 'so2', 'chloride'] as const;
type What = (typeof figures)[number];

const takes = { temperature: 'temperature', humidity: 'percent', so2: 'number', chloride: 'number' } as const;

/** As the record holds it. */
const typed = (what: What, text: string): number | undefined => {
  if (what === 'temperature') return typedMeasure('temperature', text);
  return what === 'humidity' ? typedPercent(text) : typedNumber(text);
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
    humidity: climate ? numberTyped(climate.humidity) : '',
    so2: climate ? numberTyped(climate.so2) : '',
    chloride: climate ? numberTyped(climate.chloride) : '',
  });
  const [from, setFrom] = useState(climate?.from ?? '');
  const [faults, setFaults] = useState<Partial<Record<What, string>>>({});
  const unkept = useTyped(['air of the place', 'all'], { texts: [texts, setTexts], from: [from, setFrom] });
  const { run, refused, busy } = useDeed(unkept);
  const keep = () => {
    const wrong = figures.filter((what) => typed(what, texts[what]) === undefined);
    setFaults(Object.fromEntries(wrong.map((what) => [what, words.notANumber(words[what])])));
    if (wrong.length > 0) return;
    const value = (what: What): number => typed(what, texts[what]) ?? 0;
    const said = from.trim();
    void run(
      () =>
        setClimate(desk, {
          temperature: value('temperature'),
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
            takes={takes[what]}
            value={texts[what]}
            error={faults[what]}
            onChange={(text) => setTexts({ ...texts, [what]: text })}
            short
          />
        ))}
        <Field label={words.from} hint={words.fromHint} value={from} onChange={setFrom} maxLength={500} optional />
        {unkept.line}
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
