import { headerName } from "../../../core/naming/headerName";
import { type CheckRule, practice } from "../finding";
import { sameName } from "../runs";

const WHY =
  "Each of them takes pressure, so a fan bought without it is too weak, and less air flows than these sheets say. Type its Device loss and Device airflow beside the run that holds it (Tables has usual losses), or a loss of 0 where there is none or the fan's curve was measured with it.";

const LOSS = headerName("Device loss");

/** A table with a column for devices in which none is told, nor that there is none. */
export const noDevice: CheckRule = ({ runs: tables }) =>
  tables
    .filter(({ table, runs }) => table.headers.some(({ name }) => name === LOSS) && !runs.some((run) => run.deviceSaid))
    .map(({ sheet, runs }) => ({
      rule: "No filter",
      what: "No separator, filter or bag is counted.",
      why: WHY,
      source: practice,
      sheet,
      at: (runs.find(({ to }) => sameName(to, "fan")) ?? runs[0]!).at("Device loss"),
    }));
