import { type FanCurve, leastAirflow, mostAirflow } from "../../core/fan/fanCurve";
import { type ChosenSizes, chooseSizes, type Patience } from "../../core/network/sizes/chooseSizes";
import { finished } from "../../core/network/sizes/finished";
import { type Judging, MET } from "../../core/network/sizes/judging";
import { costOf, shareOf, type SizeNeed, type Taken } from "../../core/network/sizes/sizeTask";
import { sectionArea } from "../../core/section/section";
import { sizesColumns } from "../../reference/answerColumns";
import { inWords } from "../../reference/inWords";
import { itemAt } from "../../reference/itemAt";
import { joinNotes, sayNote } from "../../reference/notes";
import type { UnitSystem } from "../../reference/quantities";
import { headerRow, type Value } from "../answerRows";
import { needWords } from "./needWords";
import { portRows } from "./portRows";
import { roundedDown, whatStands } from "./whatStands";
import { strongerFan } from "./strongerFan";
import { type SizesCells, sizesRow } from "./sizesRow";
import { sizeTaskOf, type Task, type Wish } from "./sizeTaskOf";

/** Runs that a cell solves at most: about a second; and again as many for what it says where a need is missed. */
const MOST_WORK = 60_000;
/** What that may take of it, and in the pane. */
const PART = 4;
const MOST_AFTER = 150_000;

/** A cell's, unless this runs in a worker of its own, where somebody watches and can stop it: its page says how long. */
const patience = (): Patience =>
  (globalThis as { readonly ductLedgerPatience?: Patience }).ductLedgerPatience ?? {
    most: MOST_WORK,
    hear: () => undefined,
  };

/** What SIZES says of one fan. */
export interface OfOneFan {
  readonly chosen: ChosenSizes;
  readonly whole: SizesCells; // what all costs, and how sure it is
  readonly rows: Value[][];
}

/**
 * The answer of SIZES with a fan: the diameter of each run, then what the whole costs and how sure it is.
 *
 * @param among fans, which share the time
 */
export function sizesTable(wish: Wish, curve: FanCurve, among = 1): OfOneFan {
  const { system, times } = wish;
  const asked = sizeTaskOf(wish, curve);
  const { most, hear } = patience();
  const own = most / among;
  const after = Math.min(own / PART, MOST_AFTER);
  const chosen = finished(chooseSizes(asked.task, asked.present, own), hear);
  const row = (of: SizesCells): Value[] => sizesRow(of, system);
  const meets = chosen.status === "best" || chosen.status === "found";
  const whole: SizesCells = { run: "all together", price: chosen.judged.cost, need: statusOf(chosen, wish), share: hasAnswer(chosen.judging, chosen.taken) ? percentOf(chosen.judged.share * times) : null }; // prettier-ignore
  const rows = [
    headerRow(sizesColumns, system),
    ...runRows(asked, chosen, wish).map(row),
    row(whole),
    ...presentRow(asked, chosen, times).map(row),
    ...(meets || whole.share === null
      ? []
      : [
          ...whatStands(asked, chosen, wish, after),
          { run: "a stronger fan", need: strongerFan(asked.task, chosen, 2 * after) },
        ].map(row)),
    ...portRows(wish.table.runs(null), asked.task, chosen.taken).map(row),
    row({ run: "before you buy", need: sayNote("measureFirst") }),
  ];
  return { chosen, whole, rows };
}

const percentOf = (share: number): number => 100 * share;

/** Whether the fan's curve reaches where sizes have it work, in every scenario. */
const hasAnswer = ({ flows, task }: Judging, taken: Taken): boolean =>
  task.scenarios.every((_, place) => flows(place, taken) !== null);

function runRows({ task }: Task, { taken, judging }: ChosenSizes, { table, times, scenarios }: Wish): SizesCells[] {
  const flows = task.scenarios.map((_, place) => judging.flows(place, taken));
  return table.runs(null).runs.map(({ run }, index): SizesCells => {
    const { diameter, cost } = itemAt(itemAt(task.choices, index), itemAt(taken, index));
    const needs = task.needs.filter((need) => need.run === index);
    const velocities = needs.flatMap(({ scenario }) => {
      const found = itemAt(flows, scenario);
      return found === null ? [] : [itemAt(found.airflow, index) / sectionArea(diameter, null)];
    });
    const shares = needs.map((need): { need: SizeNeed; share: number | null } => {
      const found = itemAt(flows, need.scenario);
      if (found === null) return { need, share: null };
      const airflow = itemAt(found.airflow, index);
      const has = need.kind === "airflow" ? airflow - itemAt(found.leak, index) : airflow / sectionArea(diameter, null);
      return { need, share: shareOf(need, has) };
    });
    const worst = shares.sort((a, b) => (a.share ?? 0) - (b.share ?? 0))[0];
    return {
      ...{ run: run.name, now: run.diameter, buy: diameter, length: run.length + run.hoseLength },
      price: itemAt(task.keeps, index) ? null : cost,
      slowest: velocities.length === 0 ? null : Math.min(...velocities),
      fastest: velocities.length === 0 ? null : Math.max(...velocities),
      need:
        worst === undefined
          ? null
          : `${needWords(worst.need, itemAt(scenarios, worst.need.scenario).name)}${runsWrong(worst.share)}`,
      share: worst === undefined || worst.share === null ? null : percentOf(worst.share * times),
    };
  });
}

