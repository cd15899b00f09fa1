/** How the tablet is held: degrees it leans to the side, clockwise as seen by the one who holds it; 0 is level. */
export type Lean = number;

/** Some browsers ask the person first, and only from a touch. */
interface AskedFirst {
  requestPermission?(): Promise<'granted' | 'denied'>;
}

/** Whether the page may hear how the tablet is held; to be called from a touch. */
export const mayFeelLevel = async (): Promise<boolean> => {
  const { DeviceOrientationEvent: feels } = globalThis as { DeviceOrientationEvent?: AskedFirst };
  if (!feels) return false;
  if (!feels.requestPermission) return true;
  return (await feels.requestPermission().catch(() => 'denied')) === 'granted';
};

/** Tells how the tablet leans until the returned function is called. Tells nothing where it has no such sense. */
export const feelLevel = (heard: (lean: Lean) => void): (() => void) => {
  const felt = ({ beta, gamma }: DeviceOrientationEvent) => {
    if (beta === null || gamma === null) return;
    heard(leanOf(beta, gamma, globalThis.screen?.orientation?.angle ?? 0));
  };
  addEventListener('deviceorientation', felt);
  return () => removeEventListener('deviceorientation', felt);
};

/**
 * From the angles of the Device Orientation specification (intrinsic Z-X'-Y'', degrees): where down lies on the glass, turned
 * back by how the page is turned (Screen Orientation: 90 once the tablet is turned left). Held flat there is no side to lean
 * to, and it is told as level.
 */
export const leanOf = (beta: number, gamma: number, turned: number): Lean => {
  const radians = Math.PI / 180;
  // Gravity in the axes of the tablet: x to its right, y to its top.
  const x = Math.cos(beta * radians) * Math.sin(gamma * radians);
  const y = -Math.sin(beta * radians);
  if (Math.hypot(x, y) < 0.2) return 0;
  const lean = Math.atan2(x, -y) / radians + turned;
  return ((((lean + 180) % 360) + 360) % 360) - 180;
};
