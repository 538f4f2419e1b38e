/** The page that Excel shows in its pane; on the web it stands in a frame of Excel's page. */
export const EXCELS_PAGE = "taskpane.html";

/**
 * Files that Excel's own page on the web asks for, from its own origin: the functions and their descriptions, the
 * manifest, the icons. They are the same for everybody, so that any origin may read them.
 */
export const READ_BY_EXCEL = ["functions.json", "functions.js", "manifest.xml"] as const;
export const ICONS = "assets";

/**
 * Whose pages may show the pane in a frame. Nobody publishes a whole list for spreadsheets. The five of Microsoft 365 are those of
 * the Teams documentation (MicrosoftDocs/msteams-docs, "Tab requirements", frame-ancestors for all hosts); the others are where
 * Excel on the web, OneDrive and SharePoint stood when people asked (OfficeDev/office-js issue 3342, office-js-docs-pr issue 4911).
 * Every frame above the pane must be named. Excel on a desktop shows it in no frame at all.
 */
const EXCELS_HOSTS = [
  "https://*.officeapps.live.com",
  "https://onedrive.live.com",
  "https://*.sharepoint.com",
  "https://*.cloud.microsoft",
  "https://*.microsoft365.com",
  "https://*.office.com",
  "https://teams.microsoft.com",
  "https://*.teams.microsoft.com",
];

export const FRAMED_BY_EXCEL = `frame-ancestors 'self' ${EXCELS_HOSTS.join(" ")}`;
export const FRAMED_BY_US = "frame-ancestors 'self'";

/** What a file of the site is sent with, apart from its type and age: who may read it, and who may show it in a frame. */
export function accessHeaders(file: string): Record<string, string> {
  if (file.endsWith(".html"))
    return { "Content-Security-Policy": file === EXCELS_PAGE ? FRAMED_BY_EXCEL : FRAMED_BY_US };
  const isRead = READ_BY_EXCEL.some((name) => name === file) || file.startsWith(`${ICONS}/`);
  return isRead ? { "Access-Control-Allow-Origin": "*" } : {};
}
