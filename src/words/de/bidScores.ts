import type { bidScores as english } from '../en/bidScores';
import type { Same } from '../tongue';

export const bidScores: Same<typeof english> = {
  title: 'Wertung',
  lead: 'Jede Person wertet für sich. Die Summe zeigt, wie einig sie sind; entscheiden muss ein Mensch, nicht die Summe.',
  weights: 'Gewichte, von 100',
  usual:
    'Die üblichen Gewichte: übliche Praxis, keine Quelle. Ändern Sie sie, bevor Angebote vorliegen, und sagen Sie sie den Bietern.',
  set: (day: string) => `Festgelegt am ${day}`,
  columns: { what: 'Was', weight: 'Gewicht', asks: 'Worauf gesehen wird', total: 'Summe' },
  change: 'Gewichte und Wertende',
  changedAfter: (day: string, bids: number, sheets: number) =>
    `Geändert am ${day}, als ${bids === 1 ? '1 Angebot vorlag' : `${bids} Angebote vorlagen`} und ${sheets === 1 ? '1 Blatt abgegeben war' : `${sheets} Blätter abgegeben waren`}`,
  before: (weights: string, why: string) => `Vorher: ${weights}. Grund: ${why}`,
  weighed: (name: string, weight: string) => `${name} ${weight}`,
  scorers: 'Wertende',
  noScorers:
    'Noch ist niemand genannt, der wertet. Mindestens zwei: Bei nur einem Blatt weiß niemand, wie weit ein anderes abwiche.',
  states: {
    none: 'noch keine Noten',
    begun: (missing: number) =>
      missing === 0
        ? 'alle Noten gegeben, nicht abgegeben'
        : `${missing} ${missing === 1 ? 'Note' : 'Noten'} noch zu geben`,
    lacks: (missing: number) =>
      `abgegeben; ${missing} ${missing === 1 ? 'Note' : 'Noten'} für seither gekommene Angebote nachzutragen`,
    whole: (day: string) => `abgegeben am ${day}`,
  },
  mark: (who: string) => `Werten als ${who}`,
  markShort: 'Werten',
  closed:
    'Was andere gegeben haben, wird erst gezeigt, wenn alle Blätter abgegeben sind. Dieses Tablet hat keine Schlösser: Es zeigt sie nicht, und eine mitgegebene Datei enthält sie.',
  openEarly: 'Blätter jetzt öffnen',
  openedBy: (who: string, day: string, why: string) =>
    `Am ${day} geöffnet von ${who}, bevor alle abgegeben waren${why === '' ? '.' : `: ${why}`}`,
  caption: (currency: string) =>
    `Punkte jedes Angebots, in ${currency}: Mittel der Wertenden, niedrigster bis höchster Wert`,
  totalOf: (who: string) => `Summe nach ${who}`,
  place: 'Platz',
  places: (best: number, worst: number) => (best === worst ? `${best}` : `${best} bis ${worst}`),
  noPoints: 'keine Punkte',
  noBids:
    'Noch kein Angebot zu werten. Legen Sie Gewichte und Wertende jetzt fest: Vor den Angeboten ist die Zeit dafür.',
  notAlike: 'Warum ein Platz eine Spanne ist',
  alikeOf: (who: string, what: string) => `${who}: ${what}`,
  how: (apart: string, least: string) =>
    `Noten 0 bis 10, mal Gewicht. Zwei Angebote gelten als unterscheidbar, wenn mindestens ${least} Wertende alle dasselbe voransetzen und die Summen mehr als ${apart} Punkte auseinanderliegen: eine Note beim schwersten Kriterium. Eigene Wahl, keine Quelle.`,
  howPrice: (source: string) =>
    `Punkte des Preises: niedrigster Preis geteilt durch diesen Preis, mal Gewicht. ${source}`,
  bySheet: 'Von Hand auszufüllen: 0 bis 10 für jedes Angebot',
  sheetFoot: 'Wertende Person, Datum, Unterschrift',

  decided: (who: string, day: string) => (day === '' ? `Entschieden: ${who}` : `Entschieden: ${who}, ${day}`),
  nobodyDecided: 'Es ist niemand genannt, der entschieden hat.',
  decide: 'Wer entschieden hat, und warum',

  weightsSheet: {
    title: 'Gewichte und Wertende',
    weight: (name: string) => `Gewicht: ${name}`,
    sum: (sum: string) => `Zusammen ${sum}. Sie müssen 100 ergeben; lassen Sie leer, was nicht zählt.`,
    weightWrong: 'Geben Sie eine Zahl von 0 bis 100 ein, oder lassen Sie das Feld leer.',
    ownName: 'Ein eigenes',
    own: (n: number) => `Eigenes Kriterium ${n}`,
    ownWeight: (n: number) => `Sein Gewicht (eigenes Kriterium ${n})`,
    addOwn: 'Eigenes Kriterium hinzufügen',
    scorers: 'Wer wertet',
    scorersHint: 'Jede Person hat ein eigenes Blatt.',
    why: 'Warum ändern sich die Gewichte?',
    whyHint: 'Ein Angebot liegt schon vor. Die Änderung wird mit Tag und diesem Grund aufbewahrt.',
    whyMissing: 'Geben Sie den Grund an.',
    save: 'Speichern',
    saved: 'Gewichte und Wertende sind gespeichert.',
  },
  markSheet: {
    title: (who: string) => `Noten von: ${who}`,
    hint: '0 nichts davon, 5 genug, 10 keine Frage offen. Übliche Praxis, keine Quelle.',
    mark: (bid: string, criterion: string) => `${criterion}, ${bid}`,
    markWrong: 'Eine ganze Zahl von 0 bis 10.',
    handIn: 'Abgeben: Das sind meine Noten, und sie bleiben',
    fixed: (day: string) =>
      `Abgegeben am ${day}: Gegebene Noten bleiben. Tragen Sie die für seither gekommene Angebote nach.`,
    note: 'Worauf die Noten beruhen',
    save: 'Noten speichern',
    saved: 'Die Noten sind gespeichert.',
    savedIn: 'Das Blatt ist abgegeben.',
  },
  openSheet: {
    title: 'Blätter öffnen, bevor alle abgegeben sind',
    by: 'Wer sie öffnet',
    byMissing: 'Geben Sie an, wer sie öffnet.',
    why: 'Warum jetzt',
    save: 'Blätter öffnen',
    saved: 'Die Blätter sind offen.',
  },
  decideSheet: {
    title: (bid: string) => `Wer hat entschieden? Angebot: ${bid}`,
    role: 'Rolle',
    roleMissing: 'Geben Sie an, in welcher Rolle entschieden wurde.',
    name: 'Name',
    on: 'Entschieden am',
    why: 'Warum dieses',
    whyHint: 'Vor allem, wenn die Noten für ein anderes sprechen oder keines unterscheiden.',
    save: 'Speichern',
    saved: 'Wer entschieden hat, ist gespeichert.',
  },
};
