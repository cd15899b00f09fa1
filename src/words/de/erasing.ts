import type { erasing as english } from '../en/erasing';
import type { Same } from '../tongue';

const entries = (n: number): string => (n === 1 ? '1 Eintrag' : `${n} Einträge`);
const pictures = (n: number): string => (n === 0 ? '' : n === 1 ? ' und 1 Bild' : ` und ${n} Bilder`);

export const erasing: Same<typeof english> = {
  name: 'Namen löschen',
  nameOpen: 'Namen löschen …',
  nameOthers:
    'Um den Namen von jemandem zu löschen, der nur in Einträgen steht (unterschrieben, gegeben, entschieden hat): Fügen Sie die Person hier mit Rolle und Namen hinzu, dann löschen Sie den Namen. Jeder Eintrag, in dem er steht, wird gefunden.',
  nameWhose: 'Wessen Name',
  nameGoes: (words: string) => `„${words}“ verschwindet endgültig aus dieser Bestandsaufnahme.`,
  nameEarlier: (words: string) => `Frühere Schreibweisen verschwinden mit: ${words}.`,
  nameStays: (role: string) =>
    `Alles Gesehene bleibt, unter der Funktion „${role}“. Für diese Funktion wird kein Name mehr angenommen.`,
  elsewhere: 'Dieselben Worte stehen anderswo',
  elsewhereWhat: (role: string) => `Wo ein Haken steht, tritt „${role}“ an ihre Stelle, auch in früheren Fassungen.`,
  elsewhereNone: 'Dieselben Worte stehen nirgends sonst in der Bestandsaufnahme.',
  cannotGo: (n: number) =>
    n === 1
      ? '1 Eintrag einer Art, die diese Version nicht kennt, enthält den Namen und behält ihn.'
      : `${n} Einträge von Arten, die diese Version nicht kennt, enthalten den Namen und behalten ihn.`,
  looking: 'Gesucht wird, wo der Name steht …',
  nameReach:
    'Nicht erreicht werden: Spitznamen, Initialen und Vornamen allein; was ein anderes Gerät seit dem letzten Abgleich geschrieben hat; Namen in Bildern; was gedruckt ist.',

  photo: 'Dieses Foto löschen',
  photoOpen: 'Endgültig löschen …',
  photoGoes: 'Das Bild und alles, was zu ihm als Foto gesagt ist, verschwinden endgültig aus dieser Bestandsaufnahme.',
  photoStays:
    'Was darauf gemessen oder gezeichnet wurde, bleibt, ohne das Bild. Dasselbe Bild wird nicht wieder aufgenommen.',
  photoRemoveInstead:
    'Um es nur aus den Listen zu nehmen, verwenden Sie „Aus den Einträgen entfernen“: Das lässt sich rückgängig machen.',

  reach:
    'Dateien, Taschen und andere Geräte behalten es, bis sie dieser Bestandsaufnahme wieder begegnen: Dann verschwindet es auch dort. Ordner und Post, an die Sie es gesandt haben, müssen Sie selbst bereinigen.',
  disk: 'Der Browser kann gelöschte Bytes im Speicher dieses Geräts liegen lassen, bis er aufräumt.',
  reason: 'Grund',
  reasonHint:
    'Bleibt in der Bestandsaufnahme, wenn alles andere fort ist: „hat darum gebeten“, „eine Passantin“. Ohne den Namen.',
  reasonMissing: 'Schreiben Sie, warum: Das ist alles, was bleibt.',
  ask: 'Endgültig löschen',
  askAgain: 'Wirklich löschen? Es lässt sich nicht rückgängig machen.',
  yes: 'Ja, jetzt löschen',
  busy: 'Wird gelöscht …',
  done: 'Gelöscht.',

  arriving: (n: number, photos: number) =>
    n === 1 && photos === 0
      ? 'Anderswo gelöscht: 1 Eintrag hier verschwindet endgültig'
      : `Anderswo gelöscht: ${entries(n)}${pictures(photos)} hier verschwinden endgültig`,
  arrivingWhat:
    'Das lässt sich nicht rückgängig machen, und der Import lässt sich danach nicht zurücknehmen. Warum gelöscht wurde:',
  arrivingTick: 'Auch hier löschen',
  arrivingRow: (n: number) =>
    n === 1 ? '1 Eintrag hier wurde anderswo gelöscht' : `${n} Einträge hier wurden anderswo gelöscht`,
  refused: (n: number) =>
    n === 1
      ? '1 Eintrag der Datei wurde früher aus dieser Bestandsaufnahme gelöscht und wird nicht angenommen.'
      : `${n} Einträge der Datei wurden früher aus dieser Bestandsaufnahme gelöscht und werden nicht angenommen.`,

  soFar: 'Aus der Bestandsaufnahme gelöscht',
  soFarRow: (what: string, day: string, reason: string) => `${what}, ${day}: ${reason}`,
  soFarOf: { name: 'Ein Name', photo: 'Ein Foto' },
};
