import type { BudgetPlace, ColumnCells, FlowColumn } from "./blockNames";

/** Stands for no row where the least of row numbers is looked for. */
export const NONE = 9999;

type Cells = Partial<ColumnCells<FlowColumn>>;

const fromInput = (place: BudgetPlace, column: Parameters<BudgetPlace["all"]>[0], row: number): string =>
  `INDEX(${place.all(column)},${place.cell("source", row)})`;

/**
 * Which rows wait for which, in the order of the flow, whatever is wrong with them: the core's `judgeTree`. A row waits for the
 * first wrong one whose air comes through it, or which may join it since nobody can tell where that goes.
 */
export function causeCells(place: BudgetPlace): Cells {
  const { cell: at, scalar } = place;
  const input = (column: Parameters<BudgetPlace["all"]>[0], row: number): string => fromInput(place, column, row);
  return {
    knot: {
      heading: "Its number, sound or not",
      edge: -5,
      formula: (row) => `IF(${input("side", row)}=1,${at("source", row)},-1)`,
    },
    way: {
      heading: "It goes to",
      edge: -6,
      formula: (row) => `IF(${input("side", row)}=1,IF(${input("inLoop", row)}>0,-1,${input("into", row)}),-2)`,
    },
    end: {
      heading: "Its way ends in",
      formula: (row) =>
        `IF(${at("way", row)}>0,SUMIF(${place.below("knot", row)},${at("way", row)},${place.below("end", row)}),${at("source", row)})`,
    },
    cause: {
      heading: `Waits for row; ${NONE} none`,
      formula: (row) => {
        const joins = `(${place.above("way", row)}=${at("knot", row)})`;
        const joining = `${NONE}-SUMPRODUCT(MAX(${joins}*(${NONE}-${place.above("cause", row)})))`;
        const mayJoin = `IF(${at("end", row)}=${scalar("lost")},${scalar("alsoLost")},${scalar("lost")})`;
        const others = `IF(${input("openEnd", row)}=1,${NONE},MIN(${mayJoin},${input("namesake", row)}))`;
        const waits = `IF(${at("knot", row)}<0,${NONE},MIN(${joining},${others}))`;
        const none = `${scalar("wrong")}+COUNTIF(${place.all("way")},-1)=0`;
        return `IF(${none},${NONE},IF(${input("fault", row)}<>"",${at("source", row)},${waits}))`;
      },
    },
    sideThere: {
      heading: "Side, of what can be computed",
      formula: (row) => `IF(${at("cause", row)}<${NONE},0,${input("side", row)})`,
    },
  };
}

/** What of a sound run is not known while others are wrong: each 0 where all is well. */
export function unknownCells(place: BudgetPlace): Cells {
  const { cell: at, all, scalar } = place;
  const input = (column: Parameters<BudgetPlace["all"]>[0], row: number): string => fromInput(place, column, row);
  const onward = (column: FlowColumn, row: number): string =>
    `SUMIF(${place.below("knot", row)},${at("way", row)},${place.below(column, row)})`;
  return {
    unheld: {
      heading: "1: nobody knows the suction at its end, and it asks for no air of its own",
      formula: (row) =>
        `IF(${at("sideThere", row)}<>1,0,IF(${at("asked", row)}=1,0,IF(${at("next", row)}<-2,1,IF(${at("next", row)}=0,0,IF(${onward("asked", row)}=1,0,${onward("unheld", row)})))))`,
    },
    pathWaits: {
      heading: "Its way to the fan waits for row; -1 for one that is not there",
      formula: (row) => {
        const main = `SUMIF(${place.below("knot", row)},${at("way", row)},${place.below("way", row)})`;
        const further = `IF(${main}=-1,${at("way", row)},${onward("pathWaits", row)})`;
        const next = `IF(${onward("cause", row)}<${NONE},${onward("cause", row)},${further})`;
        return `IF(${at("sideThere", row)}<>1,0,IF(${at("way", row)}>0,${next},${at("way", row)}))`;
      },
    },
    unmet: {
      heading: "1: what its junction costs it is not known",
      formula: (row) => {
        const beside = `COUNTIFS(${all("toKey")},${input("toKey", row)},${all("mayBranch")},">0")+${scalar("lostBranches")}>0`;
        const meets = `IF(${input("branchAt", row)}=0,${beside},${input("branchAt", row)}>0)`;
        return `IF(AND(${at("next", row)}<-2,${at("asked", row)}=1),IF(${meets},1,0),0)`;
      },
    },
  };
}
