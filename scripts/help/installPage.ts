import { BUILT_FOR } from "../site/builtFor";
import { code, type HelpPage, link, list, paragraph, section, table } from "./html";

/** How a club without an IT department comes to the add-in, and what nobody promises. */
export const installPage = (): HelpPage => ({
  file: "install.html",
  title: "Install for a club",
  lead: "The files stand on any web address that speaks https; each member adds the manifest once. Or use the local sheet and install nothing.",
  body: [
    section(
      "Without Excel",
      paragraph(
        "Open index.html of the same address in a browser: the same functions in an open-source spreadsheet. After the first visit it also opens without a network. It saves and opens .xlsx files.",
      ),
    ),
    section(
      "Put the files on a web address",
      list([
        "Any static host will do; nothing runs on the server. It must speak https with a certificate that browsers accept.",
        "All files stay in one folder. The manifest names that address, so a move means a new package and adding it again.",
        "Icons must not be served with no-cache, or the ribbon cannot show them.",
        "Replacing the files is enough for a new version. Office may show the old one for up to 24 hours.",
      ]),
    ),
    section(
      "Check it with one command",
      [
        paragraph(
          "Excel on the web reads functions.json from an address of its own. A browser allows that only if the server says so; without it Excel finds no function. So ask your server:",
        ),
        `<p class="call">${code(`curl -sI -H "Origin: https://excel.officeapps.live.com" ${BUILT_FOR}/functions.json`).markup}</p>`,
        paragraph(
          "Among the lines of the answer must stand access-control-allow-origin: * and content-type: application/json. If they do not, the folder holds what three kinds of servers read:",
        ),
        list([
          "_headers, for hosts of static sites that know it. They read it at the root of the site only: where our folder is not the root, add its lines to the file there.",
          ".htaccess, for Apache. It needs mod_headers. If every page shows an error 500, the host forbids such a file: delete it and ask the host for the two headers.",
          "web.config, for IIS.",
        ]),
        paragraph(
          "The same files say who may show our pages in a frame: the pane, only Excel on the web, OneDrive, SharePoint and Teams; all other pages, nobody. No whole list of Excel's addresses is published. If the pane stays blank in Excel on the web and the browser's console (F12) names frame-ancestors, add the address of Excel's page to that line.",
        ),
      ].join("\n"),
    ),
    section(
      "Each member",
      table(
        "Ways to add the manifest, by platform",
        ["Where", "How", "What is not promised"],
        [
          [
            "Excel on the web",
            "Home, Add-ins, More Settings, Upload My Add-in; choose manifest.xml.",
            "It stays in that browser only. Another browser, or cleared site data, means uploading again. An organisation can forbid it.",
          ],
          [
            "Excel for Mac",
            "Copy manifest.xml into ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef (make the folder if there is none), restart Excel, then Home, Add-ins.",
            "Meant for trying out. Clearing Office's cache removes it.",
          ],
          [
            "Excel for Windows",
            "Put manifest.xml into a shared folder. File, Options, Trust Center, Trusted Add-in Catalogs: add the folder's network path, tick Show in Menu, restart. Then Home, Add-ins, Advanced, Shared Folder. With Node.js instead: npx office-addin-dev-settings sideload manifest.xml",
            "Meant for trying out. Sharing a folder can need an administrator.",
          ],
          [
            "An organisation with an administrator",
            "Admin centre, Integrated apps: upload manifest.xml.",
            "Clubs of private people have none.",
          ],
          [
            "Phones, iPad, Excel 2019 and older",
            "Not possible: use a club copy or the local sheet.",
            "Custom functions do not exist there.",
          ],
          ["Excel 2021 with a volume licence", "As for Windows.", "May work; the documentation contradicts itself."],
        ],
      ),
    ),
    section(
      "If a cell shows #NAME?",
      list([
        "Home, Add-ins, Duct Ledger: opening the pane registers the functions again.",
        "A formula that was typed before the add-in had loaded stays #NAME? until it is entered again: the pane's view Share repairs all of them.",
        "Whoever has no add-in gets a club copy instead, which computes by plain formulas.",
      ]),
    ),
    section(
      "Sources and state",
      [
        paragraph(
          "Steps and limits are from the platform's documentation on sideloading, requirement sets and custom functions as of 2026-08. None of it was tried in real Excel here.",
        ),
        `<p>${link("first-in-excel.html", "What the first person with Excel should try").markup}</p>`,
      ].join("\n"),
    ),
  ].join("\n"),
});
