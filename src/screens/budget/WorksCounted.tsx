import { kindOf, treatmentOf, type WorkEffect, workEffectOf, workEffects } from '../../engine/trade';
import { factSaid, inQuotes, list, midSentence, share, w } from '../../words';

const words = w.budget;

/** What each kind of work is counted to take away, as far as this page knows, and where that comes from. */
export function WorksCounted({ types }: { readonly types: readonly string[] }) {
  const effects = [...new Set(types)].flatMap((type) => workEffectOf(type) ?? []);
  return (
    <>
      <p className="strong">{words.counted}</p>
      <ul className="reasons">
        {effects.map((effect) => (
          <li key={effect.type}>
            <span className="strong">{treatmentOf(effect.type)?.name ?? effect.type}: </span>
            {said(effect)}
          </li>
        ))}
      </ul>
      <p className="soft small">{workEffects[0] && factSaid(workEffects[0].source.text)}</p>
    </>
  );
}

const said = ({ groups, kinds, upTo, with: other }: WorkEffect): string =>
  [
    list([
      ...groups.map((group) => midSentence(w.round.group[group])),
      ...kinds.map((kind) => inQuotes(kindOf(kind)?.name ?? kind)),
    ]),
    upTo === undefined ? undefined : words.countedUpTo(share(upTo)),
    other === undefined ? undefined : words.countedWith(midSentence(treatmentOf(other)?.name ?? other)),
  ]
    .filter((part) => part !== undefined)
    .join('; ');
