import type { help as english } from '../en/help';
import type { Same } from '../tongue';

export const help: Same<typeof english> = {
  title: 'Hilfe',
  lead: 'Eine Seite für jede Ansicht. Das Fragezeichen oben führt zur Seite der Ansicht, in der Sie sind.',
  all: 'Alle Hilfeseiten',
  back: 'Zurück zur Ansicht',
  first: 'Womit Sie beginnen',
  words: 'Was die Wörter bedeuten',
  from: 'Woher es kommt',
  toMethod: 'Wie alles berechnet wird',
  lost: 'Diese Hilfeseite gibt es nicht',
  lostWhat: 'Die Adresse ist vielleicht veraltet. Alle Seiten stehen unter Hilfe.',
  groups: {
    works: 'Werke und dieses Gerät',
    round: 'Draußen, und was sich verändert hat',
    photos: 'Fotos',
    carry: 'Mitgeben und Hereinholen',
    plan: 'Das Jahr und die Pflege',
    money: 'Entscheidungen und Geld',
    campaign: 'Behandlung durch andere',
    papers: 'Papiere',
  },
};
