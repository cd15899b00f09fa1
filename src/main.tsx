import { settingsKept } from './device/settingsKept';
import { speakAs, tongueOf } from './words/speakAs';

// Words are taken up as the files that hold them are read: the language comes before all the rest.
const { tongue, units } = settingsKept();
const chosen = tongueOf(tongue, units);
document.documentElement.lang = chosen.language;
void speakAs(chosen).then(() => import('./start'));
