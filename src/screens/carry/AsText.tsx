import { useRef } from 'react';
import { w } from '../../words';
import { Button } from '../parts';
import { say } from '../shell';

const words = w.carry;

/** A small survey as text to copy, where nothing else lets a file out. */
export function AsText({ text }: { readonly text: string }) {
  const area = useRef<HTMLTextAreaElement>(null);
  const copy = async () => {
    area.current?.select();
    try {
      await navigator.clipboard.writeText(text);
      say(words.copied);
    } catch {
      // The text stays selected: the keyboard's own copy works where the page may not write to the clipboard.
      say(words.copySelf);
    }
  };
  return (
    <div className="stack">
      <p>{words.textWhat}</p>
      <textarea ref={area} className="as-text" readOnly rows={8} value={text} aria-label={words.asText} />
      <div className="row">
        <Button onClick={copy}>{words.copy}</Button>
      </div>
    </div>
  );
}
