import type { reasonsOfBag as english } from '../en/reasonsOfBag';
import type { Same } from '../tongue';

const again = 'Holen Sie die Tasche noch einmal dort, wo sie herkommt.';

/** Why a bag is not taken. */
export const reasonsOfBag: Same<typeof english> = {
  'bag: not a bag': () => 'Das ist keine Tasche einer Bestandsaufnahme.',
  'bag: declaration': () =>
    `Die Datei „bagit.txt“ darin wurde verändert: Sie sagt nicht, dass dies eine Tasche ist. ${again}`,
  'bag: version': (s) =>
    `Die Tasche nennt sich BagIt, Version ${s.text('found')}, und die liest diese App nicht. Aktualisieren Sie die App, oder lassen Sie die Tasche neu anlegen.`,
  'bag: manifest line': (s) =>
    `Zeile ${s.text('line')} von „${s.text('file')}“ in der Tasche ist keine Prüfsumme mit Dateiname. ${again}`,
  'bag: listed twice': (s) => `„${s.text('file')}“ in der Tasche nennt „${s.text('path')}“ zweimal. ${again}`,
  'bag: path': (s) =>
    `„${s.text('file')}“ in der Tasche nennt „${s.text('path')}“, wo keine Datei einer Tasche liegt. Trauen Sie dieser Datei nicht.`,
  'bag: info line': (s) => `Zeile ${s.text('line')} von „bag-info.txt“ in der Tasche ist nicht lesbar. ${again}`,
  'bag: text': (s) => `„${s.text('file')}“ in der Tasche ist kein reiner Text in UTF-8. ${again}`,
  'bag: cut off': () =>
    `Die Tasche endet nicht wie eine ZIP-Datei: Sie wurde unterwegs abgeschnitten, oder es wurde etwas angehängt. ${again}`,
  'bag: zip untrue': (s) =>
    `${s.text('path') === '' ? 'Die ZIP-Datei' : `Die ZIP-Datei, bei „${s.text('path')}“,`} sagt an verschiedenen Stellen Verschiedenes über sich. ${again} Bleibt es so, trauen Sie dieser Datei nicht.`,
  'bag: zip in parts': () =>
    'Das ist ein Teil einer ZIP-Datei, die in mehrere zerlegt wurde. Fügen Sie die Teile mit dem Programm zusammen, das sie angelegt hat, und öffnen Sie das Ganze.',
  'bag: encrypted': (s) =>
    `„${s.text('path')}“ in der Tasche ist mit einem Passwort verschlossen. Entpacken Sie sie, packen Sie sie ohne Passwort neu und öffnen Sie diese.`,
  'bag: packed otherwise': (s) =>
    `„${s.text('path')}“ in der Tasche ist auf eine Weise gepackt, die diese App nicht liest. Entpacken Sie sie, packen Sie sie als gewöhnliche ZIP-Datei neu und öffnen Sie diese.`,
  'bag: not unpacked': (s) =>
    `„${s.text('path')}“ in der Tasche ergibt entpackt nicht das, was die Tasche angibt. ${again}`,
  'bag: too many files': (s) =>
    `Die Tasche gibt ${s.number('count')} Dateien an; gelesen werden bis zu ${s.number('most')}. Lassen Sie die Werke in mehreren Taschen mitgeben.`,
  'bag: file too large': (s) =>
    `„${s.text('path')}“ in der Tasche hat ${s.number('megabytes')} MB; gelesen werden bis zu ${s.number('most')} MB. Keine Bestandsaufnahme dieser App enthält eine solche Datei.`,
  'bag: too large': (s) =>
    `Die Tasche ergibt entpackt ${s.number('gigabytes')} GB; gelesen werden bis zu ${s.number('most')} GB. Lassen Sie die Werke in mehreren Taschen mitgeben.`,
  'bag: swells': (s) =>
    `„${s.text('path')}“ in der Tasche würde entpackt auf das ${s.number('times')}-Fache anschwellen. Trauen Sie dieser Datei nicht.`,
  'bag: name': (s) =>
    `Die Tasche enthält eine Datei, die in keine Bestandsaufnahme gehört („${s.text('path')}“). Hat sie jemand in gutem Glauben hineingelegt, lassen Sie sie herausnehmen; sonst trauen Sie dieser Datei nicht.`,
  'bag: name twice': (s) =>
    `Die Tasche enthält „${s.text('path')}“ zweimal; es ist nicht sicher, welche der beiden gilt. ${again}`,
  'bag: no declaration': () =>
    'In der Tasche fehlt die Datei „bagit.txt“. Holen Sie die ganze Tasche noch einmal dort, wo sie herkommt.',
  'bag: other manifest': (s) =>
    `Die Tasche enthält ein Verzeichnis von Prüfsummen, das diese App nicht liest („${s.text('path')}“). Lassen Sie sie nur mit SHA-256 anlegen, oder noch einmal aus der App mitgeben.`,
  'bag: fetch': () =>
    'Die Tasche überlässt es dem Netz, einige ihrer Dateien zu liefern; das tut diese App nicht. Lassen Sie die Tasche dort vervollständigen, wo sie herkommt.',
  'bag: no manifest': () =>
    `In der Tasche fehlt das Verzeichnis der Prüfsummen („manifest-sha256.txt“); niemand kann sagen, ob sie vollständig ist. ${again}`,
  'bag: no survey': () =>
    'In dieser Tasche ist keine Bestandsaufnahme („data/survey.json“). Wählen Sie eine Tasche, die aus dieser App mitgegeben wurde.',
  'bag: file missing': (s) =>
    `„${s.text('path')}“ steht in „${s.text('file')}“ und ist nicht in der Tasche. Holen Sie die ganze Tasche noch einmal dort, wo sie herkommt.`,
  'bag: file not listed': (s) =>
    `„${s.text('path')}“ liegt in der Tasche und steht nicht in ihrem Verzeichnis; jemand hat es hinzugefügt. ${again}`,
  'bag: file altered': (s) =>
    `„${s.text('path')}“ in der Tasche ist nicht die Datei, die hineingelegt wurde: Ihre Prüfsumme ist eine andere. ${again}`,
  'bag: photo name': (s) => `Das Bild „${s.text('path')}“ in der Tasche trägt den Namen eines anderen Bildes. ${again}`,
  'bag: no picture': (s) =>
    `„${s.text('path')}“ in der Tasche heißt Bild und ist keines, das diese App kennt. Trauen Sie dieser Datei nicht.`,
  'bag: count differs': (s) =>
    `Die Tasche gibt ${s.number('bytes')} Bytes in ${s.number('files')} Dateien an und enthält anderes. Holen Sie die ganze Tasche noch einmal dort, wo sie herkommt.`,
  'bag: more faults': (s) => `Und ${s.times('count', 'weiterer Fehler', 'weitere Fehler')} dieser Art.`,
};
