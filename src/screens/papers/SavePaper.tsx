import { useState } from 'react';
import { pictureData, preparePaper, saveFile, waysToSave } from '../../actions';
import type { Reason } from '../../engine/record';
import { type Paper, type PaperIssue, type PaperSort, paperHtml, picturesIn } from '../../papers/layout';
import { w } from '../../words';
import { Button } from '../parts';
import { say, useDesk } from '../shell';

const words = w.paperHub;

interface SavePaperProps {
  readonly sort: PaperSort;
  readonly paper: Paper;
  readonly issue: PaperIssue;
  readonly onRefused: (reason: Reason) => void;
}

/** The paper as one file with its pictures in it. */
export function SavePaper({ sort, paper, issue, onRefused }: SavePaperProps) {
  const desk = useDesk();
  const [busy, setBusy] = useState(false);
  const save = async () => {
    setBusy(true);
    const addresses = new Map<string, string>();
    for (const sha256 of picturesIn(paper.body)) {
      const address = await pictureData(desk, sha256);
      if (address) addresses.set(sha256, address);
    }
    const html = paperHtml(paper, issue, (sha256) => addresses.get(sha256));
    const prepared = preparePaper(desk, { name: `${paper.number}-${sort.id}`, html });
    const outcome = await saveFile(desk, prepared, waysToSave(prepared)[0] ?? 'download');
    setBusy(false);
    if (outcome.ok) say(words.saved);
    else onRefused(outcome.reason);
  };
  return (
    <Button onClick={save} disabled={busy}>
      {busy ? words.pictures : words.save}
    </Button>
  );
}
