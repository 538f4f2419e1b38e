import { practice, type CheckRule } from "../finding";
import { inGroups } from "../inGroups";
import { sameName } from "../runs";

const SAME = 0.999; // a diameter typed in the other unit may differ in its last digit

/** A main that is smaller than a branch which joins it. */
export const smallerMain: CheckRule = ({ runs: tables }) =>
  tables.flatMap(({ sheet, system, runs }) =>
    runs.flatMap((branch) => {
      const main = runs.find((run) => sameName(run.name, branch.to));
      if (main?.diameter == null || branch.diameter === null || main.diameter >= SAME * branch.diameter) return [];
      return [
        {
          rule: "Main smaller than its branch",
          what: `${main.name} has ${inGroups(main.diameter, "diameter", system)}, but ${branch.name}, which joins it, has ${inGroups(branch.diameter, "diameter", system)}.`,
          why: "A duct narrows against the flow of chips only by mistake: it chokes the branch, and offcuts lodge at the step.",
          source: practice,
          sheet,
          at: main.at("Diameter"),
        },
      ];
    }),
  );
