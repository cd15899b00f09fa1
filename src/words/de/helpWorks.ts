import type { helpWorks as english } from '../en/helpWorks';
import { measure } from '../format';
import type { Same } from '../tongue';

export const helpWorks: Same<typeof english> = {
  sculptures: {
    title: 'Skulpturen',
    what: 'Jedes Werk in Ihrer Obhut, zuerst die, die es am nötigsten haben. Gefahr für Personen geht vor, dann die Dringlichkeit, dann der niedrigere Index. Ein Werk, das noch niemand angesehen hat, steht am Ende und ist so gekennzeichnet.',
    first:
      'Tippen Sie auf das oberste Werk. Am ersten Tag: ein Werk anlegen, seine Zonen festlegen, dann einen Rundgang beginnen.',
    from: 'Index und Klasse eines Werks stammen aus seinem letzten abgeschlossenen Rundgang. Der Kreis ist so weit gefüllt, wie der Index reicht; der blasse Teil ist seine Spanne.',
  },
  welcome: {
    title: 'Die erste Seite',
    what: 'Drei Wege zu beginnen: eine eigene Sammlung, eine Datei, die Sie bekommen haben, oder ein erfundener Garten zum Umsehen. Der Garten liegt getrennt und ist mit einem Tippen wieder verlassen.',
    first:
      'Noch nie gesehen? Öffnen Sie den Garten und machen Sie die Führung von fünf Minuten. Auf einem Tablet legen Sie die App vor dem ersten eigenen Eintrag auf den Home-Bildschirm.',
    from: 'Was unter „Bevor Sie beginnen“ steht, wurde diesen Browser eben gefragt.',
  },
  'sculpture-new': {
    title: 'Skulptur anlegen',
    what: 'Was von einem Werk bekannt ist. Nötig ist nur der Titel; alles andere hat Zeit, bis Sie die Akte zur Hand haben.',
    first: 'Schreiben Sie den Titel und legen Sie das Werk an. Die nächste Seite fragt nach seinen Zonen.',
    from: 'Sie schreiben es. Standort und Zugang können wegbleiben, wenn eine Datei dieses Gerät verlässt; dort dürfen also Schlüssel und Codes stehen.',
  },
  sculpture: {
    title: 'Ein Werk',
    what: 'Alles, was an einem Werk hängt: Ansichten, Index und Klassen, Zonen, Rundgänge, Fotos und was jemanden verletzen könnte. Von hier aus beginnen Rundgang und Kontrollblick.',
    first:
      'Im Frühjahr „Rundgang beginnen“, dazwischen „Kontrollblick“. Was sich verändert hat, zeigt „Damals und heute“.',
    from: 'Der Index stammt aus dem letzten abgeschlossenen Rundgang, nach Fläche gewichtet. Daneben steht, was er wäre, wenn die nicht gesehenen Zonen so gut wie die beste oder so schlecht wie die schlechteste wären.',
  },
  'sculpture-edit': {
    title: 'Skulptur bearbeiten',
    what: 'Was von dem Werk bekannt ist, zum Berichtigen und Ergänzen. Nichts geht verloren: Der frühere Wortlaut bleibt in den Daten.',
    first: 'Ändern Sie die falsche Zeile und speichern Sie.',
    from: 'Sie schreiben es. Entfernen nimmt ein Werk nur aus den Listen; Rückgängig holt es wieder.',
  },
  'sculpture-zones': {
    title: 'Zonen',
    what: 'Die Teile, durch die ein Rundgang führt, in der Reihenfolge, in der Sie ihnen begegnen. Vier bis neun passen für die meisten Werke; bei mehr als dreißig werden Rundgänge leicht abgebrochen.',
    first: 'Legen Sie die Zone an, zu der Sie zuerst kommen. Dann die nächste, einmal um das Werk herum.',
    from: 'Die Flächen geben Sie an. Die App sagt, wo eine Zone fast für das ganze Werk spricht oder wo es zu viele sind.',
  },
  'sculpture-zone-new': {
    title: 'Zone anlegen',
    what: `Ein Teil des Werks, der sich mit einem Blick beurteilen lässt: eine Oberfläche, eine Exposition, etwa ${measure('area', 0.3, 1)} bis ${measure('area', 3, 0)}.`,
    first:
      'Geben Sie ihr den Namen, den Sie jemandem am Boden zurufen würden, dann die Fläche. Einfache Körper helfen, wo sie niemand kennt.',
    from: 'Flächen aus Körpern sind Summen von Zylindern, Quadern und dergleichen, mit der Unsicherheit, die Sie nennen.',
  },
  'sculpture-zone': {
    title: 'Eine Zone',
    what: 'Was von einer Zone bekannt ist, ihre Fotos und Wege, sie zu teilen oder mit einer anderen zu verbinden.',
    first:
      'Namen und Exposition berichtigen Sie nach Belieben. Bei neuer Fläche oder Oberfläche sagen Sie, von welchem Tag an: Frühere Rundgänge behalten, womit sie entstanden.',
    from: 'Nach einer Teilung werden frühere Rundgänge über die Teile zusammen erzählt, nach ihrem Anteil an der Fläche.',
  },
  place: {
    title: 'Die Luft am Ort',
    what: 'Wie stark die Luft hier blankes Kupfer und Zink angreift, aus vier Jahresmitteln. Eine Angabe für Akte und Versicherer, keine Aussage über ein Werk.',
    first:
      'Erfragen Sie die vier Zahlen bei der nächsten Wetter- und Luftmessstelle und tragen Sie sie mit ihrer Quelle ein.',
    from: 'Rate und Klasse nach ISO 9223, Verlauf über Jahre nach ISO 9224, mit der Unsicherheit, die die Norm selbst angibt.',
  },
  'next-steps': {
    title: 'Nächste Schritte',
    what: 'Alle Zonen aller Werke in der Reihenfolge ihres Bedarfs, mit dem, was zuerst zu tun ist, und warum. Personen stehen über allem.',
    first:
      'Lesen Sie die ersten drei. Öffnen Sie die Begründung bei der, die Sie überrascht. Setzen Sie eine Klasse selbst, wo Sie es besser wissen.',
    from: 'Dringlichkeit nach Regel, dann Last, dann der niedrigere Index. Wie fest die Reihenfolge ist, zeigen tausend Ziehungen von Gewichten und Bedeckungen innerhalb ihrer Unsicherheiten.',
  },
  'sculpture-logbook': {
    title: 'Logbuch',
    what: 'Was an dem Werk getan wurde und von wem: Waschen, Wachsen, Reparaturen, Maßnahmen und die Kontrollblicke dazwischen.',
    first:
      'Tragen Sie das letzte Wachsen ein, mit dem Tag so genau, wie Sie ihn kennen. Auch frühere Jahre: Jedes ergibt eine Standzeit.',
    from: 'Sie schreiben es. Rundgänge und Kontrollblicke kommen von selbst hinzu.',
  },
  keeping: {
    title: 'Sicher aufbewahren',
    what: 'Wie sicher die Daten auf diesem Gerät liegen, wo es Kopien gibt, was eingegeben und nicht gespeichert wurde, und wie Platz wird.',
    first:
      'Bitten Sie den Browser, sie zu behalten. Geben Sie dann nach jedem Tag mit Rundgängen eine Tasche mit und öffnen Sie sie einmal anderswo.',
    from: 'Einträge und Bytes werden hier gezählt. „Alles durchsehen“ vergleicht jedes Foto mit der Prüfsumme vom Tag seiner Aufnahme.',
  },
  method: {
    title: 'Wie wird das berechnet?',
    what: 'Jede Zahl, mit der die App rechnet, in eben den Zeilen, die die Rechnung benutzt, mit ihrer Quelle oder dem Wort, dass sie unser eigenes Urteil ist.',
    first:
      'Probieren Sie oben einen Befund und sehen Sie, wie sich der Index bewegt. Lesen Sie dann die Arten, die in Ihrem letzten Rundgang stehen.',
    from: 'Das Verzeichnis der Quellen steht am Ende. Keine veröffentlichte Norm gibt einen Index für Bronzen im Freien; die Bewertung ist die dieses Projekts.',
  },
  settings: {
    title: 'Einstellungen',
    what: 'Wie Sie das Gerät halten und lesen, in welcher Sprache und welchen Einheiten, und wer arbeitet.',
    first: 'Tragen Sie sich unter „Wer arbeitet“ ein. Draußen wählen Sie „In der Sonne“, mit Handschuhen „Handschuhe“.',
    from: 'Alles bleibt auf diesem Gerät; in eine Datei kommen nur die Personen, die Sie eintragen.',
  },
  'eye-check': {
    title: 'Augenprobe',
    what: 'Zwölf gezeichnete Felder mit bekannter Bedeckung, in zwei Minuten. Sie misst, wie weit Ihr eigenes Auge danebenliegt.',
    first: 'Sagen Sie, wessen Auge es ist, und antworten Sie rasch: Der erste Blick zählt, wie auf der Leiter.',
    from: 'Die Streuung Ihrer Antworten, zusammen mit Zonen, die Sie in Rundgängen zweimal beurteilt haben. Sie macht jede Spanne Ihrer Rundgänge weiter oder enger; Ihre Einträge bleiben, wie sie sind.',
  },
};
