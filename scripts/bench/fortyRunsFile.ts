// Printed in base64: a workbook of forty runs, as the checkout lays its sheets out.
import { writeBook } from "../../src/hosts/file/writeBook";
import { fortyRuns } from "../../test/support/fortyRuns";

void writeBook({ workbook: fortyRuns(), shown: new Map() }, { title: "forty runs" }).then((bytes) =>
  process.stdout.write(Buffer.from(bytes).toString("base64")),
);
