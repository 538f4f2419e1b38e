/** What the content policy of the pane in Excel lets office.js do: what it was seen to need, and nothing else. */
import { servedPane } from "./panePage";

const OFFICE = "https://appsforoffice.microsoft.com";
const AJAX = "https://ajax.aspnetcdn.com/ajax";
const pane = servedPane();

interface Refusing {
  readonly refused: readonly string[];
}

/** Tries each in the page, in the place of office.js, and tells what the policy refused. */
const attempts = `
  const refused = (window.refused = []);
  addEventListener("securitypolicyviolation", ({ effectiveDirective, blockedURI }) => refused.push(effectiveDirective + " " + blockedURI));
  const add = (tag, src) => new Promise((next) => {
    const element = document.createElement(tag);
    element.onload = element.onerror = next;
    element.src = src;
    document.body.append(element);
  });
  const send = (url) => fetch(url, { method: "POST" }).catch(() => undefined);
  void (async () => {
    await add("script", "${AJAX}/3.5/MicrosoftAjax.js");
    await add("script", "${OFFICE}/lib/1/hosted/telemetry/oteljs_agave.js");
    await add("script", "${AJAX}/jquery/jquery-1.7.2.min.js");
    await add("script", "https://other.example/script.js");
    await add("iframe", "${OFFICE}/lib/1/hosted/AgaveErrorUX/index.html");
    await add("iframe", "https://other.example/");
    await send("https://browser.pipe.aria.microsoft.com/Collector/3.0/");
    await send("https://other.example/collect");
  })();
`;

test("scripts and a frame of office.js' own host, one file of another, and no other address", async () => {
  const { page } = await pane.open({}, "taskpane.html", (opened) =>
    opened.route(
      (url) => url.protocol === "https:",
      (route) => {
        const isOffice = route.request().url().endsWith("/hosted/office.js");
        return route.fulfill({
          contentType: isOffice ? "text/javascript" : "text/html",
          body: isOffice ? attempts : "",
        });
      },
    ),
  );
  const last = "connect-src https://other.example/collect"; // a browser tells of a refusal a little later
  await page.waitForFunction((line) => (window as unknown as Refusing).refused.includes(line), last);
  expect(await page.evaluate(() => (window as unknown as Refusing).refused)).toEqual([
    `script-src-elem ${AJAX}/jquery/jquery-1.7.2.min.js`,
    "script-src-elem https://other.example/script.js",
    "frame-src https://other.example",
    "connect-src https://browser.pipe.aria.microsoft.com/Collector/3.0/",
    last,
  ]);
});
