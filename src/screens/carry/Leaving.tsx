import { useEffect, useRef, useState } from 'react';
import { type BagPrepared, type Prepared, saveFile, type Way, waysToSave } from '../../actions';
import { bytes, sayReason, w } from '../../words';
import { Button, Notice } from '../parts';
import { say, useDesk } from '../shell';
import { AsText } from './AsText';
import { StillHolds } from './StillHolds';

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
export function Leaving({
  prepared,
  onDownload,
}: {
  readonly prepared: Prepared | BagPrepared;
  /** The browser takes it from here, and does not say for how long. */
  readonly onDownload: () => void;
}) {
  const desk = useDesk();
  const [told, setTold] = useState<{ readonly ok: boolean; readonly text: string } | undefined>();
  const [text, setText] = useState<string | undefined>();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const isBag = 'file' in prepared;

  const leave = async (way: Way) => {
    if (way === 'download') onDownload();
    const outcome = await saveFile(desk, prepared, way);
    if (!outcome.ok) {
      setTold({ ok: outcome.reason.code === 'save cancelled', text: sayReason(outcome.reason) });
      return;
    }
    setText(outcome.text);
    if (way === 'text') return;
    setTold({ ok: true, text: done[way] });
    say(done[way]);
  };

  const title = () => {
    if (isBag) return prepared.left ? words.bagLeft : words.preparedBag;
    if (prepared.mime === 'text/csv') return words.preparedTable;
    return prepared.holds.length > 0 ? words.prepared : words.preparedNothing;
  };

  return (
    <div className="card stack">
      <h3 ref={heading} tabIndex={-1}>
        {title()}
      </h3>
      <p className="strong file-name">
        {prepared.name} <span className="soft">({bytes(isBag ? prepared.file.size : prepared.bytes.byteLength)})</span>
      </p>
      <StillHolds prepared={prepared} />
      <p className="soft">{words.freeText}</p>
      {!(isBag && prepared.left) && (
        <div className="row">
          {waysToSave(prepared).map((way, i) => (
            <Button key={way} kind={i === 0 ? 'main' : 'plain'} onClick={() => leave(way)}>
              {ways[way]}
            </Button>
          ))}
        </div>
      )}
      {told && <Notice kind={told.ok ? 'note' : 'problem'} title={told.text} />}
      {text !== undefined && <AsText text={text} />}
    </div>
  );
}
