import type { keeping as english } from '../en/keeping';
import type { Same } from '../tongue';

const some = (n: number): string => (n === 1 ? '1 Foto' : `${n} Fotos`);

export const keeping: Same<typeof english> = {
  title: 'Sicher aufbewahren',
  lead: 'Wie sicher die Einträge auf diesem Gerät liegen, und was dafür zu tun ist.',

  promise: 'Auf diesem Gerät',
  holds: (entries: string, photos: string, bytes: string) => `${entries}, ${photos}, ${bytes}.`,
  entries: (n: number, figure: string) => (n === 1 ? '1 Eintrag' : `${figure} Einträge`),
  photos: (n: number, figure: string) => (n === 1 ? '1 Foto' : `${figure} Fotos`),
  persisted: {
    yes: 'Der Browser hat zugesagt, alles zu behalten',
    no: 'Der Browser kann alles löschen',
    'not known': 'Dieser Browser sagt nicht, ob er alles behält',
  },
  persistedWhat: {
    yes: 'Er räumt es nicht von sich aus fort, wenn der Platz knapp wird. Mit einem verlorenen, defekten oder zurückgesetzten Gerät ist trotzdem alles verloren.',
    no: 'Er kann das tun, wenn der Platz knapp wird oder die App wochenlang nicht benutzt wurde. Installieren Sie die App, bitten Sie den Browser, alles zu behalten, und geben Sie die Bestandsaufnahme oft mit.',
    'not known': 'Installieren Sie die App, und geben Sie die Bestandsaufnahme oft mit.',
  },
  ask: 'Den Browser bitten, alles zu behalten',
  askedYes: 'Der Browser sagt zu, alles zu behalten.',
  askedNo: 'Der Browser sagt es nicht zu. Installieren Sie die App, und geben Sie die Bestandsaufnahme oft mit.',
  unencrypted: 'Alles liegt unverschlüsselt: Richten Sie auf diesem Gerät eine Bildschirmsperre ein.',

  askTitle: 'Soll der Browser behalten, was Sie eingegeben haben?',
  askWhat: 'Ungefragt kann er es löschen, wenn der Platz knapp wird.',
  askNotNow: 'Jetzt nicht',

  carried: 'Anderswo',
  carriedNever: 'Von diesem Gerät wurde noch nichts mitgegeben.',
  carriedNeverWhat:
    'Was nur auf einem Gerät liegt, ist mit ihm verloren. Geben Sie nach jedem Tag mit Rundgängen eine Tasche mit.',
  carriedAll: 'Jeder hier beendete Rundgang ist mitgegeben.',
  carriedSince: (n: number) =>
    n === 1 ? '1 Rundgang liegt nur auf diesem Gerät.' : `${n} Rundgänge liegen nur auf diesem Gerät.`,
  carriedSinceWhat: (day: string) =>
    `Sie wurden beendet oder geändert, nachdem zuletzt am ${day} alles mitgegeben wurde.`,
  carryDo: 'Mitgeben',
  carriedList: 'Was dieses Gerät verlassen hat',
  carriedRow: {
    bag: (entries: string, photos: string) => `Tasche, ${entries}, ${photos}`,
    survey: (entries: string) => `Bestandsdatei, ${entries}, ohne Fotos`,
    step: (entries: string) => `mit einem Ordner abgeglichen, ${entries}`,
  },
  carriedSome: (n: number) => (n === 1 ? 'nur eine Skulptur' : `nur ${n} Skulpturen`),

  through: 'Durchgesehen',
  throughLead:
    'Jeder Eintrag wird gezählt, jeder jetzige Stand gegen seine Einträge gehalten und jedes Foto mit der Prüfsumme verglichen, die beim Speichern genommen wurde. Das ändert nichts und geschieht einmal im Monat von selbst.',
  throughNever: 'Noch nicht durchgesehen.',
  throughDo: 'Alles durchsehen',
  throughUnderWay: 'Alles wird durchgesehen',
  throughOn: (day: string) => `Durchgesehen am ${day}`,
  sound: (entries: string, photos: string) => `${entries} und ${photos}: alles unversehrt.`,
  missing: (n: number) =>
    n === 1
      ? '1 Foto ist genannt und nicht hier. Das ist kein Fehler: Es liegt auf einem anderen Gerät oder in einer Tasche.'
      : `${n} Fotos sind genannt und nicht hier. Das ist kein Fehler: Sie liegen auf einem anderen Gerät oder in einer Tasche.`,
  anewTitle: 'Was gezeigt wird, kann falsch sein; was eingegeben wurde, ist da',
  anewWhat:
    'Geben Sie zur Sicherheit zuerst die Bestandsaufnahme mit. Stellen Sie dann das Gezeigte aus den Einträgen neu her.',
  anewDo: 'Aus den Einträgen neu herstellen',
  anewDone: 'Neu hergestellt.',
  lostTitle: 'Einträge fehlen oder sind nicht die, die gespeichert wurden',
  lostWhat:
    'Geben Sie die Bestandsaufnahme jetzt mit und bewahren Sie diese Datei auf. Holen Sie dann Ihre letzte Tasche herein: Was fehlt, kommt aus ihr zurück. Zählen Sie dann neu.',
  altered: (n: number) =>
    n === 1
      ? '1 Foto ist nicht mehr so, wie es gespeichert wurde'
      : `${n} Fotos sind nicht mehr so, wie sie gespeichert wurden`,
  alteredWhat:
    'Das Gerät hat sie beschädigt. Legen Sie sie beiseite, und holen Sie dann die letzte Tasche herein, die sie enthält: Sie kommen unversehrt zurück. Was dazu gesagt ist, bleibt.',
  alteredDo: 'Beiseitelegen',
  alteredDone: (n: number) =>
    n === 1
      ? '1 beschädigtes Foto ist beiseitegelegt. Holen Sie die Tasche herein, die es enthält.'
      : `${n} beschädigte Fotos sind beiseitegelegt. Holen Sie die Tasche herein, die sie enthält.`,
  stray: (n: number) =>
    n === 1 ? 'Hier liegt 1 Foto, das nirgends genannt ist' : `Hier liegen ${n} Fotos, die nirgends genannt sind`,
  strayWhat: 'Übrig von abgebrochener Arbeit. Nichts zeigt sie, und keine Tasche nimmt sie mit.',
  strayDo: 'Wegräumen',
  strayDone: (n: number) => (n === 1 ? '1 Foto ist weggeräumt.' : `${n} Fotos sind weggeräumt.`),
  carryIn: 'Tasche hereinholen',

  room: 'Platz schaffen',
  roomLead:
    'Fotos brauchen den meisten Platz. Sie dürfen dieses Gerät verlassen, sobald Sie die Tasche geöffnet haben, die sie enthält, und jedes darin unversehrt gefunden wurde. Was Sie dazu gesagt haben, und ein kleines Bild, bleiben.',
  roomNone: 'Hier liegen keine Fotos, die gehen könnten.',
  roomNoneOlder: 'Hier liegen keine Fotos früherer Rundgänge.',
  roomWorks: 'Fotos welcher Werke',
  roomWhich: 'Welche davon',
  roomOlder: 'Die früherer Rundgänge',
  roomOlderWhat: 'Was beim letzten Rundgang aufgenommen wurde, bleibt zum Vergleichen.',
  roomAll: 'Alle',
  roomAllWhat:
    'Nichts lässt sich vergleichen oder messen, bis sie wieder hereingeholt sind. Bilder von Ansichten bleiben.',
  roomOf: (photos: string, bytes: string) => `${photos}, ${bytes}`,
  roomChosen: (photos: string, bytes: string) => `Gewählt: ${photos}, ${bytes}.`,
  roomOpen: 'Die Tasche öffnen, die sie enthält',
  roomChecking: 'Jedes Foto in der Tasche wird geprüft',
  roomHolds: (n: number, of: number) =>
    n === of
      ? of === 1
        ? 'Die Tasche enthält das eine Foto, und es ist unversehrt'
        : `Die Tasche enthält alle ${of}, und jedes ist unversehrt`
      : n === 1
        ? `Die Tasche enthält 1 der ${of}, und es ist unversehrt`
        : `Die Tasche enthält ${n} der ${of}, und jedes ist unversehrt`,
  roomHoldsNone: (bag: string) => `${bag} enthält keines davon`,
  roomStay: (n: number) => (n === 1 ? '1 ist nicht darin und bleibt.' : `${n} sind nicht darin und bleiben.`),
  roomKeep: 'Bewahren Sie diese Tasche an zwei Orten auf: Diese Fotos sind dann nirgends sonst.',
  roomDo: (n: number) => `${some(n)} von diesem Gerät nehmen`,
  roomGoing: 'Sie werden vom Gerät genommen',
  roomDone: (photos: string, bytes: string) => `Vom Gerät genommen: ${photos}. Frei geworden: ${bytes}.`,
  roomLeave: 'Hier lassen',

  installFirst: {
    title: 'Zuerst installieren',
    why: 'Im Browser löscht ein iPad, was hier eingegeben wurde, sobald die Seite eine Woche lang nicht benutzt wurde. Die installierte App ist davon verschont, und was im Browser eingegeben wurde, zieht nicht mit um.',
    steps: [
      'Tippen Sie auf „Teilen“, das Quadrat mit dem Pfeil.',
      'Tippen Sie auf „Zum Home-Bildschirm“, dann auf „Hinzufügen“.',
      'Schließen Sie diese Seite und öffnen Sie Patina Round vom Home-Bildschirm.',
    ],
    shallInstall: 'Ich installiere sie zuerst',
    allTheSame: 'Trotzdem im Browser weitermachen',
    allTheSameWhat: 'Zum Ansehen ist das in Ordnung. Geben Sie die Bestandsaufnahme noch am selben Tag mit.',
  },

  faultsFound: 'Bei der Durchsicht dieses Geräts wurde etwas gefunden',
  faultsFoundWhat: 'Sehen Sie, was es ist und was zu tun ist.',
  toKeeping: 'Ansehen',
};
