import { useEffect, useRef, useState } from 'react';
import { w } from '../../words';
import { Button } from '../parts';
import { Fold } from '../parts/Fold';

const words = w.method;

const goTo = (heading: HTMLElement) => {
  heading.tabIndex = -1;
  heading.focus({ preventScroll: true });
  heading.scrollIntoView();
};

/** The headings of this page, to go to. No links: addresses of this app say which screen is shown. */
export function Contents() {
  const here = useRef<HTMLElement>(null);
  const [headings, setHeadings] = useState<readonly HTMLElement[]>([]);
  useEffect(() => setHeadings([...(here.current?.parentElement?.querySelectorAll('h2') ?? [])]), []);
  return (
    <nav ref={here} aria-label={words.contents} className="not-printed">
      <Fold show={words.contents} hide={words.contentsHide}>
        <ul className="bare contents">
          {headings.map((heading) => (
            <li key={heading.textContent}>
              <Button kind="quiet" onClick={() => goTo(heading)}>
                {heading.textContent}
              </Button>
            </li>
          ))}
        </ul>
      </Fold>
    </nav>
  );
}
