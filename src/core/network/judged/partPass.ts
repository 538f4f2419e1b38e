import { designPass, type RunBudget, stillRun, type Surroundings } from "../designPass";
import { idlePart } from "../idlePart";
import type { Run } from "../network";
import { FAN } from "../openAir";
import { buildNetwork } from "../tree";
import { itemAt } from "../../../reference/itemAt";
import type { Cause, Judged, JudgedTree } from "./judged";

type Sound = Extract<Judged, { readonly run: Run }>;

/** What the pass finds for a sound run of a tree in which others are wrong, and what of it waits. */
export interface PartBudget {
  readonly budget: RunBudget;
  readonly air: Cause | null; // its airflow: a leak where no air is asked for is driven by the junction's suction
  readonly suction: Cause | null; // the suction at its end
}

/**
 * The design pass over what is complete of a judged tree: each part of it that hangs together ends at a run whose junction
 * is not known, or at the fan. What a run gets there it gets in the whole tree.
 *
 * @param tree the judged tree
 * @param surroundings density, and what a run takes that names nothing else
 * @returns for each sound run before the fan what is known of it; null for every other row
 * @throws DomainError as the design pass does
 * @source house
 */
export function partPass(tree: JudgedTree, surroundings: Surroundings): (PartBudget | null)[] {
  const found = tree.rows.map((): PartBudget | null => null);
  for (const [root, members] of partsOf(tree)) {
    const end = soundAt(tree, root);
    const part = end.isCut ? cutPart(tree, members, end.junction) : ownPass(tree, root, members, surroundings);
    members.forEach((index, member) => (found[index] = itemAt(part, member)));
  }
  return found;
}

/** Beyond a shut gate nothing flows, whatever else is wrong down there. */
const cutPart = (tree: JudgedTree, members: readonly number[], suction: Cause | null): PartBudget[] =>
  members.map((index) => {
    const state = soundAt(tree, index).run.gate === "shut" ? "shut" : "cut";
    return { budget: stillRun(state), air: null, suction };
  });

/** A part by itself, as if the fan stood at its end. */
function ownPass(tree: JudgedTree, root: number, members: readonly number[], surroundings: Surroundings): PartBudget[] {
  const { junction } = soundAt(tree, root);
  const runs = members.map((index) => ({ ...soundAt(tree, index).run, ...(index === root && { to: FAN }) }));
  const network = buildNetwork(runs);
  const { runs: budgets } = designPass(network, surroundings);
  const end = members.indexOf(root);
  if (junction === null) return budgets.map((budget) => ({ budget, air: null, suction: null }));
  if (itemAt(budgets, end).state === "asked")
    return budgets.map((budget, member) => ({
      budget: member === end ? { ...budget, governs: false, junctionRatio: null } : budget,
      ...{ air: null, suction: null },
    }));
  const leaks = idlePart(network, end, 1, surroundings.density).filter(({ airflow }) => airflow > 0);
  const leaking = new Set(leaks.map(({ index }) => index));
  return budgets.map((budget, member) => ({
    budget,
    air: leaking.has(member) ? junction : null,
    suction: junction,
  }));
}

/** The sound runs before the fan, by the run at which their part ends. */
function partsOf(tree: JudgedTree): Map<number, number[]> {
  const { rows, into } = tree;
  const ends = new Map<number, number>();
  const parts = new Map<number, number[]>();
  rows.forEach((row, index) => {
    if (!("run" in row) || row.run.side === "discharge") return;
    const way: number[] = [];
    let at = index;
    for (; !ends.has(at) && isSound(rows[itemAt(into, at)]); at = itemAt(into, at)) way.push(at);
    const end = ends.get(at) ?? at;
    for (const run of [...way, at]) ends.set(run, end);
    const members = parts.get(end);
    if (members === undefined) parts.set(end, [index]);
    else members.push(index);
  });
  return parts;
}

const isSound = (row: Judged | undefined): boolean => row !== undefined && "run" in row;

function soundAt({ rows }: JudgedTree, index: number): Sound {
  const row = itemAt(rows, index);
  if (!("run" in row)) throw new Error(`row ${index} is not sound`);
  return row;
}
