import { useState } from 'react';
import { paperSource } from '../../actions';
import type { PaperSource } from '../../engine/reckoning';
import { paperSorts, thingsOfAll } from '../../papers';
import type { PaperAbout, PaperSort } from '../../papers/layout';
import { w } from '../../words';
import { EmptyState, LinkButton, Page, Reading, Section } from '../parts';
import { Fold } from '../parts/Fold';
import { LinkLines } from '../parts/LinkLines';
import { Select } from '../parts/Select';
import { pathTo, useDesk, useQuestion } from '../shell';
import { GivenOut } from './GivenOut';
import { thingOf, yearOf } from './ofPaper';
import './papers.css';

const words = w.paperHub;
const abouts: readonly PaperAbout[] = ['work', 'campaign', 'fund', 'year', 'collection'];

interface PapersScreenProps {
  /** What the papers first shown are about: a thing name. */
  readonly of?: string | undefined;
}

/** Every paper there is, for whom it is, and what it can be made of; then which left, and where things are kept. */
export function PapersScreen({ of }: PapersScreenProps) {
  const asked = useQuestion(paperSource(useDesk()));
  const back = of?.startsWith('sculpture/') ? { to: pathTo.sculpture(of), label: words.toWork } : undefined;
  return (
    <Page title={words.title} lead={words.lead} {...(back ? { back } : {})}>
      {asked ? <Papers source={asked.source} of={of} /> : <Reading />}
    </Page>
  );
}

function Papers({ source, of }: { readonly source: PaperSource; readonly of: string | undefined }) {
  const parts = abouts.flatMap((about) => {
    const sorts = paperSorts.filter((sort) => sort.about === about);
    return sorts.length > 0 ? [{ about, sorts }] : [];
  });
  return (
    <>
      {source.works.length === 0 && (
        <EmptyState
          title={words.empty}
          actions={
            <LinkButton to={pathTo.sculptures()} kind="main">
              {words.toSculptures}
            </LinkButton>
          }
        >
          <p>{words.emptyWhat}</p>
        </EmptyState>
      )}
      {parts.map(({ about, sorts }) => (
        <Part key={about} about={about} sorts={sorts} source={source} of={of} />
      ))}
      <Section title={words.others.title} lead={words.others.lead}>
        <LinkLines
          rows={[
            { to: pathTo.packing(), name: w.year.packing.title, what: words.others.packing },
            { to: pathTo.briefing(), name: w.year.briefing.title, what: words.others.briefing },
            { to: pathTo.cards(), name: w.stations.cards.title, what: words.others.cards },
          ]}
        />
      </Section>
      <Section title={words.given.title} lead={words.given.lead}>
        <GivenOut given={thingsOfAll(source, 'paperIssued')} />
      </Section>
      <LinkLines rows={[{ to: pathTo.kept(), name: words.kept.link, what: words.kept.what }]} />
    </>
  );
}

interface PartProps {
  readonly about: PaperAbout;
  readonly sorts: readonly PaperSort[];
  readonly source: PaperSource;
  readonly of: string | undefined;
}

/** The papers of one work, one campaign, one year: what they are of is chosen once for all of them. */
function Part({ about, sorts, source, of }: PartProps) {
  const offered = sorts.map((sort) => ({ sort, choices: sort.choices(source) }));
  // A paper of a year of a work is offered with the work, not as one more work to choose.
  const all = new Map(
    offered.flatMap(({ choices }) =>
      choices.flatMap((one) => (yearOf(one.about) ? [] : [[one.about, one.label] as const])),
    ),
  );
  const [chosen, setChosen] = useState(of && all.has(of) ? of : undefined);
  const now = chosen ?? [...all.keys()][0];
  const lines = offered.map(({ sort, choices }) => {
    const mine = choices.filter(({ about: of }) => thingOf(of) === now);
    const what = `${words.forReader(sort.reader)} · ${words.pages(...sort.pages)}`;
    const name = (of: string) => [sort.title, yearOf(of)].filter(Boolean).join(' ');
    return { sort, rows: mine.map(({ about: of }) => ({ to: pathTo.paper(sort.id, of), name: name(of), what })) };
  });
  const rows = lines.flatMap(({ rows: [latest] }) => latest ?? []);
  const older = lines.flatMap(({ sort, rows: [, ...rest] }) => (rest.length > 0 ? [{ sort, rest }] : []));
  const lacking = offered.filter(({ choices }) => !choices.some(({ about: of }) => thingOf(of) === now));
  return (
    <Section title={words.about[about]}>
      {all.size > 1 && (
        <Select
          label={words.ofWhich[about]}
          value={now ?? ''}
          onChange={setChosen}
          options={[...all].map(([value, label]) => ({ value, label }))}
        />
      )}
      {rows.length > 0 && <LinkLines rows={rows} />}
      {older.map(({ sort, rest }) => (
        <Fold key={`${now} ${sort.id}`} show={words.olderYears(sort.title)} hide={words.olderYearsHide(sort.title)}>
          <LinkLines rows={rest} />
        </Fold>
      ))}
      {lacking.map(({ sort }) => (
        <p key={sort.id} className="soft">
          {sort.title}: {words.none}
        </p>
      ))}
    </Section>
  );
}
