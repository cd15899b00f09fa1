/** Slanted lines, so that a band shows in grey and to every eye. */
export function Hatch({ id, dense = false }: { readonly id: string; readonly dense?: boolean }) {
  const step = dense ? 5 : 8;
  return (
    <pattern id={id} width={step} height={step} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect width={step} height={step} className="hatch-ground" />
      <line x1="0" y1="0" x2="0" y2={step} className="hatch-line" />
    </pattern>
  );
}
