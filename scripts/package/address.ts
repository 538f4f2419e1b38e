/** The address that a package is made for, without a slash at its end, or one sentence about what is wrong with it. */
export function readAddress(text: string | undefined): { readonly address: string } | { readonly why: string } {
  if (text === undefined || text.trim() === "")
    return { why: "Say where the files will stand: npm run package -- --url https://example.org/duct" };
  let url: URL;
  try {
    url = new URL(text.trim());
  } catch {
    return { why: `“${text}” is no address; it must look like https://example.org/duct` };
  }
  if (url.protocol !== "https:") return { why: `Excel loads add-ins from https only; “${text}” begins otherwise` };
  if (url.search !== "" || url.hash !== "" || url.username !== "" || url.password !== "")
    return { why: "The address may hold a host and a folder only: no user, no question mark, no #" };
  return { address: `${url.origin}${url.pathname}`.replace(/\/+$/, "") };
}
