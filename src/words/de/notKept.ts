import type { notKept as english } from '../en/notKept';
import type { Same } from '../tongue';

export const notKept: Same<typeof english> = {
  back: (day, time) => `Noch nicht gespeichert: Ihre Eingaben vom ${day}, ${time} Uhr sind wieder da.`,
  discard: 'Verwerfen',
  discarded: 'Verworfen. Das Formular ist wie zuvor.',
  bringBack: 'Zurückholen',
  notHeld: 'Was Sie hier eingeben, geht verloren, wenn Sie vor dem Speichern weggehen.',
  title: 'Eingegeben und nicht gespeichert',
  lead: 'Formulare, die vor dem Speichern verlassen wurden. Die Eingaben liegen nur auf diesem Gerät und kommen in keine Datei.',
  discardedRow: (title) => `Verworfen: ${title}.`,
  row: (day, time) => `${day}, ${time} Uhr`,
  open: (title) => `Zu „${title}“`,
  discardOf: (title) => `Verwerfen: ${title}`,
  again: 'Öffnen Sie dort das Formular wieder: Es ist so ausgefüllt, wie Sie es verlassen haben.',
};
