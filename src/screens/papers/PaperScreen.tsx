import { useState } from 'react';
import { paperSource, setSetting, settings, surveyors } from '../../actions';
import { paperSortOf } from '../../papers';
import { type Paper, type PaperIssue, type PaperSort, pageCss, paperTree } from '../../papers/layout';
import '../../papers/layout/paper.css';
import { sayReason, w } from '../../words';
import { Button, Choice, EmptyState, Field, LinkButton, Notice, Page, Reading, Section } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import './papers.css';
import { SavePaper } from './SavePaper';
import { toReact } from './toReact';
import { usePageCss } from './usePageCss';

const words = w.paperHub;

interface PaperScreenProps {
  readonly sort: string;
  /** Thing name or year, as the paper knows it. */
  readonly about: string;
}

/** One paper as it will be read, and what must be said before it leaves. */
export function PaperScreen({ sort: id, about }: PaperScreenProps) {
  const desk = useDesk();
  const sort = paperSortOf(id);
  const asked = useQuestion(paperSource(desk, about.startsWith('sculpture/') ? about : undefined));
  if (asked === undefined) return <Reading />;
  const paper = asked && sort?.make(asked.source, about);
  if (!sort || !paper)
    return (
      <Page title={words.title} back={{ to: pathTo.papers(), label: words.back }}>
        <EmptyState
          title={words.notThere}
          actions={
            <LinkButton to={pathTo.papers()} kind="main">
              {words.back}
            </LinkButton>
          }
        />
      </Page>
    );
  return <OnePaper sort={sort} about={about} paper={paper} workingOut={asked.workingOut} />;
}

interface OnePaperProps extends PaperScreenProps2 {
  readonly paper: Paper;
  readonly workingOut: number;
}
interface PaperScreenProps2 {
  readonly sort: PaperSort;
  readonly about: string;
}

function OnePaper({ sort, paper, workingOut }: OnePaperProps) {
  const desk = useDesk();
  const { paper: size, surveyor } = useQuestion(settings);
  const people = useQuestion(surveyors(desk));
  const atWork = people?.find(({ thing }) => thing === surveyor);
  const [typed, setTyped] = useState<string>();
  const [status, setStatus] = useState<PaperIssue['status']>('draft');
  const [problem, setProblem] = useState<string>();
  const author = typed ?? atWork?.name ?? atWork?.role ?? '';
  const issue: PaperIssue = { author, status, day: desk.today(), size, invented: desk.invented };
  usePageCss(pageCss(paper, issue));
  return (
    <Page title={paper.title} over={paper.over} back={{ to: pathTo.papers(), label: words.back }}>
      <div className="not-printed stack">
        {workingOut > 0 && <Notice title={words.workingOut} />}
        {paper.lacks.length > 0 && (
          <Notice kind="caution" title={words.lacks}>
            <ul>
              {paper.lacks.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
            <p>{words.lacksWhat}</p>
          </Notice>
        )}
        <Section title={words.settings}>
          <Field label={words.author} hint={words.authorHint} value={author} onChange={setTyped} maxLength={200} />
          <Choice
            label={words.status}
            tiles="narrow"
            options={(['draft', 'final'] as const).map((value) => ({ value, label: words.statuses[value] }))}
            value={status}
            onChange={setStatus}
          />
          <Choice
            label={words.size}
            tiles="narrow"
            options={(['A4', 'Letter'] as const).map((value) => ({
              value,
              label: w.stations.cards.papers[value],
            }))}
            value={size}
            onChange={(value) => setSetting('paper', value)}
          />
          {problem && <Notice kind="problem" title={problem} />}
          <div className="row">
            <Button kind="main" onClick={() => window.print()}>
              {words.print}
            </Button>
            <SavePaper sort={sort} paper={paper} issue={issue} onRefused={(reason) => setProblem(sayReason(reason))} />
          </div>
        </Section>
        <h2>{words.preview}</h2>
      </div>
      <div className="paper-sheet">{toReact(paperTree(paper, issue))}</div>
    </Page>
  );
}
