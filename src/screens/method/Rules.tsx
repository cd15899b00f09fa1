/** Rules as sentences. */
export function Rules({ rules }: { readonly rules: readonly string[] }) {
  return (
    <ul className="rules">
      {rules.map((rule) => (
        <li key={rule}>{rule}</li>
      ))}
    </ul>
  );
}
