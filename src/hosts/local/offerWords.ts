import { lossFamilies } from "../../reference/lossFamilies";
import { goingOn } from "./goingOn";
import type { CellPosition, GridModel } from "./grid";
import { keptGetters } from "./keptPlugin";

/** The grid's list of offered words, as far as we use it. */
interface Provider {
  readonly sequence?: number;
  readonly canBeToggled?: boolean;
  getProposals(this: Asked, token: unknown, content: string): readonly Proposal[];
  selectProposal(this: Asked, token: unknown, proposal: Proposal): void;
}

interface Proposal {
  readonly text: string;
  readonly fuzzySearchKey: string;
}

interface Asked {
  readonly composer: {
    readonly currentEditedCell?: CellPosition;
    readonly currentContent: string;
    setCurrentContent(text: string): void;
    stopEdition(direction?: "right"): void;
  };
  readonly getters: GridModel["getters"];
}

const FITTINGS = lossFamilies.filter(({ kind }) => kind === "fitting").map(({ key }) => key);

/** Offers words in the cells of Runs that have no list of their own: the runs to join, and fittings one after another. */
export function offerWords(): void {
  const providers = o_spreadsheet.registries.autoCompleteProviders;
  const listed = providers.get("dataValidation") as unknown as Provider;
  const whole: Provider["selectProposal"] = function (_, { text }) {
    this.composer.setCurrentContent(text);
    this.composer.stopEdition("right"); // as after any other word that Tab ends
  };
  providers.replace("dataValidation", { ...listed, selectProposal: whole } as never);
  const add = (
    name: string,
    getProposals: Provider["getProposals"],
    selectProposal: Provider["selectProposal"],
  ): void => void providers.add(name, { sequence: 200, canBeToggled: false, getProposals, selectProposal } as never);
  add(
    "runs_to_join",
    function (_, content) {
      return headingOver(this, "To") === null ? [] : goingOn(content, runsToJoin(this)).map(asProposal);
    },
    whole,
  );
  add(
    "fittings",
    function (_, content) {
      if (headingOver(this, "Fittings") === null) return [];
      const [, before = "", begun = ""] = /^(.*;\s*|)(.*)$/s.exec(content) ?? [];
      return goingOn(begun, FITTINGS).map((name) => asProposal(before + name));
    },
    function (_, { text }) {
      this.composer.setCurrentContent(text); // and one goes on behind it: x2; the next
    },
  );
}

const asProposal = (text: string): Proposal => ({ text, fuzzySearchKey: text });

/** The row of the heading over the edited cell, where that is this one and the sheet is a budget's Runs. */
function headingOver({ composer, getters }: Asked, heading: string): number | null {
  const cell = composer.currentEditedCell;
  if (cell === undefined || keptGetters({ getters }).getSheetKey(cell.sheetId) !== "runs") return null;
  for (let row = cell.row - 1; row >= 0; row--) if (textAt(getters, { ...cell, row }) === heading) return row;
  return null;
}

/** The runs of the table, those that other rows join already though they have no row yet, and the two ends that every budget has. */
function runsToJoin(asked: Asked): string[] {
  const { sheetId, row } = asked.composer.currentEditedCell!;
  const heading = { sheetId, row: headingOver(asked, "To")! };
  return [
    ...new Set([
      ...namesUnder(asked, heading, "Run", null),
      ...namesUnder(asked, heading, "To", row),
      "fan",
      "outside",
    ]),
  ];
}

/** The words in a column of the table, but that in the row that is left out. */
function namesUnder(
  { getters }: Asked,
  { sheetId, row: header }: Pick<CellPosition, "sheetId" | "row">,
  heading: string,
  without: number | null,
): string[] {
  const columns = Array.from({ length: getters.getNumberCols(sheetId) }, (_, col) => col);
  const col = columns.find((one) => textAt(getters, { sheetId, row: header, col: one }) === heading);
  if (col === undefined) return [];
  const rows = Array.from({ length: getters.getNumberRows(sheetId) - header - 1 }, (_, below) => header + 1 + below);
  const names = rows.filter((row) => row !== without).map((row) => textAt(getters, { sheetId, row, col }));
  return names.filter((name) => name !== "");
}

const textAt = (getters: Asked["getters"], position: CellPosition): string =>
  String(getters.getEvaluatedCell(position).value ?? "").trim();
