import { EXCELS_PAGE, FRAMED_BY_EXCEL, FRAMED_BY_US, ICONS, READ_BY_EXCEL } from "../site/headers";

interface ServerFile {
  readonly name: string;
  readonly text: string;
}

const ANYBODY = "Access-Control-Allow-Origin";
const FRAMES = "Content-Security-Policy";
const OWN_PAGES = ["", "index.html", "pane.html", "help/*"];

/** What three kinds of web servers read to send our files with the headers that Excel on the web needs. */
export const serverFiles = (address: string): readonly ServerFile[] => [
  { name: "_headers", text: headersFile(new URL(address).pathname.replace(/\/$/, "")) },
  { name: ".htaccess", text: htaccess },
  { name: "web.config", text: webConfig },
];

/**
 * Read by several hosts of static sites, at the root of a site only, so that its paths begin there. No file may match two rules:
 * two policies on frames would both hold. Some of these hosts leave the .html out of an address.
 */
function headersFile(folder: string): string {
  const rule = (file: string, header: string, value: string): string => `${folder}/${file}\n  ${header}: ${value}\n`;
  return [
    ...READ_BY_EXCEL.map((file) => rule(file, ANYBODY, "*")),
    rule(`${ICONS}/*`, ANYBODY, "*"),
    ...[EXCELS_PAGE, EXCELS_PAGE.replace(".html", "")].map((file) => rule(file, FRAMES, FRAMED_BY_EXCEL)),
    ...OWN_PAGES.map((file) => rule(file, FRAMES, FRAMED_BY_US)),
  ].join("");
}

const escaped = (name: string): string => name.replaceAll(".", "\\.");

const htaccess = `# For Apache and what reads its files. Excel on the web reads some files from its own address, and shows the pane in a frame.
<IfModule mod_mime.c>
  AddType application/json .json
  AddType text/javascript .js
  AddType font/woff2 .woff2
</IfModule>
<IfModule mod_headers.c>
  <FilesMatch "(^(${READ_BY_EXCEL.map(escaped).join("|")})|\\.png)$">
    Header set ${ANYBODY} "*"
  </FilesMatch>
  <FilesMatch "\\.html$">
    Header set ${FRAMES} "${FRAMED_BY_US}"
  </FilesMatch>
  <Files "${EXCELS_PAGE}">
    Header set ${FRAMES} "${FRAMED_BY_EXCEL}"
    Header unset X-Frame-Options
    Header always unset X-Frame-Options
  </Files>
</IfModule>
`;

const location = (file: string, ...headers: readonly string[]): string => `  <location path="${file}">
    <system.webServer>
      <httpProtocol>
        <customHeaders>
${headers.map((header) => `          ${header}`).join("\n")}
        </customHeaders>
      </httpProtocol>
    </system.webServer>
  </location>`;

const set = (name: string, value: string): string[] => [
  `<remove name="${name}" />`,
  `<add name="${name}" value="${value}" />`,
];

const type = (extension: string, mime: string): string => `      <remove fileExtension="${extension}" />
      <mimeMap fileExtension="${extension}" mimeType="${mime}" />`;

const webConfig = `<?xml version="1.0" encoding="UTF-8"?>
<!-- For IIS. Excel on the web reads some files from its own address, and shows the pane in a frame. -->
<configuration>
  <system.webServer>
    <staticContent>
${type(".json", "application/json")}
${type(".woff2", "font/woff2")}
    </staticContent>
  </system.webServer>
${[...READ_BY_EXCEL, ICONS].map((file) => location(file, ...set(ANYBODY, "*"))).join("\n")}
${location(EXCELS_PAGE, ...set(FRAMES, FRAMED_BY_EXCEL), '<remove name="X-Frame-Options" />')}
${["index.html", "pane.html", "help"].map((file) => location(file, ...set(FRAMES, FRAMED_BY_US))).join("\n")}
</configuration>
`;
