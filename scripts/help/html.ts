/** Text that may stand inside markup and attributes. */
export const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

export interface HelpPage {
  readonly file: string; // "velocity.html"
  readonly title: string;
  readonly lead: string; // one sentence, as text
  readonly body: string; // markup
}

/** A whole page: no script, nothing from elsewhere, readable with styles off and on paper. */
export const wholePage = ({ title, lead, body }: HelpPage): string => `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'; img-src 'self' data:" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <meta name="referrer" content="no-referrer" />
    <title>${escaped(title)} · Duct Ledger help</title>
    <link rel="icon" href="data:," />
    <link rel="stylesheet" href="help.css" />
  </head>
  <body>
    <a class="skip" href="#content">To the text</a>
    <nav aria-label="Help">
      <a href="index.html">Duct Ledger help</a>
      <a href="index.html#functions">Functions</a>
      <a href="index.html#tables">Tables</a>
      <a href="checks.html">How the numbers are checked</a>
      <a href="cautions.html">Cautions</a>
      <a href="install.html">Install</a>
    </nav>
    <main id="content">
      <h1>${escaped(title)}</h1>
      <p class="lead">${escaped(lead)}</p>
${body}
    </main>
    <footer>
      <p>A computed number is a help to judgement. Local codes and licensed practice decide.</p>
    </footer>
  </body>
</html>
`;

export const section = (heading: string, body: string, id?: string): string =>
  `<section${id === undefined ? "" : ` id="${id}"`}><h2>${escaped(heading)}</h2>${body}</section>`;

export const paragraph = (text: string): string => `<p>${escaped(text)}</p>`;

export const list = (items: readonly string[]): string =>
  `<ul>${items.map((item) => `<li>${escaped(item)}</li>`).join("")}</ul>`;

/** A table that can be scrolled sideways by keyboard where a phone is too narrow for it. */
export function table(
  caption: string,
  headers: readonly string[],
  rows: readonly (readonly (string | Markup)[])[],
): string {
  const cell = (content: string | Markup, tag: string): string =>
    `<${tag}${tag === "th" ? ' scope="col"' : ""}>${typeof content === "string" ? escaped(content) : content.markup}</${tag}>`;
  return [
    `<div class="wide" role="region" aria-label="${escaped(caption)}" tabindex="0"><table><caption>${escaped(caption)}</caption>`,
    `<thead><tr>${headers.map((header) => cell(header, "th")).join("")}</tr></thead>`,
    `<tbody>${rows.map((row) => `<tr>${row.map((content) => cell(content, "td")).join("")}</tr>`).join("\n")}</tbody>`,
    "</table></div>",
  ].join("\n");
}

/** Content that is markup already, such as a link or mathematics. */
export interface Markup {
  readonly markup: string;
}

export const link = (address: string, text: string): Markup => ({
  markup: `<a href="${escaped(address)}">${escaped(text)}</a>`,
});

export const code = (text: string): Markup => ({ markup: `<code>${escaped(text)}</code>` });
