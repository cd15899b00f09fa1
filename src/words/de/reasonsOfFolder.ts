import type { reasonsOfFolder as english } from '../en/reasonsOfFolder';
import type { Same } from '../tongue';

const keeper = 'Fragen Sie die Person, die den Server betreut';

/** What stands between the tablet and the folder it keeps in step with: what is wrong, and what to do. */
export const reasonsOfFolder: Same<typeof english> = {
  'folder: no network': () => 'Es gibt kein Netz. Was wartet, bleibt hier und geht beim nächsten Abgleich mit.',
  'folder: no answer': () =>
    'Der Server hat nicht geantwortet oder mittendrin abgebrochen. Nichts ist verloren; versuchen Sie es bei besserem Netz noch einmal.',
  'folder: answer too late': (s) =>
    `Der Server hat nicht innerhalb von ${s.number('seconds')} Sekunden geantwortet. Nichts ist verloren; versuchen Sie es bei besserem Netz noch einmal.`,
  'folder: name with colon': () =>
    'Ein Name für den Server darf keinen Doppelpunkt enthalten. Geben Sie ihn noch einmal ein.',
  'folder: password refused': () =>
    'Der Server hat diesen Namen und dieses Passwort nicht angenommen. Geben Sie beide noch einmal ein.',
  'folder: not allowed': (s) =>
    `Der Server lässt das unter diesem Namen in seinem Ordner nicht zu (${s.text('path')}). ${keeper}.`,
  'folder: none there': (s) =>
    `Dieser Server führt keinen Ordner unter ${s.text('address')}. Bitten Sie die Person, die den Server betreut, ihn einzurichten, oder geben Sie Dateien mit.`,
  'folder: not a folder': (s) =>
    `Unter ${s.text('address')} antwortet eine Seite und kein Ordner: ein Netz, das zuerst eine Anmeldung verlangt, oder ein anders eingerichteter Server. Melden Sie sich im Netz an, oder fragen Sie die Person, die den Server betreut.`,
  'folder: written over': (s) =>
    `Der Server hat „${s.text('path')}“ überschrieben, obwohl es schon da war und er darum gebeten war, es nicht zu tun. Ein solcher Ordner lässt sich nicht sicher teilen: Schalten Sie ihn hier ab, und zeigen Sie dies der Person, die den Server betreut.`,
  'folder: locked': (s) =>
    `Ein anderes Programm hat „${s.text('path')}“ auf dem Server gesperrt. Versuchen Sie es später noch einmal; bleibt es so, fragen Sie die Person, die den Server betreut.`,
  'folder: full': () =>
    'Auf dem Server ist kein Platz mehr. Was wartet, bleibt hier; bitten Sie die Person, die den Server betreut, Platz zu schaffen.',
  'folder: file too large': (s) =>
    `„${s.text('path')}“ ist größer, als der Server annimmt (${s.number('megabytes', 1)} MB). Es bleibt hier; geben Sie es als Datei mit, oder fragen Sie die Person, die den Server betreut.`,
  'folder: file not ours': (s) =>
    `„${s.text('path')}“ im Ordner ist größer als alles, was diese App schreibt, und wird nicht gelesen. Fragen Sie die Person, die es dort abgelegt hat.`,
  'folder: no room on the drive': () =>
    'Wo der Ordner liegt, ist kein Platz mehr. Was wartet, bleibt hier; schaffen Sie dort Platz, und gleichen Sie noch einmal ab.',
  'folder: not let in': () => 'Der Browser lässt diese App nicht in den Ordner. Lassen Sie sie wieder hinein.',
  'folder: not to be written': (s) =>
    `„${s.text('path')}“ lässt sich im Ordner nicht schreiben: Es ist gesperrt, oder das Laufwerk ist nur zum Lesen. Geben Sie es frei, oder wählen Sie einen anderen Ordner.`,
  'folder: drive gone': (s) =>
    `Der Ordner ist nicht erreichbar (${s.text('said')}). Schließen Sie das Laufwerk wieder an, oder wählen Sie den Ordner neu, wenn er verschoben oder umbenannt wurde.`,
  'folder: refused': (s) =>
    `Der Server hat „${s.text('path')}“ abgelehnt (Antwort ${s.text('status')}). Versuchen Sie es später noch einmal; bleibt es so, nennen Sie der Person, die den Server betreut, diese Zahl.`,
};
