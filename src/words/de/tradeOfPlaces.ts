import type { NamesOfTrade } from '../../engine/trade';

const apart = 'Personen fernhalten: Absperrband, Leitkegel, jemand, der dort steht.';
const asItIs = 'Fotografieren, wie es ist, mit etwas, das die Größe zeigt, bevor irgendetwas bewegt wird.';

/** What reaches a work where it stands: causes, the grounds, what can happen to it. */
export const tradeOfPlaces: NamesOfTrade = {
  causes: {
    sprinkler: {
      name: 'Regner',
      signs: 'Kalk oder Grün auf der Seite, die ein Rasenregner erreicht, auf der anderen nicht.',
      remedy: 'Den Kopf drehen, tiefer setzen oder versetzen; zu anderer Stunde beregnen.',
      who: 'Die Gartenpflege',
    },
    'basin spray': {
      name: 'Sprühwasser eines Beckens oder Brunnens',
      signs: 'Eine Linie auf Höhe des Wassers oder ein Fächer, wohin der Wind es trägt.',
      remedy: 'Den Strahl senken, bei Wind abstellen, die Wasserbehandlung ansehen.',
      who: 'Wer den Brunnen betreibt',
    },
    drip: {
      name: 'Tropfwasser von oben',
      signs: 'Eine Spur, die unter einer Kante, einem Draht, einem Ast oder einer anderen Zone beginnt.',
      remedy: 'Das Wasser oben ableiten; die Rinne instand setzen; die Zone, aus der es kommt, zuerst behandeln.',
      who: 'Die Gartenpflege, oder der Restaurator, wo es aus dem Werk selbst kommt',
    },
    tree: {
      name: 'Baum',
      signs: 'Klebriger Film, Blätter in Falten, geriebene Stellen auf Höhe eines Astes.',
      remedy: 'Zurückschneiden, was tropft oder reibt.',
      who: 'Die Baumpflege',
    },
    birds: {
      name: 'Vögel',
      signs: 'Jede Woche Kot an denselben Stellen.',
      remedy: 'Öfter waschen; fragen, bevor etwas zur Abwehr am Werk befestigt wird.',
      who: 'Sie selbst, und der Restaurator für alles, was befestigt wird',
    },
    'road salt': {
      name: 'Streusalz',
      signs: 'Grün oder blasses Pulver weit unten, zur Seite eines Wegs oder einer Straße hin, nach dem Winter.',
      remedy: 'Beim Werk Sand oder Splitt statt Salz; im Frühjahr abspülen.',
      who: 'Der Winterdienst',
    },
    fertiliser: {
      name: 'Dünger',
      signs: 'Flecken an Sockel und unteren Kanten, nachdem der Rasen gedüngt wurde.',
      remedy: 'Ein ungedüngter Streifen um den Sockel.',
      who: 'Die Gartenpflege',
    },
    touch: {
      name: 'Berühren und Besteigen',
      signs: 'Blankes Metall, wo Hände, Füße oder Sitzende hinkommen, darüber dunkel.',
      remedy: 'Ein Schild, eine Pflanze, eine Stufe weniger nah; oder die Entscheidung, es blank werden zu lassen.',
      who: 'Sie selbst, mit der Besucherbetreuung',
    },
    ponding: {
      name: 'Stehendes Wasser',
      signs: 'Ein Ring mit ebenem Rand in einer Vertiefung.',
      remedy: 'Ein Ablauf für das Wasser; das ist ein Eingriff in das Werk.',
      who: 'Der Restaurator',
    },
    'weep hole': {
      name: 'Entwässerungsloch verstopft oder undicht',
      signs: 'Wasser oder Rost läuft noch Tage nach dem Regen aus einer Fuge; Eisspuren im Frühjahr.',
      remedy: 'Mit etwas öffnen, das weicher ist als das Metall; fragen, was herausläuft.',
      who: 'Sie selbst für das Öffnen, der Restaurator für das, was herausläuft',
    },
    'dissimilar metal': {
      name: 'Anderes Metall an der Bronze',
      signs: 'Korrosion entlang eines Bolzens, einer Stange oder Klammer.',
      remedy: 'Trennen, oder die Befestigung ersetzen.',
      who: 'Der Restaurator',
    },
    'base run-up': {
      name: 'Salz und Feuchte aus dem Sockel',
      signs: 'Ein Streifen grüner oder blasser Kruste dicht über Stein oder Beton.',
      remedy: 'Fuge und Entwässerung des Sockels.',
      who: 'Der Restaurator, mit einem Steinmetz',
    },
  },
  groundsTopics: {
    sprinklers: {
      name: 'Regner',
      ask: 'Kein Regner erreicht das Metall; Köpfe werden gedreht oder versetzt und jedes Frühjahr angesehen.',
    },
    mowing: {
      name: 'Mähen und Trimmen',
      ask: 'Kein Fadentrimmer näher als 50 cm an einem Sockel; dieser Streifen wird von Hand geschnitten.',
    },
    salt: { name: 'Salz im Winter', ask: 'Kein Salz näher als 5 m an einem Werk; stattdessen Splitt oder Sand.' },
    fertiliser: {
      name: 'Dünger und Unkrautmittel',
      ask: 'Näher als 3 m an einem Werk wird nichts gestreut oder gesprüht, und nie bei Wind.',
    },
    washing: {
      name: 'Waschen',
      ask: 'Kein Hochdruckreiniger und kein Reinigungsmittel an Werken oder Sockeln; sagen Sie es uns, wir waschen.',
    },
    leaves: {
      name: 'Laub und Bläser',
      ask: 'Laub wird von Sockeln und Entwässerungslöchern mit der Hand genommen; der Bläser zeigt weg vom Werk.',
    },
    trees: {
      name: 'Bäume darüber',
      ask: 'Äste über einem Werk werden geschnitten, bevor sie berühren oder tropfen; wir sagen, wann niemand darunter ist.',
    },
    drains: {
      name: 'Abläufe und Becken',
      ask: 'Abläufe, Überlauf und Beckenfilter werden am vereinbarten Tag gereinigt; wenn nicht, wird es gesagt.',
    },
    events: {
      name: 'Veranstaltungen und Fahrzeuge',
      ask: 'Kein Zelt, keine Bühne, kein Fahrzeug und kein Kabel näher als 2 m an einem Werk, ohne zu fragen.',
    },
    telling: {
      name: 'Bescheid geben',
      ask: 'Wer eine Veränderung, einen Stoß oder Farbe sieht, sagt es am selben Tag und lässt alles, wie es ist.',
    },
    other: { name: 'Anderes' },
  },
  incidentSorts: {
    storm: {
      name: 'Sturm, oder ein Ast darauf',
      first: [apart, 'Bei Wind nicht unter Bäume und lose Teile gehen.', asItIs],
    },
    blow: {
      name: 'Ein Stoß: Fahrzeug, Mäher, Ball',
      first: [
        apart,
        asItIs,
        'Fragen, ob Befestigung oder Sockel nachgegeben haben: wann es sicher ist, sagt ein Ingenieur.',
      ],
    },
    graffiti: {
      name: 'Farbe, Filzstift, Aufkleber',
      first: [
        asItIs,
        'Nicht anrühren: kein Lösemittel, kein Schrubben, kein Hochdruckreiniger. Was es ohne die Patina abnimmt, sagt ein Restaurator.',
      ],
    },
    vandalism: {
      name: 'Zerkratzt, zerbrochen, bestiegen',
      first: [apart, asItIs, 'Stücke in Beuteln sammeln, die Fundstelle darauf geschrieben.'],
    },
    theft: { name: 'Etwas fehlt', first: ['Nichts berühren: zuerst die Polizei.', asItIs] },
    flood: {
      name: 'Hochwasser, Rohrbruch',
      first: [
        'Strom von einer Elektrofachkraft abschalten und sichern lassen, bevor jemand hineingeht.',
        asItIs,
        'Die Wasserlinie markieren und notieren, ob das Wasser salzig war.',
      ],
    },
    fire: {
      name: 'Brand, Blitz, Feuerwerk',
      first: [
        'Zuerst die Feuerwehr. Das Metall von selbst abkühlen lassen: kein Wasser auf heiße Bronze oder heißes Glas.',
        asItIs,
      ],
    },
    spill: {
      name: 'Etwas darauf verschüttet oder gesprüht',
      first: ['Herausfinden, was es war; das Etikett aufheben.', asItIs],
    },
    insert: {
      name: 'Eine Einlage gesprungen oder lose',
      first: [apart, 'Gehaltene Stücke lassen, wo sie sitzen; gefallene sammeln.', asItIs],
    },
    ice: { name: 'Frost oder Eis', first: [apart, 'Kein Eis abbrechen, nichts darauf gießen.', asItIs] },
    other: { name: 'Anderes', first: [apart, asItIs] },
  },
};
