/** How people write a currency beside an amount: its code, or the sign for it. The invented garden's is a dollar of no country. */
const signOf = (currency: string): string =>
  currency === 'XXX'
    ? '$'
    : (new Intl.NumberFormat('en', { style: 'currency', currency, currencyDisplay: 'narrowSymbol' })
        .formatToParts(0)
        .find(({ type }) => type === 'currency')?.value ?? currency);

/** An amount without its own currency before or after it. Another currency stays, and makes it no amount. */
export const withoutCurrency = (text: string, currency: string): string => {
  if (/^[\d.,' -]*$/.test(text)) return text;
  for (const name of [currency, signOf(currency)]) {
    const [small, sought] = [text.toLowerCase(), name.toLowerCase()];
    if (small.startsWith(sought)) return text.slice(sought.length).trim();
    if (small.endsWith(sought)) return text.slice(0, -sought.length).trim();
  }
  return text;
};
