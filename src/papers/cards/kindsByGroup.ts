import { type Group, kinds } from '../../engine/trade';
import { midSentence, w } from '../../words';
import { h, type PaperPiece } from '../layout';

/** All kinds by their group, to write from. */
export const kindsByGroup = (): PaperPiece[] =>
  (Object.keys(w.round.group) as Group[]).map((group) =>
    h(
      'p',
      { class: 'small card-kinds' },
      h('strong', {}, `${w.round.group[group]}: `),
      kinds
        .filter((kind) => kind.group === group)
        .map(({ name }) => midSentence(name))
        .join(', '),
    ),
  );
