import type { helpPlan as english } from '../en/helpPlan';
import type { Same } from '../tongue';

export const helpPlan: Same<typeof english> = {
  plan: {
    title: 'Planung',
    what: 'Der Weg zu allem Geplanten: was fällig ist, jedes Werk, das Jahr, Geld und Entscheidungen, und die Dinge und Personen, die es braucht.',
    first: 'Öffnen Sie „Was fällig ist“. Im Winter öffnen Sie den Jahresplan.',
    from: 'Die Zeilen neben jedem Punkt zählen, was die Daten jetzt enthalten.',
  },
  'sculpture-plan': {
    title: 'Planung dieses Werks',
    what: 'Dasselbe für ein Werk: entscheiden, pflegen, vorbereiten, was Zugang und Schutz brauchen.',
    first:
      'Ist nur Pflege fällig, gehen Sie zum Wasch- und Wachstag. Hilft Wachs nicht mehr, beginnen Sie mit den Möglichkeiten.',
    from: 'Was die Daten von diesem Werk enthalten. Jede Zeile sagt, wie viel schon da ist.',
  },
  due: {
    title: 'Was fällig ist',
    what: 'Alles mit einem Tag, aus Standzeiten, Plänen, Zusagen, Entscheidungen und von Personen, in einer Liste.',
    first:
      'Erledigen Sie, was überfällig ist. Ordnen Sie dann nach Wegen und tun Sie auf einem Weg, was sich auf einem tun lässt.',
    from: 'Jede Zeile sagt, was sie verlangt. Sie verschwindet, wenn die Daten sie erledigt zeigen; abgehakt werden hier nur Ihre eigenen Aufgaben.',
  },
  year: {
    title: 'Das Jahr',
    what: 'Was jedes Werk in diesem Jahr bekommt, an welchem Tag, in wie vielen Stunden, und an welchen Tagen eine Hebebühne gebraucht wird.',
    first:
      'Lesen Sie die Vorschläge mit ihrem „Warum“. Ändern Sie, was Sie besser wissen, und nennen Sie den ersten Tag.',
    from: 'Vorgeschlagen nach Klassen, Standzeiten und Ihrem eigenen Tempo. Was Sie sagen, gilt, bis Sie es zurücknehmen.',
  },
  packing: {
    title: 'Packliste',
    what: 'Was mitmuss, an einem Tag oder im ganzen Jahr, abgehakt auf dem Weg ins Auto.',
    first: 'Wählen Sie den Tag und haken Sie ab. Nehmen Sie den Haken weg, wo etwas beschädigt zurückkam.',
    from: 'Aus den Werken des Tages: wie sie erreicht werden, was an ihnen geschieht, welche Sperrungen vereinbart sind.',
  },
  briefing: {
    title: 'Einweisung für eine Hilfskraft',
    what: 'Eine Seite für alle, die mitkommen: die Werke der Reihe nach, wann aufzuhören ist und wen man anruft, was nicht zu tun ist.',
    first: 'Wählen Sie den Tag, drucken Sie, besprechen Sie es vor der ersten Leiter.',
    from: 'Das Jahr, die Zugangsblätter und was an jedem Werk getan werden darf.',
  },
  'close-down': {
    title: 'Winterfest machen',
    what: 'Was vor dem ersten Frost geschieht, einmal für den Garten und für jedes Werk.',
    first:
      'Beginnen Sie mit Entwässerung und Wasser: Von dort kommt der Schaden. Haken Sie ab und ergänzen Sie, was hier besonders ist.',
    from: 'Gängige Praxis und die Ursachen und Einlagen in Ihren Daten.',
  },
  'site-plan': {
    title: 'Geländeplan',
    what: 'Wo die Werke stehen, damit ein Tag mit mehreren Werken den kurzen Weg nimmt.',
    first:
      'Wählen Sie ein Foto eines Plans oder nehmen Sie das leere Blatt. Wählen Sie ein Werk und tippen Sie, wo es steht.',
    from: 'Der kürzeste Weg ist auf diesem Bild berechnet; Stufen, Tore und Gezeiten kennen nur Sie.',
  },
  incidents: {
    title: 'Vorfälle',
    what: 'Sturm, Stoß, Farbe, Diebstahl: was geschah, wem es gesagt wurde, wie es ausging.',
    first:
      'Zuerst Personen fernhalten, dann fotografieren, dann aufschreiben. Farbe bleibt, wo sie ist, bis der Restaurator geantwortet hat.',
    from: 'Sie melden es. Ein Rundgang nach dem Vorfall zeigt, was er an der Oberfläche angerichtet hat.',
  },
  grounds: {
    title: 'Vereinbarungen mit der Gartenpflege',
    what: 'Was die, die mähen, wässern und streuen, nahe den Werken tun und lassen.',
    first:
      'Tragen Sie die Regner ein. Geben Sie jeder Vereinbarung einen Tag zur Durchsicht, drucken Sie die Seite, hängen Sie sie in den Schuppen.',
    from: 'Sie vereinbaren es. Der Tag kommt unter „Was fällig ist“ wieder.',
  },
  moves: {
    title: 'Umsetzungen und Leihgaben',
    what: 'Wohin ein Werk ging, wie es gehalten wurde und welche Rundgänge seinen Zustand davor und danach zeigen.',
    first: 'Machen Sie in den zwei Monaten vorher einen Rundgang. Dann schreiben Sie die Umsetzung auf.',
    from: 'Rundgänge davor und danach werden nach ihrem Tag gefunden.',
  },
  products: {
    title: 'Mittel im Bestand',
    what: 'Wachs, Reiniger und dergleichen: Charge, Sicherheitsdatenblatt, Haltbarkeit, Rest.',
    first: 'Tragen Sie das Wachs ein, das Sie benutzen, mit der Nummer auf der Dose.',
    from: 'Der Rest ist, was Sie gezählt haben, abzüglich dessen, was laut Logbuch seither verbraucht wurde.',
  },
  'sculpture-care-day': {
    title: 'Wasch- und Wachstag',
    what: 'Ob Luft und Oberfläche es jetzt erlauben, was an diesem Werk getan werden darf, und das Protokoll dessen, was geschah.',
    first:
      'Lesen Sie, was nie getan werden darf. Tragen Sie Luft, Feuchte und Oberfläche ein, dann beginnen oder warten. Halten Sie es fest, bevor Sie heimfahren.',
    from: 'Taupunkt nach einer veröffentlichten Formel; die Abstände stehen neben dem Messwert. Sie dürfen anders entscheiden, mit einem Grund, der bleibt.',
  },
  'sculpture-season': {
    title: 'Saisonprotokoll',
    what: 'Ein Jahr eines Werks auf einer Seite: was, wo, womit, wer und wie lange, bei welcher Luft.',
    first: 'Wählen Sie das Jahr und drucken Sie es für die Akte.',
    from: 'Das Logbuch.',
  },
  'sculpture-method-sheet': {
    title: 'Was daran getan werden darf',
    what: 'Was an diesem Werk erlaubt, zweifelhaft und verboten ist, für die Hilfskraft mit dem Schlauch.',
    first: 'Lassen Sie es den Restaurator einmal sagen und schreiben Sie Namen und Tag dazu. Drucken Sie es.',
    from: 'Eine übliche Liste, bis jemand anderes sagt; dann die Worte der genannten Person.',
  },
  'sculpture-metal': {
    title: 'Metallbuch',
    what: 'Jedes Mal, wenn Metall oder eine alte Beschichtung abgenommen wurde, von wem auch immer, und wie oft es jede Zone traf.',
    first: 'Suchen Sie alte Berichte und tragen Sie deren Freilegungen ins Logbuch ein. Dann lesen Sie die Zahl.',
    from: 'Das Logbuch. Flächen sind die der Zonen; wie viel verloren ging, steht nur da, wo es jemand gemessen hat.',
  },
  'sculpture-access': {
    title: 'Zugang',
    what: 'Wie das Werk erreicht wird, worauf es steht und was im Weg ist, für alle, die die Hebebühne bringen.',
    first: 'Schreiben Sie Höhe und Sockel. Dann Boden, Wasser, Sperrungen und wer am Tag entscheidet.',
    from: 'Berechnungen zu Höhen und Leiterfüßen nennen ihre Regel daneben. Sie sind keine Erlaubnis, hinaufzusteigen.',
  },
  'sculpture-inserts': {
    title: 'Einlagen und Hitze',
    what: 'Was jede Einlage verträgt, wer es gesagt hat, wie sie vor Hitze geschützt wird, und Berechnungen für das Gespräch mit Fachleuten.',
    first: 'Tragen Sie ein, ob sie herausgenommen werden kann. Wenn ja, wird sie vor jeder Hitze herausgenommen.',
    from: 'Grenzen setzen benannte Fachleute. Die Berechnungen schätzen nur ab; einen sicheren Abstand nennen sie nie.',
  },
};
