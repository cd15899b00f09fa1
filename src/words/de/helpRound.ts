import type { helpRound as english } from '../en/helpRound';
import type { Same } from '../tongue';

export const helpRound: Same<typeof english> = {
  'sculpture-round-start': {
    title: 'Rundgang beginnen',
    what: 'Sagt, welche Art Rundgang es ist, an welchem Tag und in welchem Zustand die Oberfläche ist. Verglichen werden nur gleichartige Rundgänge; diese Antworten zählen daher auf Jahre.',
    first:
      'Lassen Sie „Jährlich“ stehen. Sagen Sie, ob die Oberfläche trocken ist und ob gewaschen wurde, dann beginnen Sie. Lesen Sie einmal, worauf zu achten ist.',
    from: 'Der Tag, den Sie bestätigen, steht in den Daten, was immer die Uhr des Tablets sagt.',
  },
  round: {
    title: 'Ein laufender Rundgang',
    what: 'Alle Zonen des Rundgangs in der Reihenfolge des Wegs und was jede bisher ergeben hat. Sie können gehen und wiederkommen; jedes Tippen ist gespeichert.',
    first: 'Gehen Sie mit der nächsten Zone weiter. Am Ende der Liste beenden Sie den Rundgang.',
    from: 'Vier Zustände bleiben getrennt: etwas gefunden, angesehen und ohne Befund, übernommen, nicht angesehen.',
  },
  'round-zone': {
    title: 'Eine Zone im Rundgang',
    what: 'Was diese Zone dieses Jahr zeigt. Ein Tippen beantwortet sie ganz (Wie im Vorjahr, Ohne Befund, Nicht erreichbar), oder Sie gehen die Befunde einzeln durch.',
    first:
      'Sehen Sie die Zone an, bevor Sie aufs Glas sehen. Tippen Sie auf die Art, dann wo sie sitzt, dann auf das Feld, das so aussieht. Erst das Foto, dann die Sprühflasche. Dann weiter.',
    from: 'Jedes Feld neben einer Stufe ist wirklich zu diesem Anteil bedeckt. Eine Stufe steht für einen Bereich, und die Rechnung nimmt ihn als Zweifel mit. Rückgängig nimmt ein Tippen nach dem anderen zurück.',
  },
  'round-end': {
    title: 'Ende des Rundgangs',
    what: 'Was fehlt, wie viel gesehen wurde, der Index und was sich sicher verändert hat. Bis zu drei Zonen werden noch einmal gefragt, damit Ihre eigene Unsicherheit bekannt wird.',
    first:
      'Beantworten Sie das noch einmal Gefragte, ohne zurückzusehen. Gehen Sie durch, was fehlt, schließen Sie ab und geben Sie die Daten noch am selben Tag mit.',
    from: 'Der Index aus den eigenen Antworten dieses Rundgangs. Übernommene Zonen zählen nicht mit.',
  },
  ready: {
    title: 'Bereit fürs Gelände',
    what: 'Worauf ein Tag draußen beruht, geprüft, bevor Sie gehen: läuft ohne Netz, Platz für Fotos, Kamera, Uhr, die letzte Kopie anderswo, wer arbeitet.',
    first:
      'Prüfen Sie das Tablet am Abend vorher und erlauben Sie die Kamera. Beheben Sie, was oben in der Liste steht.',
    from: 'Vom Browser erfragt und ausprobiert: Eine Datei wird zur Probe geschrieben und wieder gelöscht. Was ein Browser nicht verrät, heißt unbekannt.',
  },
  'sculpture-look': {
    title: 'Kontrollblick',
    what: 'Drei Minuten vom Boden aus: die Zonen, die zu beobachten sind, mit je einem Tippen.',
    first:
      'Sagen Sie, ob die Oberfläche trocken ist, dann für jede Zone, ob sie frei ist oder das Grün wieder da. „Nicht sicher“ ist eine gute Antwort.',
    from: 'Das Grün ist da: ein hellgrüner Fleck über 1 cm², sicher gesehen. Jeder Blick beendet oder verlängert eine Standzeit.',
  },
  walk: {
    title: 'Rundweg',
    what: 'Derselbe Kontrollblick bei allen Werken in einem Gang, in der Reihenfolge der Besuche.',
    first:
      'Stellen Sie oben einmal das Wetter ein. Dann je Zone ein Tippen, und eines für alle übrigen, wo sie frei sind.',
    from: 'Auf der Liste stehen Zonen, die beschichtet und seither nicht gesehen wurden, und solche, bei denen ein Blick jetzt am meisten sagt.',
  },
  'sculpture-then-and-now': {
    title: 'Damals und heute',
    what: 'Ein Rundgang gegen einen früheren: schlechter, besser oder keine sichere Veränderung, für das Werk, jede Zone und jeden Befund.',
    first:
      'Lassen Sie die zwei Rundgänge stehen und lesen Sie „Kurz gesagt“. Dann „Seit dem ersten Rundgang“: Sechs Jahre sagen mehr als eines.',
    from: 'Ein Unterschied, geteilt durch seine Unsicherheit, auf einer Skala, auf der kleine und große Bedeckung gleich wiegen. Die Seite nennt, wie viele Fehlalarme zu erwarten sind und welche kleinste Veränderung sie hätte bemerken können.',
  },
  'sculpture-over-time': {
    title: 'Über die Jahre',
    what: 'Index, Grün und einzelne Befunde als Linien über alle Rundgänge; was dazwischen getan wurde, ist an der Achse vermerkt.',
    first: 'Lesen Sie den Satz über jeder Linie vor der Linie. Wählen Sie eine Zone, um ihre eigene zu sehen.',
    from: 'Steigung nach Theil und Sen, geprüft nach Mann und Kendall. Eine Linie bricht, wo die Oberfläche eine andere wurde oder ihre Ursache beseitigt ist.',
  },
  'sculpture-agreement': {
    title: 'Zwei Personen, ein Rundgang',
    what: 'Wo zwei Personen dieselben Zonen unabhängig voneinander beurteilt haben: wie weit sie übereinstimmen und wo sie gemeinsam hinsehen sollten.',
    first: 'Gehen Sie mit beiden zu den Zonen oben in der Liste und einigen Sie sich, wie Sie es nennen.',
    from: 'Cohens Kappa für Arten, gewichtetes Kappa für Schwere, Intraklassenkorrelation für Bedeckung, jeweils mit Spanne.',
  },
  holds: {
    title: 'Wie lange das Wachs hält',
    what: 'Für jede Zone: was darauf ist, wie lange frühere Beschichtungen das Grün fernhielten, wann wieder zu wachsen ist und wann ein Blick am meisten sagt.',
    first:
      'Lesen Sie die Zonen oben: Dort hält Wachs nicht. Für die übrigen merken Sie sich den Tag bei „Nächster Kontrollblick“.',
    from: 'Eine Standzeit ist ein Zeitraum und nie ein Tag, denn niemand sah das Grün kommen. Kurven nach Turnbull und Weibull; bei wenigen Enden ist die Form geliehen, und das steht dabei.',
  },
  'sculpture-map': {
    title: 'Zonenkarte',
    what: 'Die Zonen auf einem Bild des Werks, getönt nach Index, Klasse, Dringlichkeit, Veränderung oder Standzeit.',
    first:
      'Wählen Sie eine Ansicht, dann was gezeigt wird. Tippen Sie auf eine Zone, um zu sehen, was dort erfasst ist.',
    from: 'Hell ist gut und dunkel ist schlecht; zu jedem Ton gehört eine Schraffur, damit die Karte in Grau und für jedes Auge lesbar bleibt. Eine nicht beurteilte Zone bleibt weiß.',
  },
  'sculpture-outline': {
    title: 'Zonen zeichnen',
    what: 'Legt den Umriss jeder Zone auf ein Bild einer Seite.',
    first:
      'Wählen Sie eine Zone in der Liste und tippen Sie auf dem Bild ihre Ecken an, eine nach der anderen. Grob genügt.',
    from: 'Umrisse dienen dem Zurechtfinden und den Anteilen auf einem Foto. Die Fläche einer Zone bleibt die, die Sie angegeben haben.',
  },
  'sculpture-colour': {
    title: 'Farbe',
    what: 'Was ein Messgerät an markierten Stellen ergab, gehalten an den vereinbarten Farbton und an die Messung davor.',
    first:
      'Bringt ein Restaurator ein Messgerät mit, bitten Sie um drei Aufsetzungen je Stelle und darum, wie gemessen wurde. Schreiben Sie beides hier auf.',
    from: 'CIEDE2000 zwischen Messungen derselben Art. Nie aus einem Foto: Ein Foto enthält auch das Wetter.',
  },
};
