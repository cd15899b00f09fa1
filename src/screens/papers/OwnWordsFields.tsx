import { useCallback, useEffect, useRef, useState } from 'react';
import { setPlanned } from '../../actions';
import { nameOf } from '../../engine/record';
import type { OwnWords } from '../../papers/layout';
import { sayReason, w } from '../../words';
import { Field, Notice, Section } from '../parts';
import { useDesk, useTyped } from '../shell';
import { type OfPaper, ofPaper } from './ofPaper';

const words = w.paperHub.own;

/** A rest of the hand after which what was typed is kept, milliseconds. */
const rest = 1200;

interface OwnWordsFieldsProps {
  readonly own: readonly OwnWords[];
  readonly of: OfPaper;
  readonly author: string;
}

/** Places of a paper for words of her own. */
export function OwnWordsFields({ own, of, author }: OwnWordsFieldsProps) {
  if (own.length === 0) return null;
  return (
    <Section title={words.title} lead={words.lead}>
      {own.map((place) => (
        <OwnWordsField key={place.part} place={place} of={of} author={author} />
      ))}
    </Section>
  );
}

/** Kept when the hand rests, when the field is left and when the page goes: nothing typed is lost. */
function OwnWordsField({ place, of, author }: Omit<OwnWordsFieldsProps, 'own'> & { readonly place: OwnWords }) {
  const desk = useDesk();
  const [typed, setTyped] = useState<string>();
  const [problem, setProblem] = useState<string>();
  const [under, setUnder] = useState(false);
  const toKeep = useRef<string>(undefined);
  const kept = useRef<() => void>(() => undefined);
  const around = useRef<HTMLDivElement>(null);
  const wait = useRef<ReturnType<typeof setTimeout>>(undefined);
  const keep = useCallback(async () => {
    clearTimeout(wait.current);
    const text = toKeep.current;
    if (text === undefined) return;
    toKeep.current = undefined;
    setUnder(true);
    const body = { ...ofPaper(of), part: place.part, text, by: author || undefined, date: desk.today() };
    const outcome = await setPlanned(desk, 'paperText', nameOf.paperText(of.sort.id, place.part, of.about), body);
    setUnder(false);
    setProblem(outcome.ok ? undefined : sayReason(outcome.reason));
    if (!outcome.ok) toKeep.current ??= text;
    if (toKeep.current === undefined) kept.current();
  }, [desk, of, place.part, author]);
  const latest = useRef(keep);
  latest.current = keep;
  useEffect(() => {
    const goes = () => void latest.current();
    addEventListener('pagehide', goes);
    document.addEventListener('visibilitychange', goes);
    const field = around.current;
    field?.addEventListener('focusout', goes);
    return () => {
      field?.removeEventListener('focusout', goes);
      removeEventListener('pagehide', goes);
      document.removeEventListener('visibilitychange', goes);
      goes();
    };
  }, []);
  const type = (text: string) => {
    setTyped(text);
    toKeep.current = text;
    clearTimeout(wait.current);
    wait.current = setTimeout(() => void latest.current(), rest);
  };
  // Between the letter and the rest of the hand: what the device ended the browser over is kept when the paper is opened again.
  const unkept = useTyped(['own words', nameOf.paperText(of.sort.id, place.part, of.about)], {
    typed: [typed, (text) => text !== undefined && type(text)],
  });
  kept.current = unkept.kept;
  const text = typed ?? (place.text || (place.drafted ?? ''));
  return (
    <div ref={around}>
      {unkept.line}
      {problem && <Notice kind="problem" title={problem} />}
      <Field
        label={place.label}
        hint={place.hint}
        kind="long"
        value={text}
        onChange={type}
        maxLength={place.longest}
        optional
      />
      <p className="soft small" role="status">
        {[
          typed !== undefined && (under || toKeep.current !== undefined ? words.keeping : words.kept),
          place.longest - text.length < place.longest / 5 && words.left(place.longest - text.length),
        ]
          .filter(Boolean)
          .join(' · ')}
      </p>
    </div>
  );
}
