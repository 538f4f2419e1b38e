import { createRoot } from "react-dom/client";
import { Pane } from "./Pane";
import { isBesideLocalSheet, watchOffice, type Surroundings } from "./office";

const place = document.getElementById("pane");
if (place === null) throw new Error("the page has no element #pane");
const officeScript = document.querySelector("script[data-office]");
const officeOfPage = { get: () => (typeof Office === "undefined" ? undefined : Office), script: officeScript };
const root = createRoot(place);
const show = (where: Surroundings): void => root.render(<Pane where={where} />);

if (isBesideLocalSheet(() => window.parent)) show("local");
else watchOffice(officeOfPage, show);
