import { useState } from 'react';
import { arrivalOfHeat, type Bound, glassBound, heatUpTime, reachOfHeat } from '../../engine/heat';
import { glassData, glassKinds, heatOfMetals } from '../../engine/trade';
import {
  inUnit,
  measureNumber,
  number,
  numberTyped,
  type Quantity,
  sayReason,
  sourceSaid,
  type TypedAs,
  typedMeasure,
  typedNumber,
  w,
} from '../../words';
import { Field } from '../parts';
import { Fold } from '../parts/Fold';
import { Reasons } from '../parts/Reasons';
import { Select } from '../parts/Select';

const words = w.insertCare.talk;

/** Where a field starts: a figure of the unit shown, with no more places than it is worth. */
const start = (quantity: Quantity, value: number): string =>
  numberTyped(Number(inUnit(quantity, value).toPrecision(2)));

/** Rough sums on heat, as bounds with what they leave out. Nothing of it is kept. */
export function HeatTalk() {
  return (
    <Fold show={words.show} hide={words.hide} whenOpened alsoOnPaper>
      <section className="stack" aria-label={words.title}>
        <h2>{words.title}</h2>
        <p className="soft">{words.what}</p>
        <Metals />
        <Glass />
      </section>
    </Fold>
  );
}

function Metals() {
  const [text, setText] = useState({
    ...{ metal: heatOfMetals[0]?.id ?? '', thickness: start('millimetres', 6), area: start('area', 0.05) },
    ...{ rise: start('difference', 180), power: '20' },
    ...{ minutes: '5', distance: start('centimetres', 15) },
  });
  const set = (key: keyof typeof text) => (value: string) => setText({ ...text, [key]: value });
  const metal = heatOfMetals.find(({ id }) => id === text.metal) ?? heatOfMetals[0];
  if (!metal) return null;
  const of = (key: keyof typeof text, per: number, quantity?: Quantity) => {
    const typed = quantity ? typedMeasure(quantity, text[key]) : typedNumber(text[key]);
    return (typed ?? Number.NaN) / per;
  };
  const heated = heatUpTime({
    ...{
      metal,
      thickness: of('thickness', 1000, 'millimetres'),
      area: of('area', 1, 'area'),
      rise: of('rise', 1, 'difference'),
      power: of('power', 0.001),
    },
  });
  return (
    <>
      <Select
        label={words.metal}
        value={text.metal}
        onChange={set('metal')}
        options={heatOfMetals.map(({ id, name }) => ({ value: id, label: name }))}
      />
      <p className="soft small">{sourceSaid(metal.source)}</p>
      <div className="hot-card">
        <div className="hot-pair">
          <Figure label={words.thickness} takes="millimetres" value={text.thickness} onChange={set('thickness')} />
          <Figure label={words.area} takes="area" value={text.area} onChange={set('area')} />
          <Figure label={words.rise} takes="difference" value={text.rise} onChange={set('rise')} />
          <Figure label={words.power} unit="kW" value={text.power} onChange={set('power')} />
        </div>
        <BoundText label={words.heatUp} bound={heated} write={timeText} />
      </div>
      <div className="hot-card">
        <Figure label={words.minutes} unit="min" value={text.minutes} onChange={set('minutes')} />
        <BoundText label={words.reach} bound={reachOfHeat(metal, of('minutes', 1 / 60))} write={lengthText} />
      </div>
      <div className="hot-card">
        <Figure label={words.distance} takes="centimetres" value={text.distance} onChange={set('distance')} />
        <BoundText
          label={words.arrival}
          bound={arrivalOfHeat(metal, of('distance', 100, 'centimetres'))}
          write={timeText}
        />
      </div>
    </>
  );
}

function Glass() {
  const [kind, setKind] = useState(glassKinds[0]?.id ?? '');
  const row = glassKinds.find(({ id }) => id === kind);
  if (!row) return null;
  const { value, reasons } = glassBound(row, glassData);
  return (
    <div className="hot-card">
      <Select
        label={words.glass}
        value={kind}
        onChange={setKind}
        options={glassKinds.map(({ id, name }) => ({ value: id, label: name }))}
      />
      <p>
        {words.glassBears}:{' '}
        <span className="strong">
          {value === undefined ? words.glassNone : words.kelvin(measureNumber('difference', value, 0))}
        </span>
      </p>
      <Reasons reasons={reasons} />
      <p className="soft small">{sourceSaid(row.source)}</p>
    </div>
  );
}

interface FigureProps {
  readonly label: string;
  /** For what is no measure of the device. */
  readonly unit?: string;
  readonly takes?: TypedAs;
  readonly value: string;
  readonly onChange: (value: string) => void;
}

function Figure(props: FigureProps) {
  return <Field takes="number" {...props} maxLength={10} short />;
}

interface BoundTextProps {
  readonly label: string;
  readonly bound: Bound;
  readonly write: (low: number, high: number) => string;
}

/** The two ends of a bound, never its middle: a middle would be taken for an answer. */
function BoundText({ label, bound, write }: BoundTextProps) {
  return (
    <div role="status" className="stack tight">
      <p>
        {label}: <span className="strong figures">{bound.ok ? write(bound.figure.low, bound.figure.high) : ''}</span>
      </p>
      {bound.ok ? <Reasons reasons={bound.figure.reasons} /> : <p>{sayReason(bound.reason)}</p>}
    </div>
  );
}

const rounded = (n: number): string => number(Number(n.toPrecision(2)), 1);

/** Two figures at most: more would be a promise. */
const timeText = (low: number, high: number): string =>
  high < 120 ? words.seconds(rounded(low), rounded(high)) : words.inMinutes(rounded(low / 60), rounded(high / 60));
const lengthText = (low: number, high: number): string =>
  words.centimetres(rounded(inUnit('centimetres', low * 100)), rounded(inUnit('centimetres', high * 100)));
