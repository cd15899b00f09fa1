import { useState } from 'react';
import { realRate } from '../../engine/money';
import { number, typedPercent, w } from '../../words';
import { Button, Field } from '../parts';
import { Fold } from '../parts/Fold';

const words = w.money;

/** What interest leaves over the rise of prices, to be taken as the rate. */
export function RateFromInterest({ onTake }: { readonly onTake: (percent: string) => void }) {
  const [interest, setInterest] = useState('');
  const [inflation, setInflation] = useState('');
  const [nominal, rise] = [typedPercent(interest), typedPercent(inflation)];
  const rate = nominal === undefined || rise === undefined ? undefined : realRate(nominal / 100, rise / 100);
  const percent = rate === undefined ? '' : number(rate * 100, 2);
  return (
    <Fold show={words.fromInterest} hide={words.fromInterestHide} alsoOnPaper>
      <div className="stack">
        {(
          [
            [words.interest, interest, setInterest],
            [words.inflation, inflation, setInflation],
          ] as const
        ).map(([label, value, onChange]) => (
          <Field
            key={label}
            label={label}
            takes="percent"
            unit={words.perYear}
            value={value}
            onChange={onChange}
            maxLength={8}
            short
            optional
          />
        ))}
        {rate !== undefined && rate >= 0 && (
          <div className="row">
            <Button onClick={() => onTake(percent)}>{words.takeRate(percent)}</Button>
          </div>
        )}
      </div>
    </Fold>
  );
}