/** How the present diameters do, where they can be bought. */
function presentRow({ task, present }: Task, { judging }: ChosenSizes, times: number): SizesCells[] {
  if (present === null) return [];
  const share = hasAnswer(judging, present) ? percentOf(judging.judge(present).share * times) : null;
  return [
    { run: "as it is", price: costOf(task, present), need: runsWrong(share) && `a need${runsWrong(share)}`, share },
  ];
}

function statusOf({ status, judged, atLeast, blocked, judging, taken }: ChosenSizes, wish: Wish): string {
  const { scenarios, times, system } = wish;
  const percent = Number((percentOf(times) - 100).toPrecision(6));
  const { runs } = itemAt(judging.task.scenarios, 0).network;
  const said = ({ scenario }: SizeNeed): string => itemAt(scenarios, scenario).name;
  const quantity = (need: SizeNeed): "airflow" | "velocity" => (need.kind === "airflow" ? "airflow" : "velocity");
  const words = (need: SizeNeed, share: number): string =>
    sayNote("needAt", {
      ...{ need: needWords(need, said(need)), run: itemAt(runs, need.run).name },
      has: hasInWords(need.kind === "not faster" ? need.wanted / share : share * need.wanted, quantity(need), system),
      wanted: inUnit(need.wanted, quantity(need), system),
    });
  if (status === "best") return sayNote("sizesBest", { percent });
  if (status === "found")
    return atLeast > 0
      ? sayNote("sizesFound", { percent, price: Number(atLeast.toPrecision(4)) })
      : sayNote("sizesFoundOnly", { percent });
  const { curve } = judging.task;
  const reach = { least: inUnit(leastAirflow(curve), "airflow", system), most: inUnit(mostAirflow(curve), "airflow", system) }; // prettier-ignore
  const silent = scenarios.find((_, place) => judging.flows(place, taken) === null);
  if (silent !== undefined) return sayNote("sizesNoAnswer", { scenario: silent.name, ...reach });
  const beyond = judging.leftCurve() ? [sayNote("sizesBeyond", reach)] : [];
  const left = sayNote(status === "impossible" ? "sizesImpossible" : "sizesMissed", { percent, need: words(judged.need, judged.share) }); // prettier-ignore
  const never = blocked === null ? [] : [neverWords(blocked, judging, wish)];
  const spare = roundedDown(percentOf(judged.share * times) - 100);
  const had = spare >= 0 ? sayNote("sizesSpare", { spare }) : sayNote("sizesShort", { percent: Math.max(0, roundedDown(spare + 100)) }); // prettier-ignore
  return joinNotes([had, left, ...never, ...beyond]);
}

/** The hood that can get least of its air, not even with the widest pipe on its way and the narrowest elsewhere; else what others block. */
function neverWords(blocked: SizeNeed, { task, most }: Judging, { table, scenarios, system }: Wish): string {
  const { runs } = table.runs(null);
  const [low, high] = [task.choices.map(() => 0), task.choices.map(({ length }) => length - 1)];
  const words = ({ run, scenario }: SizeNeed) => ({ run: itemAt(runs, run).run.name, scenario: itemAt(scenarios, scenario).name }); // prettier-ignore
  const [worst] = task.needs
    .flatMap((need) => (need.kind === "airflow" ? [{ need, share: most(need, low, high, null) }] : []))
    .sort((a, b) => a.share - b.share);
  if (worst === undefined || worst.share >= MET) {
    const { run, scenario } = words(blocked);
    return sayNote("sizesBlocked", { need: needWords(blocked, scenario), run });
  }
  const { need, share } = worst;
  const airflow = (of: number): string => inUnit(of * need.wanted, "airflow", system);
  return sayNote("sizesMost", { ...words(need), most: airflow(share), wanted: airflow(1) });
}

const inUnit = (value: number, quantity: "airflow" | "velocity", system: UnitSystem): string =>
  inWords(value, quantity, system);

/** What is said beside a share below nothing. */
const runsWrong = (share: number | null): string => ((share ?? 0) < 0 ? sayNote("wrongWay") : "");

/** What a need has; where branches meet the air of a weak one may run out of its hood. */
const hasInWords = (value: number, quantity: "airflow" | "velocity", system: UnitSystem): string =>
  `${inUnit(Math.abs(value), quantity, system)}${value < 0 ? " the wrong way" : ""}`;
