import { inGrid } from "../../support/grid";
import { differences } from "../sampleBooks";
import { seededTable } from "../budget/seededTable";
import { withFewEntries } from "../translate/fewEntries";
import { answerOf, type Asked, copyOf } from "./solvedCopies";

const curveIP = [
  ["Airflow", "Pressure"],
  [0, 10],
  [600, 9],
  [1200, 6.5],
  [1800, 1],
  [2400, 0],
  [null, null],
];
const curveSI = curveIP.map(([q, p]) => (typeof q === "number" ? [q * 1.7, (p as number) * 249] : [q!, p!]));

test("a", () => {
  const asked: Asked[] = [3, 5, 7, 9].map((seed) => ({
    runs: seededTable(seed, 3 + seed, seed % 3 ? "IP" : "SI"),
    curve: seed % 3 ? curveIP : curveSI,
    units: seed % 3 ? "IP" : "SI",
  }));
  const answers = asked.map(answerOf);
  const copy = copyOf(asked, answers);
  expect(copy.fixed).toEqual([]);
  const values = inGrid(withFewEntries(copy.book.workbook));
  const cells = values.get([...values.keys()].find((k) => k.startsWith("Workings"))!)!;
  for (const [at, v] of cells)
    if (String(v).startsWith("Largest misfit")) {
      const col = at.replace(/[0-9]/g, ""), row = Number(at.replace(/[A-Z]/g, ""));
      console.log(at, cells.get(`${col}${row + 1}`));
      const next = [...cells].filter(([a]) => a.endsWith(String(row + 1)) && a.replace(/[A-Z]/g, "") === String(row + 1)).map(([a, x]) => `${a} ${cells.get(a.replace(/[0-9]+/, String(row)))}: ${x}`);
      console.log(next.slice(0, 40).join("\n"));
    }
  expect(answers.flatMap((answer, index) => differences(`Answer${index}`, "A1", answer, values))).toEqual([]);
});
