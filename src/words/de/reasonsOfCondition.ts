import type { reasonsOfCondition as english } from '../en/reasonsOfCondition';
import type { Same } from '../tongue';
import { eyeRests } from './reasonsOfEye';

/** Why a score, a class or a place in the order of need is what it is. */
export const reasonsOfCondition: Same<typeof english> = {
  'score: kind not known': (s) =>
    `${s.kind('kind')} ist eine Befundart, die diese Version nicht kennt: gezeigt, nicht bewertet.`,
  'score: cleared': (s) => `${s.kind('kind')} ist nicht mehr da und zieht nichts ab.`,
  'score: looked, none there': (s) => `Nach ${s.kind('kind')} gesehen: nichts davon da.`,
  'score: dirt, look again after washing': (s) =>
    `${s.kind('kind')} gilt als Schmutz und zieht nichts ab. Sehen Sie nach dem Waschen noch einmal hin.`,
  'score: stain takes its own hazard': (s) =>
    `${s.kind('kind')} ist ein Fleck von oben: Es gilt die Gefährdung eines Flecks, ${s.number('hazard', 2)}.`,
  'score: no coverage given': (s) =>
    `Für ${s.kind('kind')} ist keine Bedeckung angegeben: Es zählt als kleinste Stufe, und wie viel es wirklich ist, bleibt offen.`,
  'score: no count given': (s) => `Für ${s.kind('kind')} ist keine Zahl angegeben: Es zählt als eines.`,
  'score: share of the photo': (s) =>
    `Die Bedeckung durch ${s.kind('kind')} (${s.method('method')}) ist der Anteil am Foto, nicht an der ganzen Zone.`,
  'score: range from coverage only': () => 'Die Spanne kommt allein aus der Unsicherheit der Bedeckungen.',
  'score: own eye': (s) =>
    `Die Spanne beruht auf der eigenen Unsicherheit dieses Bearbeiters, nicht auf der üblichen: bekannt aus: ${eyeRests(s)}.`,
  'score: nothing found': () => 'Angesehen, ohne Befund.',
  'score: biggest loss': (s) => `Der größte Abzug ist ${s.kind('kind')}: ${s.number('loss', 2)}.`,
  'score: active area held to the zone': (s) =>
    `Die Teile (${s.active('what')}) ergeben zusammen mehr, als eine Zone hat; sie gelten höchstens für ihre Fläche.`,
  'score: not visited': () => 'In diesem Rundgang war niemand bei dieser Zone.',
  'score: not looked': (s) => `Nicht angesehen: ${s.notLooked('why')}.`,
  'score: carried': (s) => `Übernommen, nicht neu beurteilt; Herkunft: ${s.thing('from')}.`,
  'score: partly carried': (s) =>
    `${s.times('carried', 'Befund ist', 'Befunde sind')} übernommen und ${s.times('judged', 'ist', 'sind')} neu beurteilt; die Zone hat deshalb keinen eigenen Index.`,
  'score: no zone looked at': () => 'In diesem Rundgang wurde keine Zone angesehen, also gibt es keinen Index.',
  'score: share seen': (s) =>
    `${s.number('seen')} von ${s.number('zones')} Zonen angesehen, ${s.number('percent')} % der Fläche.`,
  'score: weakest zone': (s) => `Die schwächste Zone: ${s.thing('zone')}, bei ${s.number('index', 0)}.`,
  'score: day effect counted once': (s) =>
    `Licht und Feuchte des Tages verschieben alle Zonen gemeinsam: ${s.number('points', 1)} Punkte der Spanne.`,
  'score: two versions, not settled': (s) =>
    `${s.times('things', 'Eintrag hat', 'Einträge haben')} zwei Fassungen, die noch niemand geklärt hat; bis dahin zählt die führende.`,
  'score: things not known': (s) =>
    `${s.times('things', 'Eintrag ist', 'Einträge sind')} von einer Art, die diese Version nicht kennt, und nicht bewertet.`,
  'coverage: more than the whole zone': (s) =>
    `${s.kinds('kinds')} können nicht an derselben Stelle liegen, bedecken aber zusammen ${s.number('percent')} % der Zone. Prüfen Sie die Bedeckungen.`,
  'coverage: perhaps more than the whole zone': (s) =>
    `${s.kinds('kinds')} können nicht an derselben Stelle liegen und ergeben zusammen ${s.number('percent')} %. Prüfen Sie, ob eine zu hoch ist.`,

  'class: no zone to judge': () => 'Keine Zone wurde angesehen, also gibt es nichts zu beurteilen.',
  'class: no finding': () => 'Angesehen, ohne Befund.',
  'class: index at or over': (s) => `Der Index, ${s.number('index', 0)}, liegt bei oder über ${s.number('limit', 0)}.`,
  'class: index under': (s) => `Der Index, ${s.number('index', 0)}, liegt unter ${s.number('limit', 0)}.`,
  'class: stop word': (s) => `${s.kind('kind')} ist ein Stoppbegriff: Fragen Sie den Restaurator.`,
  'class: severe, active, metal at stake': (s) =>
    `${s.kind('kind')} ist schwer und aktiv und gefährdet das Metall (Gefährdung ${s.number('hazard', 2)}).`,
  'class: weakest zone pulls down': (s) =>
    `Die schwächste Zone steht bei CC${s.number('condition')}: ${s.thing('zone')}.`,
  'class: person check open': (s) => `Eine Gefahrenmeldung ist seit ${s.day('opened')} offen: ${s.text('what')}.`,
  'class: could hurt someone, no person check yet': (s) =>
    `${s.kind('kind')} kann jemanden verletzen, und es gibt noch keine Gefahrenmeldung. Melden Sie die Gefahr.`,
  'class: kind is urgent': (s) => `${s.kind('kind')} ist für sich schon dringlich.`,
  'class: green clearly worse': () =>
    'Das Grün im Metall hat seit dem letzten vergleichbaren Rundgang deutlich zugenommen.',
  'class: hold proven shorter': () => 'Die Beschichtung hält hier von Mal zu Mal kürzer: nachgewiesen, kein Zufall.',
  'class: forecast to cross the action level': (s) =>
    `Bei gleicher Pflege fällt der Index bis zum nächsten Rundgang unter die Handlungsschwelle von ${s.number('actionLevel')}.`,
  'class: coating past its expected hold': () => 'Die Beschichtung hat ihre erwartete Standzeit überschritten.',
  'class: index under action level': (s) =>
    `Der Index, ${s.number('index', 0)}, liegt unter der Handlungsschwelle von ${s.number('actionLevel', 0)}.`,
  'class: active in the metal': (s) =>
    `${s.kind('kind')} ist auf ${s.number('percent', 1)} % der Zone im Metall aktiv.`,
  'class: active in the metal, told by count or presence': (s) => `${s.kind('kind')} ist im Metall aktiv.`,
  'class: beading': (s) => `Wasser auf der Oberfläche: ${s.beading('beading')}. Der Film hält Wasser nicht mehr ab.`,
  'class: nothing presses': () => 'Nichts ist dringlich.',
  'class: highest of its zones': (s) => `Die höchste unter den Zonen: ${s.thing('zone')}.`,
  'not yet known': (s) => `Noch nicht bekannt: ${s.unknown('what')}.`,
  'class: kind asks for test or repair': (s) =>
    `${s.kind('kind')} verlangt eine Probe, eine örtliche Behandlung oder eine Reparatur.`,
  'class: kind asks for care': (s) => `${s.kind('kind')} verlangt Waschen und Wachsen.`,
  'class: severe and active': (s) => `${s.kind('kind')} ist schwer und aktiv.`,
  'class: wash and look again': (s) => `${s.kind('kind')} kann Schmutz sein: waschen und noch einmal hinsehen.`,
  'class: nothing to do': () => 'Nichts verlangt mehr als Hinsehen.',
  'class: ask whether major treatment is due': (s) =>
    `Fragen Sie einen Restaurator, ob eine umfassende Behandlung ansteht: ${
      s.text('why') === 'share'
        ? `${s.percent('value')} der gesehenen Fläche zeigen starke Anzeichen`
        : s.text('why') === 'index'
          ? `der Index des ganzen Werks liegt bei ${s.number('value')}`
          : `die Anzeichen sind hier stark, bei einem Index von ${s.number('value')}`
    }.`,

  'need: urgency': (s) =>
    s.text('setBy') === ''
      ? `Dringlichkeitsklasse UC${s.number('urgency')}, nach Regel vorgeschlagen.`
      : `Dringlichkeitsklasse UC${s.number('urgency')}, festgelegt von ${s.text('setBy')}.`,
  'need: burden': (s) =>
    `Last ${s.number('burden', 0)}: ${s.area('m2')} mit einem Gewicht von ${s.number('significance', 1)}, bei einem Index von ${s.number('index', 0)}.`,
  'need: growth': (s) =>
    `Der Trend erhöht die Last bis zum nächsten Rundgang um ${s.number('growth')}, wenn die Pflege bleibt wie bisher.`,
  'need: before the next by urgency': () => 'Vor der nächsten, weil die Dringlichkeitsklasse höher ist.',
  'need: before the next by burden': () => 'Vor der nächsten, weil die Last größer ist.',
  'need: before the next by index': () => 'Vor der nächsten, weil der Index niedriger ist.',
  'need: level with the next': () => 'Gleichauf mit der nächsten: Nichts unterscheidet die beiden.',
  'need: last': () => 'Am Ende der Reihenfolge.',
};
