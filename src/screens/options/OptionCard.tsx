import { useId } from 'react';
import { speaking } from '../../engine/options';
import type { Reason, Thing } from '../../engine/record';
import { optionSortOf } from '../../engine/trade';
import { costText, goodMonthsText, list, money, type NameOfThing, w } from '../../words';
import { Button } from '../parts';
import { Fold } from '../parts/Fold';
import { Reasons } from '../parts/Reasons';
import type { Around } from './around';

const words = w.options;

interface OptionCardProps {
  readonly option: Thing<'option'>;
  readonly name: string;
  readonly around: Around;
  readonly onEdit: (() => void) | undefined;
}

/** One way to go on: what it gives, what cannot be taken back, and what the record says for it and against it. */
export function OptionCard({ option, name, around, onEdit }: OptionCardProps) {
  const id = useId();
  const { body } = option;
  const sort = optionSortOf(body.sort);
  const { signs, names, record } = around;
  const said = signs && speaking(body.sort, signs);
  const zones = record.zones.filter(({ thing }) => body.zones?.includes(thing));
  const rows: readonly (readonly [string, string | undefined])[] = [
    [words.goodMonths, goodMonthsText(body)],
    [words.steps, words.stepsOf(body.irreversible, body.irreversibleSize)],
    [words.zones, zones.length > 0 ? words.zonesOf(list(zones.map(({ body: { letter } }) => letter))) : words.whole],
  ];
  const more: readonly (readonly [string, string | undefined])[] = [
    [words.does, body.does || sort?.does],
    [words.mayDo, body.who || sort?.who],
    [words.risks, body.risks || sort?.risks],
  ];
  return (
    <li className="card">
      <article aria-labelledby={id} className="stack">
        <header className="row">
          <h3 id={id} className="grow">
            {name}
            {sort && sort.name !== body.title && <span className="soft option-sort"> {sort.name}</span>}
          </h3>
          {onEdit && (
            <span className="not-printed">
              <Button onClick={onEdit} aria-label={words.editOf(name)}>
                {words.edit}
              </Button>
            </span>
          )}
        </header>
        <Facts rows={rows} />
        <div className="option-said">
          <div>
            <p className="strong">{words.speaksFor}</p>
            <Said reasons={said?.for} names={names} />
          </div>
          <div>
            <p className="strong">{words.speaksAgainst}</p>
            <Said reasons={said?.against} names={names} />
            {sort?.irreversible && <p>{sort.irreversible}</p>}
          </div>
        </div>
        <Fold show={words.showMore} hide={words.hideMore}>
          <div className="stack">
            <Facts rows={more} />
            {body.costs.length > 0 && (
              <div>
                <p className="strong">{words.costs}</p>
                <ul className="bare option-costs">
                  {body.costs.map((line, i) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: two lines may be the same
                    <li key={i}>
                      <span className="grow">
                        {line.name} <span className="soft small">{costText(line)}</span>
                      </span>
                      <span className="figures">{money(line.amount)}</span>
                    </li>
                  ))}
                </ul>
              </div>
            )}
            {body.note && <p>{body.note}</p>}
          </div>
        </Fold>
      </article>
    </li>
  );
}

function Said({ reasons, names }: { readonly reasons: readonly Reason[] | undefined; readonly names: NameOfThing }) {
  if (reasons === undefined) return <p className="soft">{words.working}</p>;
  return reasons.length > 0 ? <Reasons reasons={reasons} nameOf={names} /> : <p className="soft">{words.nothingFor}</p>;
}

function Facts({ rows }: { readonly rows: readonly (readonly [string, string | undefined])[] }) {
  return (
    <dl className="option-facts">
      {rows
        .filter(([, text]) => text)
        .map(([term, text]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{text}</dd>
          </div>
        ))}
    </dl>
  );
}
