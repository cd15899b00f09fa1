import type { helpCarry as english } from '../en/helpCarry';
import type { Same } from '../tongue';

export const helpCarry: Same<typeof english> = {
  carry: {
    title: 'Mitgeben',
    what: 'Die eine Tür hinaus und herein. Hinaus: eine Tasche zum Aufheben, eine kleine Datei für ein anderes Gerät oder eine Tabelle. Herein: eine Datei von einem anderen Gerät, gezeigt, bevor etwas übernommen wird.',
    first:
      'Nach einem Tag mit Rundgängen: Bestandsaufnahme und Fotos wählen, vorbereiten, anderswo ablegen. Sehen Sie nach, was laut Liste noch darin ist, bevor Sie sie aus der Hand geben.',
    from: 'Werden zwei Bestandsaufnahmen vereint, bleibt jeder Eintrag beider erhalten, in welcher Reihenfolge sie auch zusammenkommen.',
  },
  'carry-settle': {
    title: 'Zwei Fassungen klären',
    what: 'Wo zwei Personen dasselbe festgehalten haben, ohne einander zu sehen. Beides bleibt; jede Zahl, die darauf beruht, sagt es.',
    first:
      'Gehen Sie die verschiedenen Felder durch und sagen Sie, was gilt. Im Zweifel lassen Sie es und sehen gemeinsam am Werk nach.',
    from: 'Keine Uhr entscheidet. Bis zur Klärung führt die längere Reihe von Berichtigungen, dann der schlimmere Befund.',
  },
  'carry-bring': {
    title: 'Einlesen, was Sie haben',
    what: 'Behandlungslisten, alte Fotos und frühere Berichte, Zeile für Zeile in die Daten übernommen.',
    first:
      'Nehmen Sie zuerst die Liste der Wachstage: Sie ergibt sofort Standzeiten. Speichern Sie die Tabelle als CSV und wählen Sie sie.',
    from: 'Nichts wird übernommen, bevor Sie die Zeile gesehen haben. Tage bleiben so ungenau, wie sie dastehen.',
  },
  'carry-in-step': {
    title: 'Abgleichen',
    what: 'Ein gemeinsamer Ordner, über den mehrere Geräte dieselbe Bestandsaufnahme haben. Ausgeschaltet, bis Sie es einschalten.',
    first:
      'Lassen Sie sich Namen und Passwort von der Person geben, die den Server betreut, oder wählen Sie einen Ordner, den ein anderes Programm auf mehreren Geräten gleich hält. Probieren Sie es mit zwei Geräten am Schreibtisch.',
    from: 'Jedes Gerät schreibt nur eigene Dateien und liest die der anderen.',
  },
};
