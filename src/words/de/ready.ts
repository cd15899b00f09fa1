import type { ready as english } from '../en/ready';
import { bytes, date } from '../format';
import type { Same } from '../tongue';

type Found = Readonly<Record<string, string | number>>;

/** Die Prüfung vor einem Tag im Freien. */
export const ready: Same<typeof english> = {
  title: 'Bereit fürs Gelände',
  lead: 'Worauf ein Tag im Freien beruht, angesehen, bevor Sie gehen. Verändert wird dabei nichts.',
  back: 'Zurück zu den Skulpturen',
  link: 'Bereit fürs Gelände?',
  do: 'Dieses Tablet prüfen',
  again: 'Noch einmal prüfen',
  what: 'Es dauert einige Sekunden. Der Browser fragt vielleicht, ob die Kamera benutzt werden darf: Erlauben Sie es, damit er nicht auf der Leiter fragt.',
  underWay: (done: number, all: number) => `Prüfung läuft: ${done} von ${all}`,
  trial: (kept: number, of: number) => `Probeweise geschrieben: ${bytes(kept)} von ${bytes(of)}`,
  result: (ok: number, look: number, unknown: number) =>
    [
      look === 0 ? 'Nichts nachzusehen' : look === 1 ? '1 Punkt nachzusehen' : `${look} Punkte nachzusehen`,
      `${ok} in Ordnung`,
      ...(unknown > 0
        ? [unknown === 1 ? '1, den der Browser nicht verrät' : `${unknown}, die der Browser nicht verrät`]
        : []),
    ].join(', '),
  list: 'Was gefunden wurde',
  state: { ok: 'In Ordnung', look: 'Bitte nachsehen', unknown: 'Nicht feststellbar' },
  about: {
    offline: 'Ohne Netz',
    installed: 'Auf dem Home-Bildschirm',
    room: 'Platz für Fotos',
    promise: 'Vom Browser behalten',
    elsewhere: 'Eine zweite Kopie',
    camera: 'Kamera',
    clock: 'Uhr',
    awake: 'Bildschirm bleibt an',
    battery: 'Akku',
    person: 'Wer arbeitet',
    round: 'Begonnener Rundgang',
  },
  found: {
    'offline: kept': (p: Found) =>
      `Alle ${p.files} Dateien der App liegen auf diesem Tablet. Sie öffnet sich ohne Netz.`,
    'offline: some missing': (p: Found) =>
      `${p.kept} von ${p.all} Dateien liegen hier. Laden Sie die Seite mit Netz noch einmal und prüfen Sie erneut.`,
    'offline: no worker': (_: Found) =>
      'Die App liegt noch nicht auf dem Gerät. Laden Sie die Seite mit Netz noch einmal, warten Sie eine Minute und prüfen Sie erneut.',
    'offline: not secure': (_: Found) =>
      'Diese Adresse ist nicht gesichert (kein https), darum behält kein Browser die App. Öffnen Sie sie unter einer gesicherten Adresse.',
    'offline: silent': (_: Found) =>
      'Der Browser hat nicht geantwortet. Schalten Sie das Netz ab und laden Sie die Seite: Öffnet sie sich, dann auch draußen.',
    'installed: yes': (_: Found) => 'Vom Home-Bildschirm geöffnet.',
    'installed: in a tab': (_: Found) =>
      'In einem Browser-Tab geöffnet. Legen Sie die App auf einem Tablet auf den Home-Bildschirm: Manche Browser löschen die Daten eines Tabs nach einer Woche ohne Benutzung.',
    'room: enough': (p: Found) =>
      `${bytes(Number(p.trial))} wurden probeweise geschrieben und wieder entfernt: Platz für mindestens ${p.photos} Fotos. Die Daten belegen nach eigener Zählung ${bytes(Number(p.bytes))}.`,
    'room: full': (p: Found) =>
      `Das Tablet nahm probeweise nur ${bytes(Number(p.kept))} auf. Geben Sie eine Tasche mit und nehmen Sie frühere Fotos vom Gerät, oder schaffen Sie auf dem Tablet Platz. Die Daten belegen ${bytes(Number(p.bytes))}.`,
    'room: not tried': (p: Found) =>
      `Die Probe wurde verweigert (${p.said}). Die Daten belegen ${bytes(Number(p.bytes))}. Sehen Sie nach, was die Einstellungen des Tablets als frei angeben.`,
    'promise: yes': (_: Found) => 'Der Browser hat zugesagt, sie bei knappem Platz nicht zu löschen.',
    'promise: no': (_: Found) => 'Der Browser kann sie bei knappem Platz löschen. Bitten Sie ihn, sie zu behalten.',
    'promise: not told': (_: Found) =>
      'Dieser Browser sagt es nicht. Geben Sie die Bestandsaufnahme nach jedem Tag mit.',
    'elsewhere: nothing here': (_: Found) => 'Hier ist noch nichts eingetragen, es kann nichts verloren gehen.',
    'elsewhere: never': (_: Found) => 'Alles liegt nur auf diesem Tablet. Geben Sie eine Tasche mit, bevor Sie gehen.',
    'elsewhere: behind': (p: Found) =>
      `${p.rounds === 1 ? '1 Rundgang liegt' : `${p.rounds} Rundgänge liegen`} nur auf diesem Tablet; die letzte Kopie ist vom ${date(String(p.day))}. Geben Sie eine Tasche mit, bevor Sie gehen.`,
    'elsewhere: all': (p: Found) =>
      `Jeder hier abgeschlossene Rundgang wurde mitgegeben, zuletzt am ${date(String(p.day))}.`,
    'camera: opens': (_: Found) => 'Sie öffnet sich auf der Seite.',
    'camera: not allowed': (_: Found) =>
      'Die Seite darf sie nicht benutzen. „Foto aufnehmen“ öffnet weiterhin die Kamera des Tablets; für den Sucher erlauben Sie sie in den Einstellungen des Browsers.',
    'camera: none': (_: Found) =>
      'Dieses Gerät hat keine, die der Browser kennt. Nehmen Sie ein anderes Tablet, oder fotografieren Sie getrennt.',
    'camera: not on the page': (_: Found) =>
      'Dieser Browser zeigt keine auf der Seite. Berühren Sie einmal „Foto aufnehmen“ und sehen Sie nach, ob sich die Kamera des Tablets öffnet.',
    'camera: busy': (p: Found) =>
      `Sie hat sich nicht geöffnet (${p.said}). Schließen Sie, was sie sonst benutzt, oder starten Sie das Tablet neu, und prüfen Sie erneut.`,
    'clock: as it says': (p: Found) =>
      `Sie zeigt ${date(String(p.day))}, ${p.time} Uhr. Vergleichen Sie mit einer anderen Uhr.`,
    'clock: out of step': (p: Found) =>
      `Sie zeigt ${date(String(p.today))}, und der letzte Eintrag hier ist vom ${date(String(p.day))}. Stellen Sie die Uhr des Tablets.`,
    'awake: yes': (_: Found) => 'Auf den Seiten des Rundgangs wird er nicht dunkel.',
    'awake: refused': (_: Found) =>
      'Der Browser hat es verweigert, wie bei schwachem Akku. Laden Sie, oder stellen Sie das Tablet so ein, dass es lange an bleibt.',
    'awake: cannot': (_: Found) =>
      'Dieser Browser kann ihn nicht anlassen. Stellen Sie am Tablet die Zeit bis zum Abschalten des Bildschirms so lang wie möglich ein.',
    'battery: enough': (p: Found) => `Zu ${p.percent} % geladen.`,
    'battery: filling': (p: Found) => `${p.percent} %, wird geladen. Lassen Sie ihn am Kabel, bis Sie gehen.`,
    'battery: low': (p: Found) =>
      `${p.percent} %. Laden Sie, oder nehmen Sie eine Powerbank mit: Die Kälte nimmt etwas davon.`,
    'battery: not told': (_: Found) =>
      'Dieser Browser sagt es nicht. Sehen Sie auf die Anzeige des Tablets; 70 % reichen für einen Tag.',
    'person: set': (p: Found) => `${p.role}. Jeder Eintrag trägt diese Angabe.`,
    'person: nobody set': (_: Found) => 'Niemand. Sagen Sie, wer es ist: Der Rundgang trägt diese Angabe.',
    'person: nobody named': (_: Found) =>
      'Auf diesem Tablet ist niemand benannt. Fügen Sie hinzu, wer untersucht, nach Funktion.',
    'round: none open': (_: Found) => 'Keiner ist offen.',
    'round: open': (p: Found) => `${p.title}, ${date(String(p.day))}. Er geht dort weiter, wo er aufhörte.`,
    'round: of another': (p: Found) =>
      `${p.title}, ${date(String(p.day))}, hat ${p.role} begonnen; jetzt arbeitet jemand anderes. Ändern Sie, wer arbeitet, oder beginnen Sie einen eigenen Rundgang.`,
  },
  act: {
    promise: 'Den Browser bitten, sie zu behalten',
    room: 'Platz schaffen',
    carry: 'Mitgeben',
    person: 'Sagen, wer arbeitet',
    round: 'Zur ersten Seite',
  },
  asked: { yes: 'Der Browser sagt zu, sie zu behalten.', no: 'Der Browser sagt es nicht zu.' },
  hold: 'Wie Sie halten und sehen',
  holdWhat: (theme: string, hand: string, gloves: boolean, wet: boolean) =>
    [
      theme,
      `mit der ${hand} Hand bedient`,
      gloves ? 'große Tasten für Handschuhe' : 'Tasten für bloße Hände',
      ...(wet ? ['nasses Glas'] : []),
    ].join(', '),
  holdHand: { left: 'linken', right: 'rechten' },
  holdTo: 'In den Einstellungen ändern',
  cold: 'Unter null Grad geht ein Tablet mitunter bei 30 % aus und warm wieder an; in voller Sonne wird es dunkler. Halten Sie es unter dem Mantel und im Schatten. Jede Berührung wird sofort gespeichert, und die App öffnet sich dort, wo sie aufhörte.',
};
