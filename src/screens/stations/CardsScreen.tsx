import { type ReactNode, useState } from 'react';
import { type CardsOfWork, cardsToPrint, setSetting, settings } from '../../actions';
import { w, workName } from '../../words';
import { Button, Choice, Choices, EmptyState, LinkButton, Notice, Page, Reading } from '../parts';
import { Fold } from '../parts/Fold';
import '../parts/plainTable.css';
import { pathTo, useDesk, useQuestion } from '../shell';
import { Card, type CardProps } from './Card';
import { cardsOnSheet } from './cardSize';
import { SquareFrame } from './SquareFrame';
import './cards.css';

const words = w.stations.cards;

type What = 'stations' | 'squares' | 'frame';
const whats: readonly What[] = ['stations', 'squares', 'frame'];

/** Cards to put in the frame of a photo, of one work or of all, printed true to size. */
export function CardsScreen({ sculpture }: { readonly sculpture: string | undefined }) {
  const works = useQuestion(cardsToPrint(useDesk()));
  if (works === undefined) return <Reading />;
  const own = works.filter(({ sculpture: work }) => !sculpture || work.thing === sculpture);
  const back = sculpture
    ? { to: pathTo.stations(sculpture), label: w.stations.back }
    : { to: pathTo.sculptures(), label: words.toSculptures };
  if (own.length === 0)
    return (
      <Page title={words.title} back={back}>
        <EmptyState
          title={words.emptyTitle}
          actions={
            <LinkButton to={back.to} kind="main">
              {back.label}
            </LinkButton>
          }
        >
          <p>{words.empty}</p>
        </EmptyState>
      </Page>
    );
  return <Cards works={own} back={back} all={sculpture !== undefined && works.length > 1} />;
}

interface CardsProps {
  readonly works: readonly CardsOfWork[];
  readonly back: { readonly to: string; readonly label: string };
  /** Whether there are cards of other works to go on to. */
  readonly all: boolean;
}

function Cards({ works, back, all }: CardsProps) {
  const { paper } = useQuestion(settings);
  const [what, setWhat] = useState<readonly What[]>(['stations', 'squares']);
  const [leftOut, setLeftOut] = useState<readonly string[]>([]);
  const chosen = works.filter(({ sculpture }) => !leftOut.includes(sculpture.thing));
  const cards = chosen.flatMap((work) => cardsOf(work, what));
  const sheets = inSheets(cards);
  const pages = sheets.length + (what.includes('frame') ? 1 : 0);
  const [only] = works;
  return (
    <Page
      title={words.title}
      over={works.length === 1 && only ? workName(only.sculpture) : undefined}
      lead={words.lead}
      back={back}
      actions={
        pages > 0 && (
          <Button kind="main" size="round" onClick={() => window.print()}>
            {words.print}
          </Button>
        )
      }
    >
      <div className="stack not-printed">
        <Choice
          label={words.paper}
          tiles="narrow"
          options={(['A4', 'Letter'] as const).map((value) => ({ value, label: words.papers[value] }))}
          value={paper}
          onChange={(value) => setSetting('paper', value)}
        />
        <Choices
          label={words.what}
          options={whats.map((value) => ({
            value,
            label: words.whats[value],
            detail: value === 'frame' ? words.frameDetail : undefined,
          }))}
          values={what}
          onChange={setWhat}
        />
        {works.length > 1 && (
          <Fold show={words.works} hide={words.works}>
            <Choices
              label={words.works}
              labelUnseen
              options={works.map((work) => ({ value: work.sculpture.thing, label: workName(work.sculpture) }))}
              values={chosen.map(({ sculpture }) => sculpture.thing)}
              onChange={(kept) =>
                setLeftOut(works.map(({ sculpture }) => sculpture.thing).filter((thing) => !kept.includes(thing)))
              }
            />
          </Fold>
        )}
        {all && (
          <div className="row">
            <LinkButton kind="quiet" to={pathTo.cards()}>
              {words.ofAll}
            </LinkButton>
          </div>
        )}
        <Notice title={words.how}>
          <p>{words.howWhat}</p>
        </Notice>
        <Notice title={words.greyTitle}>
          <p>{words.grey}</p>
        </Notice>
        <p className="strong" role="status">
          {pages > 0 ? words.count(cards.length, pages) : words.none}
        </p>
      </div>
      <div className={`card-sheets on-${paper.toLowerCase()}`}>
        {sheets.map((sheet) => (
          <Sheet key={sheet.map(({ key }) => key).join()}>
            {sheet.map(({ key, card }) => (
              <Card key={key} {...card} />
            ))}
          </Sheet>
        ))}
        {what.includes('frame') && (
          <Sheet how={words.frameSheet}>
            <SquareFrame />
          </Sheet>
        )}
      </div>
    </Page>
  );
}

function Sheet({ how = words.sheet, children }: { readonly how?: string; readonly children: ReactNode }) {
  return (
    <div className="card-sheet">
      <p className="card-how only-printed">{how}</p>
      {children}
    </div>
  );
}

interface CardToPrint {
  readonly key: string;
  readonly card: CardProps;
}

const cardsOf = ({ sculpture, stations, sentinels, letters }: CardsOfWork, what: readonly What[]): CardToPrint[] => {
  const { number, title } = sculpture.body;
  const ofStations = stations.map(({ thing, body }) => ({
    key: thing,
    card: { number, title, mark: { station: body.letter }, aim: body.aim },
  }));
  const ofSquares = sentinels.map(({ thing, body }) => ({
    key: thing,
    card: { number, title, mark: { square: body.which, zone: letters.get(body.zone) ?? '' }, aim: body.find },
  }));
  return [...(what.includes('stations') ? ofStations : []), ...(what.includes('squares') ? ofSquares : [])];
};

const inSheets = (cards: readonly CardToPrint[]): CardToPrint[][] =>
  Array.from({ length: Math.ceil(cards.length / cardsOnSheet) }, (_, i) =>
    cards.slice(i * cardsOnSheet, (i + 1) * cardsOnSheet),
  );
