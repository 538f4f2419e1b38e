import { createRoot } from "react-dom/client";
import { Pane, type PaneProps } from "./Pane";
import { isBesideLocalSheet, type PageSurroundings, takeFunctionsWithout, watchOffice } from "./office";
import { scriptRun, untilHere } from "./untilHere";

const place = document.getElementById("pane");
if (place === null) throw new Error("the page has no element #pane");
const officeScript = document.querySelector("script[data-office]");
// office.js, which comes after this script, would tell Excel that the functions are ready before they are: a call in between
// would be #VALUE!. With this it waits until functions.js, which comes last, hands the first of them over.
if (officeScript !== null) Object.assign(window, { CustomFunctionMappings: { __delay__: true } });

takeFunctionsWithout(officeScript, window);

const officeOfPage = { get: () => (typeof Office === "undefined" ? undefined : Office), script: officeScript };
const root = createRoot(place);
let shown: PaneProps = { where: "waiting", host: null, lacksFunctions: false };
const show = (change: Partial<PaneProps>): void => root.render(<Pane {...(shown = { ...shown, ...change })} />);

/** What writes into Excel is a file of its own, which no other surroundings load. */
function showIn(where: PageSurroundings): void {
  if (where !== "excel") return show({ where });
  untilHere(
    () => import("../hosts/excel/excelHost"),
    ({ excelHost }) => show({ where, host: excelHost() }),
  );
}

// Cells wait for it without a word, and newer Excels go on showing their last numbers meanwhile.
const functions = document.querySelector<HTMLScriptElement>("script[data-functions]");
if (functions !== null)
  untilHere(
    scriptRun(functions),
    () => show({ lacksFunctions: false }),
    () => show({ lacksFunctions: true }),
  );
if (isBesideLocalSheet(() => window.parent)) show({ where: "local", host: window.parent.ductLedgerHost ?? null });
else watchOffice(officeOfPage, showIn);
