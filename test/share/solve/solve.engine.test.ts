/** SOLVE as plain formulas against SOLVE itself in LibreOffice; what a member does with it is asked in the grid. */
import { hardRecalculation } from "../../support/hardRecalculation";
import { hasLibreOffice } from "../../support/libreOffice";
import { differences } from "../sampleBooks";
import { answerOf, copyOf, seededSystems } from "./solvedCopies";

const office = hasLibreOffice ? test : test.skip;

/** So many networks by lot. More are asked by hand: SOLVED_COPIES=300 */
const SYSTEMS = Number(process.env.SOLVED_COPIES ?? 7);

/** Its air all but stands in a branch, where the sweeps took longest to settle. */
const STANDING = 169;

office("drawn systems give SOLVE's answers", async () => {
  const seeds = [...Array.from({ length: SYSTEMS }, (_, seed) => 1 + seed), STANDING];
  const asked = seededSystems(seeds, 4);
  const answers = asked.map(answerOf);
  const copy = copyOf(asked, answers);
  expect(copy.fixed).toEqual([]);
  const values = await hardRecalculation(copy.book.workbook);
  expect(answers.flatMap((answer, index) => differences(`Answer${index}`, "A1", answer, values))).toEqual([]);
});
