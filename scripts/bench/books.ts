// Printed as rows: whole books, computed without a browser.
import { recalculatedCopies } from "./clubCopy";
import { changedInput } from "./sheet";

console.debug = () => undefined; // the grid reports each step

void recalculatedCopies().then((rows) => process.stdout.write(JSON.stringify([...changedInput(), ...rows])));
