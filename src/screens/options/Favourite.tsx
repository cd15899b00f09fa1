import { useState } from 'react';
import { bestBuy, figuresAgainst, speaking, turningOf, whatIfs } from '../../engine/options';
import { nameOfOption, w } from '../../words';
import { Section } from '../parts';
import { Reasons } from '../parts/Reasons';
import { Select } from '../parts/Select';
import type { Around } from './around';
import { CostSoFar } from './CostSoFar';
import { WhatIfBars } from './WhatIfBars';

const words = w.options;

/** The way somebody leans to, what speaks against it, when it has cost no more than the others, and what if things were otherwise. */
export function Favourite({ around }: { readonly around: Around }) {
  const { rows, options, names, rules, signs } = around;
  const [leaning, setLeaning] = useState('');
  const one = rows.find(({ option }) => option.thing === leaning) ?? bestBuy(rows);
  if (!one) return null;
  const name = nameOfOption(options, one.option.thing);
  const told = whatIfs(one, rows, rules);
  const against = [
    ...speaking(one.option.body.sort, signs ?? []).against,
    ...figuresAgainst(one, rows),
    ...(told ? turningOf(one, told) : []),
  ];
  return (
    <>
      <Section title={words.favourite} lead={words.favouriteLead}>
        <div className="not-printed">
          <Select
            label={words.favouriteChoice}
            value={one.option.thing}
            onChange={setLeaning}
            options={rows.map(({ option }) => ({ value: option.thing, label: nameOfOption(options, option.thing) }))}
          />
        </div>
        <p className="only-printed strong">{name}</p>
        {against.length > 0 ? (
          <Reasons reasons={against} nameOf={names} label={words.favourite} />
        ) : (
          <p>{words.nothingAgainst}</p>
        )}
        <CostSoFar around={around} />
      </Section>
      {told && <WhatIfBars told={told} one={one} around={around} />}
    </>
  );
}
