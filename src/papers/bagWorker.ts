/** The worker: first the language it was named with, then the work; what is asked meanwhile waits. */
import { speakAs, tongueOf } from '../words/speakAs';

const waiting: unknown[] = [];
const keep = ({ data }: MessageEvent) => void waiting.push(data);
addEventListener('message', keep);

const [tongue, units] = self.name.split(' ');
void speakAs(tongueOf(tongue, units))
  .then(() => import('./bagWork'))
  .then(() => {
    removeEventListener('message', keep);
    for (const data of waiting) dispatchEvent(new MessageEvent('message', { data }));
  });
