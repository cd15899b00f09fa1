import { type Group, kinds } from '../../engine/trade';
import { w } from '../../words';
import { h, type PaperPiece } from '../layout';

/** All kinds by their group, to write from. */
export const kindsByGroup = (): PaperPiece =>
  h(
    'p',
    { class: 'small card-kinds' },
    ...(Object.keys(w.round.group) as Group[]).flatMap((group): PaperPiece[] => [
      h('strong', {}, `${w.round.group[group]}: `),
      `${kinds
        .filter((kind) => kind.group === group)
        .map(({ name }) => name)
        .join(', ')}. `,
    ]),
  );
