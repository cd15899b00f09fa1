import type { Question } from '../../src/actions';

/** What a question answers once it has been read. */
export const answered = <T>(question: Question<T>): Promise<T> =>
  new Promise((tell) => {
    let stop: (() => void) | undefined;
    const look = () => {
      const value = question.get();
      if (value === undefined) return;
      stop?.();
      tell(value);
    };
    stop = question.subscribe(look);
    look();
  });
