import { settingsKept } from './device/settingsKept';
import { notLoaded } from './words/notLoaded';
import { speakAs, tongueOf } from './words/speakAs';

const triedOnce = 'patina-round.begun again';

// Words are taken up as the files that hold them are read: the language comes before all the rest.
const { tongue, units } = settingsKept();
const chosen = tongueOf(tongue, units);
document.documentElement.lang = chosen.language;
speakAs(chosen)
  .then(() => import('./start'))
  .then(() => sessionStorage.removeItem(triedOnce))
  .catch(beginAgain);

/** A piece that did not come is asked for once more with the page; a page that is being left does nothing more. */
function beginAgain(): void {
  setTimeout(() => {
    if (sessionStorage.getItem(triedOnce) === null) {
      sessionStorage.setItem(triedOnce, 'yes');
      location.reload();
    } else document.getElementById('root')?.replaceChildren(notLoaded[chosen.language]);
  }, 500);
}
