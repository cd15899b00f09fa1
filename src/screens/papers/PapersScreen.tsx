import { paperSource } from '../../actions';
import type { PaperSource } from '../../engine/reckoning';
import { paperSorts } from '../../papers';
import type { PaperAbout, PaperSort } from '../../papers/layout';
import { w } from '../../words';
import { LinkButton, Page, Reading, Section } from '../parts';
import { Fold } from '../parts/Fold';
import { pathTo, useDesk, useQuestion } from '../shell';
import './papers.css';

const words = w.paperHub;
const abouts: readonly PaperAbout[] = ['work', 'year', 'campaign', 'fund', 'collection'];

/** Every paper there is, for whom it is, and what it can be made of. */
export function PapersScreen() {
  const asked = useQuestion(paperSource(useDesk()));
  return (
    <Page title={words.title} lead={words.lead}>
      {asked ? (
        abouts.map((about) => {
          const sorts = paperSorts.filter((sort) => sort.about === about);
          return (
            sorts.length > 0 && (
              <Section key={about} title={words.about[about]}>
                <ul className="paper-sorts">
                  {sorts.map((sort) => (
                    <Sort key={sort.id} sort={sort} source={asked.source} />
                  ))}
                </ul>
              </Section>
            )
          );
        })
      ) : (
        <Reading />
      )}
    </Page>
  );
}

function Sort({ sort, source }: { readonly sort: PaperSort; readonly source: PaperSource }) {
  const choices = sort.choices(source);
  const links = choices.map(({ about, label }) => (
    <LinkButton key={about} to={pathTo.paper(sort.id, about)} label={words.open(sort.title, label)}>
      {label}
    </LinkButton>
  ));
  return (
    <li className="paper-sort">
      <h3>{sort.title}</h3>
      <p className="soft">{words.forReader(sort.reader)}</p>
      {links.length === 0 && <p className="soft">{words.none}</p>}
      {links.length > 0 && links.length <= 3 && <div className="row">{links}</div>}
      {links.length > 3 && (
        <Fold show={words.choose} hide={words.choose}>
          <div className="row">{links}</div>
        </Fold>
      )}
    </li>
  );
}
