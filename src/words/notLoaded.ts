import type { Tongue } from './tongue';

/** Said where a part of the app itself cannot be read: before any other words are there. */
export const notLoaded: Readonly<Record<Tongue['language'], string>> = {
  en: 'Patina Round could not be loaded whole. Nothing you entered is lost. Connect this tablet to a network once and open this page again.',
  de: 'Patina Round konnte nicht ganz geladen werden. Nichts, was Sie eingegeben haben, ist verloren. Verbinden Sie dieses Tablet einmal mit einem Netz und öffnen Sie diese Seite wieder.',
};
