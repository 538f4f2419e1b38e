const EITHER_WAY = /^[-+]?[1-9]\d{0,2}([.,])\d{3}$/;

/** What digits may mean that can be read in two ways, as 1.200 or 1,200; null for every other text. */
export function eitherWay(
  text: string,
): { readonly sign: string; readonly large: number; readonly small: number } | null {
  const [digits, sign] = EITHER_WAY.exec(text.trim()) ?? [];
  if (digits === undefined || sign === undefined) return null;
  return { sign, large: Number(digits.replace(sign, "")), small: Number(digits.replace(sign, ".")) };
}
