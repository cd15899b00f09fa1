import type { reasonsOfDevice as english } from '../en/reasonsOfDevice';
import type { Same } from '../tongue';

/** What the tablet and its browser say: what is wrong, and what to do. */
export const reasonsOfDevice: Same<typeof english> = {
  'another tab writes': () =>
    'Ein anderer Tab hat diese Sammlung geöffnet und schreibt. Dieser hier liest nur. Schließen Sie den anderen, oder übernehmen Sie hier.',
  'another tab took over': () => 'Ein anderer Tab hat übernommen. Dieser hier liest nur noch.',
  'newer database': (s) =>
    `Die Daten auf diesem Gerät stammen von einer neueren Version der App (${s.text('found')}, diese ist ${s.text('here')}). Laden Sie die Seite mit Netz neu.`,
  'update blocked': () =>
    'Ein anderer Tab hält eine alte Version offen. Schließen Sie alle anderen Tabs dieser App und laden Sie dann diese Seite neu.',
  'reload needed': () => 'Eine neuere Version der App arbeitet bereits. Laden Sie diese Seite neu.',
  'device full': (s) =>
    `Das Gerät ist voll. Nicht gespeichert: ${s.deed('deed')}. Schaffen Sie Platz (Fotos oder Videos anderer Apps) und tun Sie es noch einmal. Was vorher gespeichert war, ist sicher und kann mitgegeben werden.`,
  'connection lost': (s) =>
    `Der Browser hat den Zugriff auf die Daten verloren. Nicht gespeichert: ${s.deed('deed')}. Laden Sie die Seite neu und tun Sie es noch einmal.`,
  'data removed': (s) =>
    `Der Browser hat die Daten dieser App entfernt: ${s.times('count', 'Eintrag war', 'Einträge waren')} hier. Holen Sie Ihre letzte Datei der Bestandsaufnahme herein.`,
  'entries missing': (s) =>
    `${s.number('expected')} Einträge waren gespeichert, ${s.number('count')} sind zu finden. Geben Sie die Bestandsaufnahme jetzt mit, und holen Sie Ihre letzte Datei herein.`,
  'counts differ': (s) =>
    `Die gespeicherten Einträge passen nicht zu ihrer Zahl (${s.number('count')} gefunden, ${s.number('expected')} erwartet). Geben Sie die Bestandsaufnahme jetzt mit und bewahren Sie die Datei auf.`,
  'present state differs': (s) =>
    `${s.times('things', 'gegenwärtiger Stand folgt', 'gegenwärtige Stände folgen')} nicht aus den Einträgen. Sie lassen sich neu herstellen; nichts ist verloren.`,
  'copied tablet': () =>
    'Dieses Gerät ist eine Kopie eines anderen. Es hat eine eigene Gerätenummer bekommen, damit die beiden nicht für eines gehalten werden.',
  'not kept: browser cannot': () =>
    'Dieser Browser kann die App nicht für die Arbeit ohne Netz bewahren. Öffnen Sie sie in einem aktuellen Safari, Chrome, Edge oder Firefox.',
  'not kept: private window': () =>
    'In einem privaten Fenster kann die App nicht für die Arbeit ohne Netz bewahrt werden. Öffnen Sie sie in einem gewöhnlichen Fenster.',
  'not kept: refused': (s) =>
    `Der Browser hat es abgelehnt, die App für die Arbeit ohne Netz zu bewahren (${s.text('said')}). Laden Sie die Seite mit Netz neu.`,
  'store failed': (s) =>
    `Der Browser hat das Speichern abgelehnt (${s.text('said')}). Nicht gespeichert: ${s.deed('deed')}. Laden Sie die Seite neu und tun Sie es noch einmal.`,
  'no database': (s) =>
    `Dieser Browser lässt die App nichts speichern (${s.text('said')}). Verlassen Sie den privaten Modus, oder nehmen Sie einen anderen Browser.`,
  'clocks apart': (s) =>
    `${s.times('count', 'Eintrag trägt', 'Einträge tragen')} einen Tag, der der Uhr dieses Geräts voraus ist (bis ${s.day('day')}): Eine der beiden Uhren geht falsch. Nichts wird nach einer Uhr geordnet; Rundgänge behalten den bestätigten Tag.`,
  'clock out of step': (s) =>
    `Die Uhr dieses Geräts zeigt ${s.day('today')}, doch hier wurde am ${s.day('day')} etwas eingetragen: Sie ging damals vor oder geht jetzt nach. Stellen Sie sie richtig. Nichts wird nach ihr geordnet; Rundgänge behalten den bestätigten Tag.`,
  'built upon': (s) =>
    `Das Hereinholen lässt sich nicht zurücknehmen: ${s.times('count', 'späterer Eintrag baut', 'spätere Einträge bauen')} darauf auf. Nehmen Sie diese zuerst zurück.`,
  'no such import': () =>
    'Dieses Hereinholen ist auf diesem Gerät nicht bekannt und lässt sich hier nicht zurücknehmen.',
  'photo erased': (s) =>
    `Dieses Bild wurde am ${s.day('day')} aus der Bestandsaufnahme gelöscht („${s.text('reason')}“) und wird nicht wieder aufgenommen. Nehmen Sie ein anderes auf.`,
  'name erased': (s) =>
    `Der Name dieser Person wurde am ${s.day('day')} aus der Bestandsaufnahme gelöscht („${s.text('reason')}“); für diesen Bearbeiter wird kein Name mehr angenommen. Fügen Sie einen neuen Bearbeiter hinzu, um jemanden zu nennen.`,
  'erasing stands': () =>
    'Dabei wurde etwas gelöscht, und Gelöschtes ist für immer fort: Das lässt sich nicht zurücknehmen.',
  'in step already': () =>
    'Das liegt im Ordner, über den die Geräte abgeglichen werden; der nächste Abgleich brächte es zurück. Berichtigen oder entfernen Sie es stattdessen hier: Das erreicht auch die anderen.',
  'id twice': (s) =>
    `Zwei verschiedene Inhalte tragen dieselbe Eintragsnummer (${s.text('id')}). Eine der Dateien wurde von Hand geändert; bitten Sie um eine unveränderte.`,
  'photo altered': () =>
    'Ein Bild kam unter dem Namen eines anderen und ist nicht das, aus dem dieser Name gebildet wurde. Das hiesige bleibt; holen Sie die Datei noch einmal.',
  'photo not kept': () => 'Das zurückgelesene Foto ist nicht das gespeicherte. Nehmen Sie es noch einmal auf.',
  'address not secure': () =>
    'Diese Seite wurde ohne https geöffnet; so können keine Fotos gespeichert werden, und die App arbeitet nicht ohne Netz. Öffnen Sie sie unter ihrer https-Adresse.',
  'photo empty': () => 'Die Bilddatei ist leer. Nehmen Sie das Bild noch einmal auf oder wählen Sie es neu.',
  'not a picture': (s) =>
    `„${s.text('name')}“ ist kein Bild, das diese App kennt. Wählen Sie ein Bild in JPEG, PNG, WebP oder HEIC.`,
  'photo too large': (s) =>
    `Das Bild hat ${s.number('megabytes', 0)} MB; gespeichert werden können bis zu ${s.number('limit', 0)} MB. Nehmen Sie es kleiner auf.`,
  'drawing not taken': (s) =>
    `„${s.text('name')}“ ist eine SVG-Zeichnung, und die kann ein Programm enthalten. Speichern Sie sie als PNG oder JPEG und wählen Sie das.`,
  'picture not shown': (s) =>
    `Dieser Browser kann dieses Bild nicht zeigen (${s.text('mime')}). Es wird gespeichert, wie es ist.`,
  'HEIC not shown': () =>
    'Das ist ein HEIC-Bild, was auch immer sein Name sagt, und dieser Browser kann es nicht zeigen. Es wird gespeichert, wie es ist. Stellen Sie die Kamera auf JPEG („maximale Kompatibilität“) und nehmen Sie es nach Möglichkeit noch einmal auf.',
  'picture cut': () =>
    'Die Datei endet vor dem Bild; sein unterer Teil fehlt. Es wird gespeichert, wie es ist. Kopieren Sie es noch einmal, oder nehmen Sie es neu auf.',
  'picture cut, not shown': () =>
    'Die Datei endet vor dem Bild, und zum Zeigen ist zu wenig da. Es wird gespeichert, wie es ist. Kopieren Sie es noch einmal, oder nehmen Sie es neu auf.',
  'picture size untrue': () =>
    'Die Datei enthält nicht so viele Pixel, wie sie angibt, und wird hier nicht geöffnet. Sie wird gespeichert, wie sie ist. Speichern Sie sie aus dem Programm neu, das sie angelegt hat.',
  'photo not here': () =>
    'Das Foto selbst liegt nicht auf diesem Gerät. Holen Sie eine Datei herein, die es enthält, oder messen Sie auf dem Gerät, das es aufgenommen hat.',
  'picture not opened': () =>
    'Dieser Browser öffnet das Foto nicht, also lassen sich seine Pixel nicht unterscheiden. Speichern Sie es als JPEG und nehmen Sie es neu auf, oder zählen Sie Punkte, wo es gezeigt wird.',
  'picture cut, not worked': () =>
    'Die Datei dieses Fotos endet vor dem Bild; der fehlende Teil würde für Oberfläche gehalten. Kopieren Sie die Datei noch einmal, oder zählen Sie Punkte auf dem, was zu sehen ist.',
  'pixels not at hand': () =>
    'Dieser Browser lässt keine Seite die Pixel eines Fotos lesen. Zählen Sie Punkte oder umfahren Sie die Flecken, oder nehmen Sie einen aktuellen Safari, Chrome, Edge oder Firefox.',
  'pixels altered': () =>
    'Eine Einstellung dieses Browsers gegen Nachverfolgung verändert die Pixel, die eine Seite liest; sie lassen sich nicht unterscheiden. Erlauben Sie dieser Seite das Lesen, oder zählen Sie Punkte.',
  'pixels failed': (s) =>
    `Die Pixel dieses Fotos ließen sich nicht bearbeiten (${s.text('said')}). Schließen Sie andere Apps und Tabs und versuchen Sie es noch einmal, oder zählen Sie Punkte.`,
  'pixels worked smaller': (s) =>
    `Das Foto hat ${s.number('megapixels', 1)} Millionen Pixel und wurde mit ${s.number('worked', 1)} Millionen bearbeitet, so vielen, wie ein Tablet verträgt.`,
  'taps of the earlier photo': () =>
    'Die Stellen auf dem früheren Foto unterscheiden dessen Grün nicht von der intakten Oberfläche.',
  'taps of the later photo': () =>
    'Die Stellen auf dem späteren Foto unterscheiden dessen Grün nicht von der intakten Oberfläche.',
  'change within the fit': (s) =>
    `Die Fotos können um ${s.percent('share')} der Breite verschoben liegen: ein Rand des Grüns, der sich um weniger bewegt hat, gilt nicht als Veränderung. Die Spanne zeigt, was das Doppelte davon und was keine Verschiebung ergäbe.`,
  'change not checked': () =>
    'Niemand hat diese Pixel beurteilt: Auch Licht, Nässe und Schmutz verändern Farben. Sehen Sie jede Stelle an, bevor Sie sagen, sie habe sich verändert.',
  'change left out': (s) =>
    `${s.percent('share')} der Zone ließen sich auf einem der Fotos nicht beurteilen: Glanzlicht, tiefer Schatten oder außerhalb des früheren.`,
  'location blanked': () => 'Der Aufnahmeort wurde im Bild vor dem Speichern unkenntlich gemacht.',
  'no camera on the page': () =>
    'Dieser Browser zeigt auf einer Seite keine Kamera. Nehmen Sie das Foto mit der Kamera des Tablets auf.',
  'camera not allowed': () =>
    'Dem Browser wurde gesagt, diese Seite nicht an die Kamera zu lassen. Erlauben Sie es in den Einstellungen des Browsers für diese Seite, oder nehmen Sie das Foto mit der Kamera des Tablets auf.',
  'no camera here': () => 'Dieses Gerät hat keine nutzbare Kamera. Wählen Sie ein Foto, das es schon hat.',
  'camera busy': (s) =>
    `Die Kamera ist nicht angelaufen (${s.text('said')}). Schließen Sie andere Apps, die sie nutzen, und versuchen Sie es noch einmal, oder nehmen Sie das Foto mit der Kamera des Tablets auf.`,
  'camera lost': () => 'Eine andere App hat die Kamera übernommen. Öffnen Sie diese Ansicht neu.',
  'save cancelled': () => 'Nicht gesichert: das Fenster wurde geschlossen.',
  'save refused': (s) =>
    `Das Gerät hat das Sichern abgelehnt (${s.text('said')}). Versuchen Sie unten einen anderen Weg.`,
  'way not here': () => 'Dieses Gerät kann es auf diesem Weg nicht. Wählen Sie einen anderen.',
  'bag worker failed': (s) =>
    `Der Teil der App, der Taschen bearbeitet, ist stehen geblieben. Hier wurde nichts geändert. Laden Sie die Seite neu und versuchen Sie es noch einmal${s.text('said') && ` (der Browser sagt: ${s.text('said')})`}.`,
  'bag of nothing': () =>
    'Es ist noch nichts darin: Wählen Sie Werke, zu denen es etwas gibt, oder erfassen Sie zuerst etwas.',
  'no room for a bag': (s) =>
    `Für eine Tasche von ${s.number('megabytes')} MB ist hier neben dem Vorhandenen kein Platz. Schreiben Sie sie direkt in eine Datei, wo dieses Gerät das anbietet, wählen Sie weniger Werke, oder schaffen Sie zuerst Platz.`,
  'bag not whole': (s) =>
    `Die Tasche wurde geschrieben und liest sich nicht zurück, wie sie war („${s.text('path')}“); sie wird nicht angeboten. Hier ist nichts verloren. Bereiten Sie sie neu vor; bleibt es so, versagt vielleicht der Speicher dieses Geräts.`,
  'asset missing': (s) => `Ein Teil der App fehlt (${s.text('name')}). Laden Sie die Seite mit Netz neu.`,
};
