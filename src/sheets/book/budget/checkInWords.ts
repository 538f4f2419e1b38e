import type { MarkedNote } from "../../../reference/notes";
import type { Frame } from "../frame";
import { answerCell, BUDGET_ANSWER } from "../parts/answerReferences";
import { isBlank as isNothing, isText, ofRun, plainName } from "../parts/byName";
import { isFarAcross } from "../parts/farAcross";
import { saysNote, SETTLES } from "../parts/notes";
import { rounded, unitWord } from "../parts/units";
import { sizeThatCarries } from "./stockSize";

/**
 * The velocity of a run in words: what a person at the machine needs to see beside the number just typed on the sheet Runs.
 *
 * @param row of the answer
 * @param place of the run in the runs table
 */
export function checkInWords(frame: Frame, row: number, place: string): string {
  const says = (key: MarkedNote): string => saysNote(key, answerCell(BUDGET_ANSWER, "note", row));
  const velocity = `${rounded(frame, answerCell(BUDGET_ANSWER, "velocity", row), { IP: 0, SI: 1 })}&" "&${unitWord(frame, "velocity")}`;
  const cure = `IF(${says("settles")},${sizeThatCarries(frame, row, place)},"")`;
  const speed = `IF(${says("settles")},"${SETTLES}: ",IF(${says("tooFast")},"too fast: ","ok: "))&${velocity}&${cure}`;
  const reasons: readonly (readonly [when: string, words: string])[] = [
    [isText(ofRun(frame, "Airflow", place)), `"airflow is a text"`],
    // which side a run is on the function knows, also where Side is blank: only a run before the fan has a suction
    // (an error where it waits for what else joins its junction)
    [`IFERROR(${answerCell(BUDGET_ANSWER, "suctionAtEnd", row)}="",FALSE)`, `"after the fan"`],
    [`${plainName(ofRun(frame, "Gate", place))}="shut"`, `"gate shut"`],
    [says("cutOff"), `"beyond a shut gate"`],
    [`OR(${says("asksForNone")},${says("noneAsksThroughIt")})`, `"no air asked"`],
  ];
  const said = reasons.reduceRight((rest, [when, words]) => `IF(${when},${words},${rest})`, speed);
  // nobody can tell a length that was forgotten from one that is none: it counts as 0
  const isBlank = `LEN(${ofRun(frame, "Length", place)})+LEN(${ofRun(frame, "Flex", place)})=0`;
  // nor which gate was meant: neither leak counts where there is none
  const hasNone = `AND(${isNothing(ofRun(frame, "Gate", place))},LEN(${ofRun(frame, "Leak open", place)})+LEN(${ofRun(frame, "Leak shut", place)})>0)`;
  const across = ofRun(frame, "Diameter", place);
  const isFar = `IF(${isFarAcross(frame, across)},${across}&" "&${unitWord(frame, "diameter")}&" across? ","")`;
  return `${isFar}&IF(${isBlank},"no length; ","")&IF(${hasNone},"no gate for its leak; ","")&${said}`; // in front: the column is narrow
}
