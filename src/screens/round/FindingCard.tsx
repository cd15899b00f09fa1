import { useState } from 'react';
import type { DraftFinding } from '../../engine/record';
import { kindOf, originOf } from '../../engine/trade';
import { midSentence, w } from '../../words';
import { Button } from '../parts';
import { PhotoTake } from '../parts/PhotoTake';
import { BetweenSteps } from './BetweenSteps';
import { NoteSheet } from './NoteSheet';
import { usePad } from './PadContext';
import { StainFrom } from './StainFrom';
import { kindName, saidExtent } from './said';

const words = w.round;

/** A judged finding opened: each answer can be given anew, and photo and note belong to it. */
export function FindingCard({ finding }: { readonly finding: DraftFinding }) {
  const { touch, expectPhoto, keepPhoto } = usePad();
  const [noting, setNoting] = useState(false);
  const { key } = finding;
  const kind = kindOf(finding.kind);
  const ask = (question: 'extent' | 'severity' | 'activity' | 'origin') => () =>
    touch({ do: 'open', key, ask: question });
  const extent = saidExtent(finding);
  const extentName =
    finding.measure === 'area'
      ? words.card.coverage(extent)
      : finding.measure === 'count'
        ? words.card.count(extent)
        : words.card.there;
  return (
    <div className="finding-card">
      {!finding.gone && (
        <div className="finding-parts">
          <Button size="round" onClick={ask('extent')}>
            {extentName}
          </Button>
          {finding.severity && (
            <Button size="round" onClick={ask('severity')}>
              {words.card.severity(words.said.severity[finding.severity])}
            </Button>
          )}
          {finding.activity && (
            <Button size="round" onClick={ask('activity')}>
              {words.card.activity(
                finding.activity === 'unclear' && !finding.earlier
                  ? `${words.said.activity.unclear}, ${words.card.assumed}`
                  : words.said.activity[finding.activity],
              )}
            </Button>
          )}
          {!finding.earlier && finding.origin && kind?.asksOrigin && (
            <Button size="round" onClick={ask('origin')}>
              {words.card.origin(midSentence(originOf(finding.origin).name))}
            </Button>
          )}
        </div>
      )}
      {finding.coverage && !finding.gone && <BetweenSteps coverage={finding.coverage} />}
      {finding.origin === 'stain' && !finding.gone && <StainFrom chosen={finding.stainFrom} />}
      {kind?.asks && !finding.gone && <p className="soft">{words.card.asks(kind.asks)}</p>}
      {kind?.caution && !finding.gone && <p className="soft">{kind.caution}</p>}
      <div className="finding-parts">
        <PhotoTake
          what={midSentence(kindName(finding.kind))}
          expect={() => expectPhoto(key)}
          keep={(file) => keepPhoto(key, file)}
        />
        <Button size="round" onClick={() => setNoting(true)}>
          {words.card.note}
        </Button>
        <Button size="round" onClick={() => touch({ do: 'remove' })}>
          {words.card.takeBack}
        </Button>
      </div>
      {finding.note && <p className="finding-note">{finding.note}</p>}
      {noting && (
        <NoteSheet
          of={key}
          label={words.card.noteLabel}
          note={finding.note ?? ''}
          onClose={() => setNoting(false)}
          onKeep={(text) => {
            setNoting(false);
            touch({ do: 'note', of: key, text });
          }}
        />
      )}
    </div>
  );
}
