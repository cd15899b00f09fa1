import { useMemo, useState } from 'react';
import { paperSource, setSetting, settings, surveyors } from '../../actions';
import type { PaperSource } from '../../engine/reckoning';
import { paperSortOf, thingsOfAll } from '../../papers';
import { type Paper, type PaperIssue, type PaperSort, pageCss, paperTree } from '../../papers/layout';
import '../../papers/layout/paper.css';
import { sayReason, w } from '../../words';
import { Button, Choice, EmptyState, Field, LinkButton, Notice, Page, Reading, Section } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { GivenOut } from './GivenOut';
import { GivenOutSheet } from './GivenOutSheet';
import { OwnWordsFields } from './OwnWordsFields';
import { aboutOf, type OfPaper, ofPaper, sculptureOf, thingOf } from './ofPaper';
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
  const asked = useQuestion(paperSource(desk, about.startsWith('sculpture/') ? thingOf(about) : undefined));
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
  return <OnePaper sort={sort} about={about} paper={paper} source={asked.source} workingOut={asked.workingOut} />;
}

interface OnePaperProps {
  readonly sort: PaperSort;
  readonly about: string;
  readonly paper: Paper;
  readonly source: PaperSource;
  readonly workingOut: number;
}

function OnePaper({ sort, about, paper, source, workingOut }: OnePaperProps) {
  const desk = useDesk();
  const { paper: size, surveyor } = useQuestion(settings);
  const people = useQuestion(surveyors(desk));
  const atWork = people?.find(({ thing }) => thing === surveyor);
  const [typed, setTyped] = useState<string>();
  const [status, setStatus] = useState<PaperIssue['status']>('draft');
  const [problem, setProblem] = useState<string>();
  const [giving, setGiving] = useState(false);
  const author = typed ?? atWork?.name ?? atWork?.role ?? '';
  const issue: PaperIssue = { author, status, day: desk.today(), size, invented: desk.invented };
  usePageCss(pageCss(paper, issue));
  const sculpture = sculptureOf(source, about);
  const of = useMemo((): OfPaper => ({ sort, about, sculpture }), [sort, about, sculpture]);
  const given = thingsOfAll(source, 'paperIssued').filter(
    ({ body }) => body.paper === sort.id && aboutOf(body) === about,
  );
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
            {sort.withBag && sculpture && <LinkButton to={pathTo.carryWork(sculpture)}>{words.bag.do}</LinkButton>}
            <SavePaper sort={sort} paper={paper} issue={issue} onRefused={(reason) => setProblem(sayReason(reason))} />
            {sort.id === 'conservator-page' && (
              <LinkButton to={pathTo.conservatorPage(about)}>{w.paperConservator.form.link}</LinkButton>
            )}
          </div>
        </Section>
        <OwnWordsFields own={paper.own} of={of} author={author} />
        <Section title={words.given.title}>
          <GivenOut given={given} state={paper.state} />
          <div className="row">
            <Button onClick={() => setGiving(true)}>{words.given.note}</Button>
          </div>
        </Section>
        {giving && (
          <GivenOutSheet
            copy={{
              ...ofPaper(of),
              title: [paper.title, paper.over].filter(Boolean).join(': ').slice(0, 300),
              date: desk.today(),
              by: author,
              status,
              state: paper.state,
            }}
            onClose={() => setGiving(false)}
          />
        )}
        <h2>{words.preview}</h2>
      </div>
      <div className="paper-sheet">{toReact(paperTree(paper, issue))}</div>
    </Page>
  );
}
