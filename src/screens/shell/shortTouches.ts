/** A finger stays longer on the glass than a drop; milliseconds, from the design of the field. */
export const shortestTouch = 60;

/** While it holds, what a touch shorter than that would have pressed is not pressed. Mouse, pen and keys are let through. */
export const ignoreShortTouches = (): (() => void) => {
  const down = new Map<number, number>();
  const lasted = new Map<number, number>();
  const begin = (e: PointerEvent) => void down.set(e.pointerId, e.timeStamp);
  const end = (e: PointerEvent) => {
    const from = down.get(e.pointerId);
    if (from !== undefined) lasted.set(e.pointerId, e.timeStamp - from);
    down.delete(e.pointerId);
  };
  const click = (e: MouseEvent) => {
    const { pointerId, pointerType } = e as PointerEvent;
    if (pointerType !== 'touch') return;
    const ms = lasted.get(pointerId);
    lasted.delete(pointerId);
    if (ms === undefined || ms >= shortestTouch) return;
    e.preventDefault();
    e.stopImmediatePropagation();
  };
  document.addEventListener('pointerdown', begin, true);
  document.addEventListener('pointerup', end, true);
  document.addEventListener('click', click, true);
  return () => {
    document.removeEventListener('pointerdown', begin, true);
    document.removeEventListener('pointerup', end, true);
    document.removeEventListener('click', click, true);
  };
};
