import { LEVEL_UNITS, NEAR, NO_DISTANCE, NO_LEVEL, tidyInWords } from "../../../reference/claimWords";
import { practice } from "../../../reference/claimLaws";
import { cite } from "../../../reference/citation";
import { num } from "../../translate/expressions/text";
import { partLength } from "../amountCells";
import { digitPattern, trimmed, withPlainBlanks, zerosAhead } from "../cellTexts";
import { literal, say, worked } from "../say";
import { type Check, flag } from "./checked";

/** The level is the number that the text begins with; a point counts with a digit behind it. */
export const soundLevel: Check = (facts, list) => {
  const applies = list.step("SOUND: 1 applies", flag(facts.has("sound")));
  const steps = list.where(applies);
  const { system } = steps;
  const near = NEAR[system];
  const sound = facts.of("sound");
  const blanks = steps.step("As text", `SUBSTITUTE(${withPlainBlanks(`(${sound}&"")`)},",",".")`);
  const text = steps.step("trimmed", trimmed(blanks));
  const pattern = steps.step("with 0 for each digit", digitPattern(text));
  const whole = steps.step("Digits", zerosAhead(pattern));
  const part = steps.step("point and digits behind it", `IF(${whole}=0,0,${partLength("0", whole, pattern)})`);
  const digits = steps.step("Number", `LEFT(${text},${whole}+IF(${part}>1,${part},0))`);
  const behind = `LOWER(SUBSTITUTE(SUBSTITUTE(MID(${text},LEN(${digits})+1,999)," ",""),".",""))`;
  const rest = steps.step("behind it", behind);
  const isLevel = LEVEL_UNITS.map((unit) => `${rest}="${unit}"`).join(",");
  const level = steps.step("Level", `IF(OR(${isLevel}),${digits},"")`);
  const hasDistance = facts.has("noise distance");
  const isTold = `AND(${hasDistance},${level}<>"")`;
  const distance = list.where(steps.step("1: told at a distance", flag(isTold)));
  const at = distance.amount("Distance", facts.of("noise distance"), "length");
  const number = `VALUE(SUBSTITUTE(${level},".",""))/10^MAX(0,LEN(${level})-FIND(".",${level}&"."))`;
  const there = distance.step("Level near by", `ROUND(${number}+20*LOG(${facts.of("noise distance")}/${num(near)}),0)`);
  const open = say`In the open ${worked(level)} dB at ${at} are ${worked(there)} dB at ${tidyInWords(near, "length", system)}, 6 dB less at twice the distance; the room and the load decide too.`;
  const decide = "; the room and the load decide too.";
  const untold = `IF(${hasDistance},${literal(`${NO_LEVEL}${decide}`)},${literal(`${NO_DISTANCE}${decide}`)})`;
  const asked = (more: string): string => literal(`at which ${more}load the sound was measured`);
  return [
    {
      applies,
      check: literal("Sound"),
      claimed: sound,
      allowed: '""',
      unit: '""',
      verdict: literal("cannot tell"),
      why: `IF(${isTold},${open},${untold})`,
      source: literal(cite(practice)),
      asks: [`IF(${hasDistance},${asked("")},${asked("distance and ")})`],
    },
  ];
};
