import { type ColumnUse, columnUses, type DayOrder, folded, type WorkHere } from '../../engine/bring';
import { treatments } from '../../engine/trade';
import { w } from '../../words';
import { Choice, Field, Section, Tick } from '../parts';
import { Select } from '../parts/Select';
import type { Said, Understood } from './useList';
import { WorkSelect } from './WorkSelect';

const words = w.bring;
const orders: readonly DayOrder[] = ['day first', 'month first'];
const longestExample = 60;

interface HowToReadProps {
  readonly said: Said;
  readonly read: Understood;
  readonly works: readonly WorkHere[];
  readonly change: (more: Partial<Said>) => void;
}

/** What each column is, and all the list does not say by itself. */
export function HowToRead({ said, read, works, change }: HowToReadProps) {
  const use = (column: number, to: ColumnUse) =>
    change({
      uses: said.uses.map((was, i) =>
        i === column ? to : was === to && to !== 'note' && to !== 'leave' ? 'note' : was,
      ),
    });
  const sorts = [
    { value: '', label: words.notChosen },
    ...treatments.map(({ id, name }) => ({ value: id, label: name })),
  ];
  return (
    <>
      <Section title={words.columns} lead={words.columnsLead}>
        <Tick label={words.firstNames} checked={said.heads} onChange={(heads) => change({ heads })} />
        <div className="bring-columns">
          {said.uses.map((value, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place in the list
            <div key={i}>
              <Select
                label={words.column(i + 1, (read.heads[i] ?? '').trim())}
                value={value}
                onChange={(to) => use(i, to as ColumnUse)}
                options={columnUses.map((each) => ({ value: each, label: words.uses[each] }))}
              />
              {read.firsts[i]?.trim() && (
                <p className="soft small bring-cell">{words.example(read.firsts[i].trim().slice(0, longestExample))}</p>
              )}
            </div>
          ))}
        </div>
      </Section>
      {read.asksOrder && (
        <Choice
          label={words.order}
          hint={words.orderWhat(read.asksOrder)}
          options={orders.map((value) => ({ value, label: words.orders[value] }))}
          value={read.order}
          onChange={(order) => change({ order })}
        />
      )}
      <div className="bring-columns">
        {!said.uses.includes('work') && (
          <WorkSelect
            works={works}
            label={words.workForAll}
            value={said.workForAll}
            onChange={(workForAll) => change({ workForAll })}
          />
        )}
        {read.typesMissing && (
          <Select
            label={words.typeForAll}
            value={said.typeForAll}
            onChange={(typeForAll) => change({ typeForAll })}
            options={sorts}
          />
        )}
      </div>
      {read.asksWorks.length > 0 && (
        <Section title={words.worksAsked} lead={words.worksAskedLead}>
          <div className="bring-columns">
            {read.asksWorks.map((text) => (
              <WorkSelect
                key={text}
                works={works}
                label={words.means(text)}
                value={said.workFor[folded(text)] ?? ''}
                onChange={(work) => change({ workFor: { ...said.workFor, [folded(text)]: work } })}
              />
            ))}
          </div>
        </Section>
      )}
      {read.asksTypes.length > 0 && (
        <Section title={words.typesAsked} lead={words.typesAskedLead}>
          <div className="bring-columns">
            {read.asksTypes.map((text) => (
              <Select
                key={text}
                label={words.means(text)}
                value={said.typeFor[folded(text)] ?? ''}
                onChange={(type) => change({ typeFor: { ...said.typeFor, [folded(text)]: type } })}
                options={sorts}
              />
            ))}
          </div>
        </Section>
      )}
      <Field
        label={words.source}
        hint={words.sourceHint}
        value={said.source}
        onChange={(source) => change({ source })}
        maxLength={300}
      />
    </>
  );
}
