import { useEffect, useState } from 'react';
import type { PhotoFit, Point, Size } from '../../engine/photo';

/** Pixels across, at most: enough for a page, and far from what a canvas of a tablet holds. */
const widest = 1400;
/** The picture is bent in so many squares each way, each moved as a whole: between them it is off by less than a pixel. */
const squares = 24;

/**
 * A picture bent as a homography asks, as an object URL: an image in a drawing can be turned and stretched but not bent. Undefined while
 * it is worked out, and where this browser draws no pictures.
 */
export const useBent = (
  url: string | null | undefined,
  { through }: Pick<PhotoFit, 'through'>,
  ontoSize: Size,
): string | undefined => {
  const [bent, setBent] = useState<string>();
  const { width, height } = ontoSize;
  useEffect(() => {
    if (!url) return;
    let made: string | undefined;
    let left = false;
    drawBent(url, through, { width, height }).then(
      (blob) => {
        if (left || !blob) return;
        made = URL.createObjectURL(blob);
        setBent(made);
      },
      () => setBent(undefined),
    );
    return () => {
      left = true;
      setBent(undefined);
      if (made) URL.revokeObjectURL(made);
    };
  }, [url, through, width, height]);
  return bent;
};

const drawBent = async (url: string, through: PhotoFit['through'], onto: Size): Promise<Blob | null> => {
  const source = new Image();
  source.src = url;
  await source.decode();
  const canvas = document.createElement('canvas');
  canvas.width = Math.min(widest, onto.width);
  canvas.height = Math.round((canvas.width * onto.height) / onto.width);
  const pen = canvas.getContext('2d');
  if (!pen) return null;
  const at = (x: number, y: number): Point => {
    const [u, v] = through([x, y]);
    return [u * canvas.width, v * canvas.height];
  };
  for (let i = 0; i < squares; i++)
    for (let j = 0; j < squares; j++) drawSquare(pen, source, [i / squares, j / squares], at);
  return new Promise((resolve) => {
    canvas.toBlob(resolve);
  });
};

/** One square of the picture, its middle, its turn and its stretch as they are there. */
const drawSquare = (
  pen: CanvasRenderingContext2D,
  source: HTMLImageElement,
  [x, y]: Point,
  at: (x: number, y: number) => Point,
): void => {
  const side = 1 / squares;
  const [origin, right, below] = [at(x, y), at(x + side, y), at(x, y + side)];
  const { naturalWidth: wide, naturalHeight: high } = source;
  pen.setTransform(
    (right[0] - origin[0]) / (side * wide),
    (right[1] - origin[1]) / (side * wide),
    (below[0] - origin[0]) / (side * high),
    (below[1] - origin[1]) / (side * high),
    origin[0],
    origin[1],
  );
  // A pixel more each way closes the seams.
  const [w, h] = [Math.min(side * wide + 1.5, wide - x * wide), Math.min(side * high + 1.5, high - y * high)];
  pen.drawImage(source, x * wide, y * high, w, h, 0, 0, w, h);
};
