import { findNamed, rowOf } from "../../../core/naming/findNamed";
import { cautions } from "../../../reference/cautions";
import { materials } from "../../../reference/materials";
import { practice, type CheckRule } from "../finding";

const PLASTIC = "pvc pipe";

/** A run of plastic pipe, on which dust leaves a charge. */
export const plasticPipe: CheckRule = ({ runs: tables }) =>
  tables.flatMap(({ sheet, runs }) =>
    runs
      .filter(({ material }) => findNamed(materials, material)?.key === PLASTIC)
      .map((run) => ({
        rule: "Plastic pipe",
        what: `${run.name} is of plastic pipe.`,
        why: rowOf(cautions, "plastic static").text,
        source: practice,
        sheet,
        at: run.at("Material"),
      })),
  );
