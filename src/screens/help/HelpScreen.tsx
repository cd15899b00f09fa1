import { Link } from 'wouter';
import { w } from '../../words';
import { EmptyState, LinkButton, Page, Section } from '../parts';
import { KeyList } from '../parts/KeyList';
import { cameFrom, pathTo } from '../shell';
import { groups, type HelpPage, helpPageOf } from './pages';
import { TourOffer } from './TourOffer';
import { termsOf } from './termsOf';
import './help.css';

const words = w.help;

/** Help on one screen; without a name, the list of all. */
export function HelpScreen({ name }: { readonly name: string | undefined }) {
  if (name === undefined) return <AllPages />;
  const page = helpPageOf(name);
  return page ? <OnePage name={name} page={page} /> : <NoPage />;
}

function OnePage({ name, page }: { readonly name: string; readonly page: HelpPage }) {
  const terms = termsOf[name] ?? [];
  return (
    <Page title={page.title} over={words.title} lead={page.what} back={{ to: cameFrom(), label: words.back }} narrow>
      <Section title={words.first}>
        <p>{page.first}</p>
      </Section>
      {terms.length > 0 && (
        <Section title={words.words}>
          <dl className="help-terms">
            {terms.map((term) => {
              const [word, meaning] = w.helpTerms[term];
              return (
                <div key={term}>
                  <dt>{word}</dt>
                  <dd>{meaning}</dd>
                </div>
              );
            })}
          </dl>
        </Section>
      )}
      <Section title={words.from}>
        <p>{page.from}</p>
      </Section>
      {withKeys.has(name) && <Keys />}
      <div className="row">
        <TourOffer />
        <LinkButton to={pathTo.help()}>{words.all}</LinkButton>
        <LinkButton to={pathTo.method()}>{words.toMethod}</LinkButton>
      </div>
    </Page>
  );
}

/** Pages that tell the keys too: where a round is made, and where one looks for such things. */
const withKeys: ReadonlySet<string> = new Set(['round-zone', 'round', 'round-end', 'settings']);

function Keys() {
  return (
    <Section title={w.field.keys.title} lead={w.field.keys.what}>
      <KeyList />
    </Section>
  );
}

function AllPages() {
  return (
    <Page title={words.title} lead={words.lead} back={{ to: cameFrom(), label: words.back }} narrow>
      <div className="row">
        <TourOffer />
      </div>
      {groups.map(({ title, pages }) => (
        <Section key={title} title={title}>
          <ul className="bare help-pages">
            {Object.entries(pages).map(([name, page]) => (
              <li key={name}>
                <Link href={pathTo.help(name)} className="help-page">
                  {page.title}
                </Link>
              </li>
            ))}
          </ul>
        </Section>
      ))}
      <Keys />
    </Page>
  );
}

function NoPage() {
  return (
    <EmptyState
      page
      title={words.lost}
      actions={
        <LinkButton to={pathTo.help()} kind="main">
          {words.all}
        </LinkButton>
      }
    >
      <p>{words.lostWhat}</p>
    </EmptyState>
  );
}
