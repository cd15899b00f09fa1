import type { tour as english } from '../en/tour';
import type { Same } from '../tongue';

export const tour: Same<typeof english> = {
  label: 'Führung durch den Garten',
  at: (step: string, all: string) => `${step} von ${all}`,
  goThere: 'Zeigen',
  next: 'Weiter',
  back: 'Zurück',
  leave: 'Führung beenden',
  end: 'Fertig',
  left: 'Die Führung ist zu Ende. Sie wartet auf der ersten Seite und in der Hilfe.',
  begin: 'Führung in fünf Minuten',
  goOn: 'Führung fortsetzen',
  steps: {
    works: 'Sechs Bronzen, sechs Jahre. Was am meisten braucht, steht oben: die Treppe; die Gänse brauchen nichts.',
    blink:
      'Die Treppe von einem Standpunkt, dieses Jahr auf das letzte gelegt. Tippen Sie auf „Wechseln“: Was sich bewegt, ist grün. „Alle Jahre in einer Reihe“ zeigt sechs.',
    sure: 'Ist die Treppe schlechter geworden? Bei einem Befund ja, fünfzehn sind ohne sichere Veränderung. Tippen Sie auf „Seit dem ersten Rundgang“.',
    holds:
      'Wie lange jedes Wachs das Grün fernhielt. Die Balken wirken von Jahr zu Jahr kürzer, bewiesen ist das nicht.',
    water: 'Woher das Grün kommt: Pfeile zeigen, wie das Wasser vom Hut über Schulter und Mantel läuft.',
    broken:
      'Mahl im Licht von fünf Linsen wurde 2023 bis aufs Metall freigelegt. Dort bricht die Linie: Vorher und Nachher sind nicht eine Geschichte.',
    heat: 'Zwei Linsen konnten vor der Hitze nicht heraus: eine Grenze, ein Schutz und die Messwerte des Tages.',
    colour: 'Der vereinbarte Farbton, unterschrieben von denen, die es dürfen, und was ein Messgerät heute dazu sagt.',
    due: 'Was einen Tag verlangt: ein Blick vor dem Ende der Gewährleistung und ein Grund, neu zu entscheiden.',
    geese:
      'Die Gänse: in sechs Rundgängen kein Trend, nichts zu tun. Der offene Punkt ist ein Jahr, in dem niemand eine der Zonen erreichte.',
    eyes: 'Seil und Geduld: 2024 sah jemand anderes hin. Das Zeichen sagt, dass ein Teil des Sprungs am Auge liegen kann.',
    cause:
      'Schlafende Fluke: Der Regner wurde im Juli 2023 versetzt. Seither geht der Kalkbelag zurück, ohne Behandlung.',
    board: 'Für den Vorstand: was für die Treppe spricht, zuerst in Quadratmetern, und was dagegen, gleich daneben.',
    bidders: 'Für Bieter: neun Positionen, für alle gleich, mit den Mengen, nach denen sie rechnen.',
    successor: 'Für alle, die nach Ihnen kommen: ein Brief aus offenen Sorgen und aus Entscheidungen, nichts zu tun.',
    bag: 'Zum Mitgeben: eine Tasche mit Daten, Fotos und Papieren, geprüft, bevor sie das Haus verlässt. Das ist alles.',
  },
};
