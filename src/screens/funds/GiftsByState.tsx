import { chanceOf, type FundFigures, type GiftState, type Overfull } from '../../engine/fund';
import type { Money } from '../../engine/money';
import type { Thing } from '../../engine/record';
import { date, inQuotes, list, money, roundMoney, share, w } from '../../words';
import { Notice, Section } from '../parts';
import { Fold } from '../parts/Fold';
import { useDesk } from '../shell';

const words = w.funds;
const columns = [
  ['in hand', 'inHand'],
  ['pledged', 'pledged'],
  ['hoped', 'hoped'],
] as const;

interface GiftsByStateProps {
  readonly figures: FundFigures;
  /** Missing where this tab may not write. */
  readonly onGift: ((gift: Thing<'gift'>) => void) | undefined;
}

/** In hand, pledged, hoped: three columns with three sums. The planning guess stands apart, in words. */
export function GiftsByState({ figures, onGift }: GiftsByStateProps) {
  const { gifts, pipeline, cover, fund } = figures;
  const of = (states: readonly GiftState[]) => gifts.filter(({ body }) => states.includes(body.state));
  const rows = (states: readonly GiftState[]) => <GiftRows rows={of(states)} figures={figures} onGift={onGift} />;
  const before = of(['spent', 'lost']);
  return (
    <Section title={words.pipeline}>
      {fund.body.lines.length > 0 &&
        cover.overfull.map((over) => <Tied key={over.gifts.join()} over={over} figures={figures} />)}
      <div className="fund-columns">
        {columns.map(([state, key]) => (
          <section key={state} className="card stack tight" aria-label={words.state[state]}>
            <h3>{words.state[state]}</h3>
            <p className="fund-figure figures">{money(pipeline[key])}</p>
            <p className="soft small">{words.stateWhat[state]}</p>
            {rows([state])}
          </section>
        ))}
      </div>
      {pipeline.inKind.minor > 0 && <p>{words.inKind(money(pipeline.inKind))}</p>}
      <p>
        <span className="strong">{words.guess}: </span>
        {words.guessWhat(money(pipeline.guess))}
      </p>
      {before.length > 0 && (
        <Fold show={words.before} hide={words.before}>
          {rows(['spent', 'lost'])}
        </Fold>
      )}
    </Section>
  );
}

/** What more is tied to than it costs, or enough and to spare. */
function Tied({ over, figures }: { readonly over: Overfull; readonly figures: FundFigures }) {
  const { fund, gifts, currency } = figures;
  const amount = roundMoney({ minor: over.over, currency });
  const givers = list([...new Set(over.gifts.flatMap((place) => gifts[place]?.body.who ?? []))]);
  const names = fund.body.lines.filter(({ id }) => over.lines.includes(id)).map(({ name }) => inQuotes(name));
  if (over.lines.length === 0) return <Notice kind="caution" title={words.untied(givers)} />;
  if (over.all) return <Notice title={words.enough(amount)} />;
  return (
    <Notice kind="caution" title={words.overfull(list(names))}>
      <p>{words.overfullWhat(amount, givers)}</p>
    </Notice>
  );
}

interface GiftRowsProps extends GiftsByStateProps {
  readonly rows: readonly Thing<'gift'>[];
}

function GiftRows({ rows, figures, onGift }: GiftRowsProps) {
  if (rows.length === 0) return <p className="soft">{words.none}</p>;
  return (
    <ul className="bare lines">
      {rows.map((gift) => (
        <li key={gift.thing}>
          {onGift ? (
            <button type="button" className="line" onClick={() => onGift(gift)}>
              <GiftText gift={gift} figures={figures} />
            </button>
          ) : (
            <div className="line">
              <GiftText gift={gift} figures={figures} />
            </div>
          )}
        </li>
      ))}
    </ul>
  );
}

const expectedText = (day: string | undefined, today: string): string =>
  day === undefined ? words.gift.noDay : day < today ? words.gift.late(date(day)) : words.gift.expected(date(day));

function GiftText({ gift, figures }: { readonly gift: Thing<'gift'>; readonly figures: FundFigures }) {
  const { who, amount, state, received, expected, chance, only, inKind } = gift.body;
  const { cover, gifts, fund, currency } = figures;
  const today = useDesk().today();
  const unused: Money = { minor: amount.minor - (cover.used[gifts.indexOf(gift)] ?? 0), currency };
  const toCome = state === 'pledged' || state === 'hoped';
  const lines = fund.body.lines.filter(({ id }) => only?.includes(id)).map(({ name }) => name);
  const facts = [
    received ? words.gift.received(date(received)) : undefined,
    toCome ? expectedText(expected, today) : undefined,
    toCome && (state === 'hoped' || chance !== undefined) ? words.gift.chance(share(chanceOf(gift.body))) : undefined,
    lines.length > 0 ? words.gift.only(list(lines)) : undefined,
    inKind ? words.gift.inKind : undefined,
    state !== 'lost' && unused.minor > 0 && fund.body.lines.length > 0
      ? words.gift.unused(roundMoney(unused))
      : undefined,
  ].filter((fact) => fact !== undefined);
  return (
    <span className="grow">
      <span>
        <span className="strong figures">{money(amount)}</span> {who}
      </span>
      <span className="line-detail soft">{facts.join('; ')}</span>
    </span>
  );
}
