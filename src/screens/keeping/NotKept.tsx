import { useState } from 'react';
import { forgetTyped, holdTyped, rememberedAnew, type TypedHeld, typedNotKept } from '../../actions';
import { inQuotes, w } from '../../words';
import { Button, LinkButton, Section } from '../parts';
import { useDesk, useQuestion } from '../shell';
import { typedWhen } from '../shell/TypedLine';

const words = w.notKept;

/** As much of it as makes her know it again. */
const shown = 80;

/** Forms that were left before they were kept: where each was open, when, and how it begins. Nothing is shown where there are none. */
export function NotKept() {
  const desk = useDesk();
  const held = useQuestion(typedNotKept(desk)) ?? [];
  const [discarded, setDiscarded] = useState<TypedHeld>();
  if (held.length === 0 && !discarded) return null;
  const discard = async (row: TypedHeld) => {
    if ((await forgetTyped(desk, row.place)).ok) setDiscarded(row);
  };
  const bringBack = async ({ place, ...typed }: TypedHeld) => {
    if ((await holdTyped(desk, place, typed)).ok) setDiscarded(undefined);
    rememberedAnew(desk);
  };
  return (
    <Section title={words.title} lead={words.lead}>
      {discarded && (
        <div className="row" role="status">
          <p className="grow">{words.discardedRow(discarded.title)}</p>
          <Button kind="quiet" onClick={() => void bringBack(discarded)}>
            {words.bringBack}
          </Button>
        </div>
      )}
      {held.length > 0 && (
        <>
          <ul className="carried bare">
            {held.map((row) => (
              <li key={row.place}>
                <span className="strong">{row.title}</span>
                <span className="soft">
                  {words.row(...typedWhen(row.at))}
                  {beginningOf(row) && ` · ${inQuotes(beginningOf(row))}`}
                </span>
                <div className="row">
                  <LinkButton to={row.where}>{words.open(row.title)}</LinkButton>
                  <Button kind="quiet" aria-label={words.discardOf(row.title)} onClick={() => void discard(row)}>
                    {words.discard}
                  </Button>
                </div>
              </li>
            ))}
          </ul>
          <p className="soft">{words.again}</p>
        </>
      )}
    </Section>
  );
}

/** The longest text in it is what she wrote; codes and days are short. */
const beginningOf = ({ values }: TypedHeld): string => {
  const texts = (value: unknown): string[] =>
    typeof value === 'string'
      ? [value.trim()]
      : typeof value === 'object' && value !== null
        ? Object.values(value).flatMap(texts)
        : [];
  const longest = texts(values)
    .filter((text) => !/^[\w-]+\/[\w-/]+$|^\d{4}-\d{2}-\d{2}$/.test(text))
    .reduce((one, other) => (other.length > one.length ? other : one), '');
  return longest.length > shown ? `${longest.slice(0, shown).trimEnd()} …` : longest;
};
