import { useEffect, useRef, useState } from 'react';
import { type Prepared, saveFile, type Way, waysToSave } from '../../actions';
import { bytes, sayReason, w, whole } from '../../words';
import { Button, Notice } from '../parts';
import { say } from '../shell';

const words = w.carry;
const done: Readonly<Record<Exclude<Way, 'text'>, string>> = {
  picker: words.saved,
  share: words.shared,
  download: words.downloaded,
};
const ways: Readonly<Record<Way, string>> = {
  picker: words.save,
  share: words.share,
  download: words.download,
  text: words.asText,
};

/** A file that is ready: what it still holds is listed before it can leave. */
export function Leaving({ prepared }: { readonly prepared: Prepared }) {
  const [told, setTold] = useState<{ readonly ok: boolean; readonly text: string } | undefined>();
  const [text, setText] = useState<string | undefined>();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const table = prepared.mime === 'text/csv';

  const leave = async (way: Way) => {
    const outcome = await saveFile(prepared, way);
    if (!outcome.ok) {
      setTold({ ok: outcome.reason.code === 'save cancelled', text: sayReason(outcome.reason) });
      return;
    }
    setText(outcome.text);
    if (way === 'text') return;
    setTold({ ok: true, text: done[way] });
    say(done[way]);
  };

  return (
    <div className="card stack">
      <h3 ref={heading} tabIndex={-1}>
        {table ? words.preparedTable : prepared.holds.length > 0 ? words.prepared : words.preparedNothing}
      </h3>
      <p className="strong file-name">
        {prepared.name} <span className="soft">({bytes(prepared.bytes.byteLength)})</span>
      </p>
      {table ? (
        <p>{words.csvWhat}</p>
      ) : (
        <>
          <ul className="holds">
            {prepared.holds.map(({ what, count }) => (
              <li key={what}>
                {words.holdKinds[what] ?? what} <span className="figures soft">{whole(count)}</span>
              </li>
            ))}
          </ul>
          <p>{words.photosStay(prepared.photosStay)}</p>
          {prepared.keptAtHome > 0 && <p>{words.keptAtHome(prepared.keptAtHome)}</p>}
        </>
      )}
      <p className="soft">{words.freeText}</p>
      <div className="row">
        {waysToSave(prepared).map((way, i) => (
          <Button key={way} kind={i === 0 ? 'main' : 'plain'} onClick={() => leave(way)}>
            {ways[way]}
          </Button>
        ))}
      </div>
      {told && <Notice kind={told.ok ? 'note' : 'problem'} title={told.text} />}
      {text !== undefined && <AsText text={text} />}
    </div>
  );
}

function AsText({ text }: { readonly text: string }) {
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
