import { StoreProblem } from '../storeProblem';
import type { BagAnswer, BagAnswers, BagAsks, BagPost, BagSaid, BagStep } from './asked';

/** What a worker has of the world: how it hears, and how it says. */
export interface Beside {
  post(said: BagSaid): void;
  listen(hear: (post: BagPost) => void): void;
}

/** Answers the one question of this worker's life; the page ends it after that. */
export const serve = (answers: BagAnswers, beside: Beside = thisWorker): void => {
  const leaving = new AbortController();
  beside.listen((post) => {
    if ('leaveOff' in post) return leaving.abort();
    const answer = answers[post.question] as BagAnswer<keyof BagAsks> | undefined;
    if (!answer) return beside.post({ failed: `no answer to ${post.question}` });
    const way = {
      heard: (step: BagStep) => beside.post({ step }),
      part: (rows: readonly unknown[]) => beside.post({ part: rows }),
      signal: leaving.signal,
    };
    answer(post.asked, way).then(
      (told) => beside.post({ told }),
      (error: unknown) => {
        if (leaving.signal.aborted) beside.post({ leftOff: true });
        else beside.post(error instanceof StoreProblem ? { problem: error.reason } : { failed: String(error) });
      },
    );
  });
};

const thisWorker: Beside = {
  post: (said) => postMessage(said),
  listen: (hear) => addEventListener('message', ({ data }: MessageEvent<BagPost>) => hear(data)),
};
